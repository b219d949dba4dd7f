/**
 * Builds the bones of a foot. A bone's surface is made once, for the default foot; any other shape moves the same triangles on
 * to its own field, so that pins and zones stay. Poses turn the finished bones and do not change them.
 */
import { BONE_IDS, type BoneId, idOf, isBoneId, type JointId, LEG_IDS, type LegId, type SkeletonId } from '../ids';
import { scale } from '../units';
import { boneField } from './bone-field';
import { frameOfJoint } from './joint-surface';
import { mapMesh } from './mesh';
import { cutInto, type Sampled, sampled, surfaceOf } from './meshing/levels';
import { projected } from './meshing/repair';
import { buildOutline } from './outline';
import { DEFAULT_FOOT } from './parameters';
import { reshaped } from './reshape';
import { sameJoints, settingOf } from './setting';
import type { Shape } from './shape';
import { type Motion, movePoint, STILL } from './stance/motion';
import { joined, lengthened, motionsOf } from './stance/stance';
import type { Foot, FootForm, FootParameters, Joint, Level, Mesh, PoseName } from './types';

const meshingOf = (shape: Shape, bone: SkeletonId): Shape['meshing'][string] => {
  const found = shape.meshing[bone];
  if (!found) throw new RangeError(`no meshing for ${bone}`);
  return found;
};

interface Usual {
  readonly sampled: Sampled;
  readonly cut: Map<Level, Mesh>;
}
/** The bones of the default foot, kept: every other foot starts from their triangles. */
const usual = new WeakMap<Shape, Map<SkeletonId, Usual>>();

const usualBone = (shape: Shape, bone: SkeletonId, level: Level): Mesh => {
  const kept = usual.get(shape) ?? new Map<SkeletonId, Usual>();
  usual.set(shape, kept);
  const meshing = meshingOf(shape, bone);
  const { local, box } = boneField(shape, bone, settingOf(shape, DEFAULT_FOOT, bone));
  const known = kept.get(bone) ?? { sampled: sampled(local, box, meshing.step), cut: new Map<Level, Mesh>() };
  kept.set(bone, known);
  const cut = known.cut.get(level) ?? cutInto(known.sampled, meshing[level]);
  known.cut.set(level, cut);
  return cut;
};

/** The bone of a foot of some shape on the reference foot, as scanned. */
const referenceBone = (shape: Shape, form: FootForm, bone: SkeletonId, level: Level): Mesh => {
  const mesh = usualBone(shape, bone, level);
  // Most bones of the toes are turned and not changed.
  if (sameJoints(settingOf(shape, form, bone), settingOf(shape, DEFAULT_FOOT, bone))) return mesh;
  const { local, box } = boneField(shape, bone, settingOf(shape, form, bone));
  const surface = surfaceOf(local, box, meshingOf(shape, bone).step);
  return projected(reshaped(shape, form, bone, mesh), surface);
};

const scaleOf = (shape: Shape, parameters: FootParameters): number => {
  const k = parameters.heelToSecondHeadMm / shape.scale.referenceHMm;
  if (!(k > 0.3 && k < 3)) throw new RangeError(`H of ${parameters.heelToSecondHeadMm} mm is not a foot`);
  return k;
};

const placed = (mesh: Mesh, motion: Motion, k: number): Mesh => mapMesh(mesh, (p) => scale(movePoint(motion, p), k));

/** One bone of a foot in a pose. Throws RangeError for a bone without parameters. Await `prepareAnatomy` before. */
export const buildBone = (
  shape: Shape,
  parameters: FootParameters,
  bone: SkeletonId,
  pose: PoseName,
  level: Level = 'display',
): Mesh =>
  placed(
    referenceBone(shape, parameters, bone, level),
    motionsOf(shape, parameters, pose).get(bone) ?? STILL,
    scaleOf(shape, parameters),
  );

/** The joints in a pose. Where a pose turns one bone on another, the joint lies midway between the two. */
export const jointsOf = (shape: Shape, parameters: FootParameters, pose: PoseName): ReadonlyMap<JointId, Joint> => {
  const motions = motionsOf(shape, parameters, pose);
  const longer = lengthened(shape, parameters);
  const k = scaleOf(shape, parameters);
  const joints = new Map<JointId, Joint>();
  for (const j of shape.joints) {
    if (!j.articular || !isBoneId(j.first) || !isBoneId(j.second)) continue;
    const id = idOf<JointId>(j.id);
    const grown = longer.has(j.first) ? undefined : longer.get(j.second);
    const here = joined(j, motions.get(j.first) ?? STILL, motions.get(j.second) ?? STILL, grown);
    const { u, w } = frameOfJoint(here);
    joints.set(id, {
      id,
      first: j.first,
      second: j.second,
      centre: scale(here.centre, k),
      normal: w,
      major: u,
      extentsMm: [j.extents[0] * k, j.extents[1] * k],
      radiiMm: [j.radii[0] * k, j.radii[1] * k],
    });
  }
  return joints;
};

/** A right foot from bones that are already built (for example read from the model file) in this pose and size. */
export const assembleFoot = (
  shape: Shape,
  parameters: FootParameters,
  pose: PoseName,
  built: { readonly bones: ReadonlyMap<BoneId, Mesh>; readonly leg: ReadonlyMap<LegId, Mesh>; readonly outline?: Mesh },
): Foot => ({
  parameters,
  pose,
  side: 'right',
  bones: built.bones,
  leg: built.leg,
  joints: jointsOf(shape, parameters, pose),
  outline: built.outline ?? buildOutline(shape, parameters, pose),
  reference: {
    motions: motionsOf(shape, parameters, pose),
    scale: scaleOf(shape, parameters),
    regions: shape.regions,
    lookAlikes: shape.lookAlikes,
  },
});

export const buildFoot = (
  shape: Shape,
  parameters: FootParameters,
  pose: PoseName = 'standing',
  level: Level = 'display',
): Foot => {
  const motions = motionsOf(shape, parameters, pose);
  const k = scaleOf(shape, parameters);
  const build = <T extends SkeletonId>(ids: readonly T[]): Map<T, Mesh> =>
    new Map(
      ids.map((bone) => [bone, placed(referenceBone(shape, parameters, bone, level), motions.get(bone) ?? STILL, k)]),
    );
  return assembleFoot(shape, parameters, pose, { bones: build(BONE_IDS), leg: build(LEG_IDS) });
};
