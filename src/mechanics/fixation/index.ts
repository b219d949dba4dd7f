/**
 * A screw in a bone: what it takes of the load, how a bridged gap opens, how long a straight one may be. Boot, stiff sole and wedge
 * are no factors here: nothing read gives one for the stress in a metatarsal, so they are loads on the foot's frame.
 */
export { type Bridge, bridgeOf, type GapTissue, gapStrainOf, gapTissueAt } from './bridge';
export { canalPlacesOf } from './canal';
export { type CutWalls, type ScrewFigures, screwInDraws } from './in-draws';
export { type Arc, type CanalPlace, longestIn, longestInArc, type Rod } from './rod';
export { type Screw, type ScrewSection, screwPart, screwSectionOf, yieldMomentOf } from './screw';
export { type Moments, type ScrewInBone, screwInBone } from './shared';
