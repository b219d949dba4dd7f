/** Sections, a general frame, the frame of the foot with its load cases, stress along a bone and at any of its points. */
export { type BandedCase, type FrameBands, type LoadDraw, loadBands, loadDraws } from './foot/bands';
export { type LoadedFoot, loadedFoot, type Person, runCase } from './foot/case-draw';
export { contributorsOf, drawsSay, STEPS, toldSign } from './foot/contributors';
export { type FrameDraw, type HeldDraws, type HeldWithin, heldDraws } from './foot/held-draws';
export { RAYS, type Ray } from './foot/landmarks';
export { CASE_FIGURES } from './foot/load-case';
export { loadsOf } from './foot/loads';
export { FRAME_FIGURES } from './foot/parameter-names';
export { LEAST_SHIFT_MM } from './foot/pull';
export { type RaySections, raySections, takeSections } from './foot/ray-sections';
export { type SectionLoad, sectionLoadsOf } from './foot/section-loads';
export { shareLoadsOf } from './foot/share-loads';
export { readSections, sectionsText } from './foot/shipped-sections';
export type { FootProblem } from './foot/solve';
export { supportsOf } from './foot/supports';
export {
  type Agreement,
  type BeyondTheory,
  CONTRIBUTORS,
  type Contributor,
  type ContributorId,
  ENOUGH_AGREEMENT,
  type FootLoads,
  type JointLoad,
  LEAST_REFERENCE_MPA,
  type LoadBands,
  type LoadFlag,
  type PartBand,
  type PathPart,
  type PullPlace,
  ranksOnly,
  SHARE_WAYS,
  type ShareLoad,
  type ShareWay,
  type SignedSpread,
  type Spread,
  STATION_FORCES,
  STATION_STRESSES,
  type StationBand,
  type StationForce,
  type StationStress,
  SUPPORTS,
  type Support,
  type SupportId,
  signMayBeTold,
} from './foot/types';
export { stressAt } from './sample';
export * from './section';
export type * from './types';
