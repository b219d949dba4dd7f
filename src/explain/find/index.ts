export { finderOf } from './candidates';
export { CODED_VISITS } from './coded-visit';
export { inSightOf } from './in-sight';
export type { FindContent } from './phrases';
export { GROWTH_PLATE_TYPES } from './read-code';
export { lyingIn, partsToChoose, tappedAt } from './tapped';
export { isTooGeneral } from './too-general';
export type * from './types';
