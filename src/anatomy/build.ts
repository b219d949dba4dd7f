/**
 * Builds the bones of a foot. A bone's surface is made once on the reference foot in the as-scanned pose and then moved and
 * scaled, so that every foot of one shape has the same triangles.
 */
import { BONE_IDS, type BoneId, idOf, isBoneId, type JointId } from '../ids';
import { add, normalize, scale, type Vec3 } from '../units';
import { boneField } from './bone-field';
import { mapMesh } from './mesh';
import { buildOutline } from './outline';
import { type Motion, motionsOf, moveDirection, movePoint, STILL } from './pose';
import type { Shape } from './shape';
import { simplify } from './simplify';
import { blur, sampleGrid, surfaceNets } from './surface-nets';
import type { Foot, FootParameters, Joint, Mesh, PoseName } from './types';

/** Passes of the binomial blur that rounds creases. */
const BLUR = 2;

/** The bone on the reference foot, as scanned. */
const referenceBone = (shape: Shape, bone: BoneId): Mesh => {
  const { step, display } = meshingOf(shape, bone);
  const { field, box } = boneField(shape, bone);
  return simplify(surfaceNets(blur(sampleGrid(field, box, step), BLUR)), display);
};

const meshingOf = (shape: Shape, bone: BoneId): Shape['meshing'][string] => {
  const found = shape.meshing[bone];
  if (!found) throw new RangeError(`no meshing for ${bone}`);
  return found;
};

const scaleOf = (shape: Shape, parameters: FootParameters): number => {
  const k = parameters.heelToSecondHeadMm / shape.scale.referenceHMm;
  if (!(k > 0.3 && k < 3)) throw new RangeError(`H of ${parameters.heelToSecondHeadMm} mm is not a foot`);
  return k;
};

const placed = (mesh: Mesh, motion: Motion, k: number): Mesh => mapMesh(mesh, (p) => scale(movePoint(motion, p), k));

export const buildBone = (shape: Shape, parameters: FootParameters, bone: BoneId, pose: PoseName): Mesh =>
  placed(
    referenceBone(shape, bone),
    motionsOf(shape, pose, parameters.arch).get(bone) ?? STILL,
    scaleOf(shape, parameters),
  );

const mean = (a: Vec3, b: Vec3): Vec3 => scale(add(a, b), 0.5);

/** The joints in a pose. Where a pose turns one bone on another, the joint lies midway between the two. */
export const jointsOf = (shape: Shape, parameters: FootParameters, pose: PoseName): ReadonlyMap<JointId, Joint> => {
  const motions = motionsOf(shape, pose, parameters.arch);
  const k = scaleOf(shape, parameters);
  const joints = new Map<JointId, Joint>();
  for (const j of shape.joints) {
    if (!j.articular || !isBoneId(j.first) || !isBoneId(j.second)) continue;
    const first = motions.get(j.first) ?? STILL;
    const second = motions.get(j.second) ?? STILL;
    const id = idOf<JointId>(j.id);
    joints.set(id, {
      id,
      first: j.first,
      second: j.second,
      centre: scale(mean(movePoint(first, j.centre), movePoint(second, j.centre)), k),
      normal: normalize(add(moveDirection(first, j.normal), moveDirection(second, j.normal))),
      major: normalize(add(moveDirection(first, j.major), moveDirection(second, j.major))),
      extentsMm: [j.extents[0] * k, j.extents[1] * k],
    });
  }
  return joints;
};

/** A right foot from bones that are already built (for example read from the model file) in this pose and size. */
export const assembleFoot = (
  shape: Shape,
  parameters: FootParameters,
  pose: PoseName,
  meshes: ReadonlyMap<BoneId, Mesh>,
  outline?: Mesh,
): Foot => ({
  parameters,
  pose,
  side: 'right',
  bones: meshes,
  joints: jointsOf(shape, parameters, pose),
  outline: outline ?? buildOutline(shape, parameters, pose),
});

export const buildFoot = (shape: Shape, parameters: FootParameters, pose: PoseName = 'standing'): Foot => {
  const motions = motionsOf(shape, pose, parameters.arch);
  const k = scaleOf(shape, parameters);
  const bones = new Map<BoneId, Mesh>();
  for (const bone of BONE_IDS) {
    bones.set(bone, placed(referenceBone(shape, bone), motions.get(bone) ?? STILL, k));
  }
  return assembleFoot(shape, parameters, pose, bones);
};
