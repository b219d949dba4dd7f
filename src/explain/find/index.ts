export { finderOf } from './candidates';
export type { FindContent } from './phrases';
export type * from './types';
