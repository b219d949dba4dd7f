/** The shape of a foot: bones, joints and outline from the parameters in content/anatomy, and measures of them. */
export { boneAxis, fromBone, inBone, meshOf, stationOf } from './bone-axis';
export { assembleFoot, buildBone, buildFoot, isUsual, jointsOf, startFrom } from './build';
export { type Fit, fitOf, type JointFit } from './fit/fit';
export { decodeGlb, encodeGlb, type NodeNotes, type ReadModel } from './glb';
export { type LookAlike, lookAlike } from './look-alikes';
export {
  eulerCharacteristic,
  meshBounds,
  meshCentroid,
  meshVolume,
  mirrorMesh,
  openEdges,
  type PrincipalExtents,
  principalExtents,
} from './mesh';
export { prepareAnatomy } from './meshing/simplify';
export { mirrorFoot } from './mirror';
export {
  archShapeOf,
  DEFAULT_FOOT,
  FORM_BOUNDS,
  footLengthOf,
  footParametersFor,
  H_BOUNDS_MM,
  hOfFootLength,
} from './parameters';
export { partAxis, partsNear, partsOf } from './parts';
export { previewFoot } from './preview';
export { MT5 } from './region-names';
export { placesOf, regionsOf } from './regions';
export { type Shape, shapeSchema } from './shape';
export { sliceMesh } from './slice';
export { type TurnMade, turnsOf } from './stance/stance';
export type * from './types';
export { POSE_NAMES } from './types';
export { CUBOID_MT5, facetStretch, zoneAt, zonesOf } from './zones';
