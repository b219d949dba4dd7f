export { finderOf } from './candidates';
export { CODED_VISITS } from './coded-visit';
export { inSightOf } from './in-sight';
export type { FindContent } from './phrases';
export { lyingIn, partsToChoose, tappedAt } from './tapped';
export type * from './types';
