/** Beams: sections, internal forces by equilibrium, stress along the bone and at any of its points. */
export {
  type BeamInputsLike,
  type BeamOptions,
  type FigureLike,
  fifthMetatarsalBeam,
  type LoadCaseLike,
} from './beam';
export { type Deflection, deflectionsOf } from './deflection';
export { stressAt } from './sample';
export { type Canal, sectionOf } from './section';
export type * from './types';
