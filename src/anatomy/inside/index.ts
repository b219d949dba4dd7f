/** What lies inside the bones: cortex and canal, cuts in any direction, sections by exact integrals. */
export { type CanalOfBone, type CanalStation, canalOf } from './canal';
export { type AreaMoments, type BoneCut, cutBone, cutOpenBone } from './cut';
export type { Sides } from './known';
export { type OpenBone, openBone } from './open';
export type { CutAxes } from './plane';
export {
  type Integrals,
  integralsOf,
  type Loop2,
  type Moments,
  momentsOf,
  NOTHING,
  type Point2,
  principalOf,
  without,
} from './polygon';
export { type Inside, type InsideOfShape, insideSchema, type Wall } from './schema';
