/**
 * Builds the bones of a foot. A bone's surface is made once, for the default foot; any other shape moves the same triangles on
 * to its own field, so that pins and zones stay. Poses turn the finished bones and do not change them.
 */
import { BONE_IDS, type BoneId, idOf, isBoneId, type JointId, LEG_IDS, type LegId, type SkeletonId } from '../ids';
import { scale, type Vec3 } from '../units';
import { boneField } from './bone-field';
import { frameOfJoint } from './joint-surface';
import { mapMesh, rounded } from './mesh';
import { cutInto, type Sampled, sampled, surfaceOf } from './meshing/levels';
import { projected } from './meshing/repair';
import { normalsFrom } from './normals';
import { buildOutline } from './outline';
import { DEFAULT_FOOT } from './parameters';
import { reshaped } from './reshape';
import { sameJoints, settingOf } from './setting';
import type { Shape } from './shape';
import { checkForm, scaleOf } from './size';
import { spaced } from './spaced';
import { inverse, type Motion, moveDirection, movePoint, STILL } from './stance/motion';
import { joined, lengthened, motionsOf } from './stance/stance';
import type { Foot, FootParameters, Joint, Level, Mesh, PoseName } from './types';
import { whatCounts } from './what-counts';

const meshingOf = (shape: Shape, bone: SkeletonId): Shape['meshing'][string] => {
  const found = shape.meshing[bone];
  if (!found) throw new RangeError(`no meshing for ${bone}`);
  return found;
};

interface Usual {
  sampled: Sampled | null;
  readonly cut: Map<Level, Mesh>;
}
/** The bones of the default foot, kept: every other foot starts from their triangles. */
const usual = new WeakMap<Shape, Map<SkeletonId, Usual>>();

const usualOf = (shape: Shape, bone: SkeletonId): Usual => {
  const bones = usual.get(shape) ?? new Map<SkeletonId, Usual>();
  usual.set(shape, bones);
  const known = bones.get(bone) ?? { sampled: null, cut: new Map<Level, Mesh>() };
  bones.set(bone, known);
  return known;
};

/** Vertices moved with a rigid motion, and perhaps scaled; their normals turn along. */
const turned = (mesh: Mesh, motion: Motion, move: (p: Vec3) => Vec3): Mesh => {
  const moved = mapMesh(mesh, move);
  if (mesh.normals === undefined) return moved;
  const vectors = mapMesh({ positions: mesh.normals, indices: mesh.indices }, (n) => moveDirection(motion, n));
  return { ...moved, normals: vectors.positions };
};

/**
 * A bone of the default foot as it comes back from the model file, which rounds where it stands: so that the foot of another shape
 * is the same whether it starts from the file or from nothing.
 */
const asFiled = (shape: Shape, bone: SkeletonId, mesh: Mesh): Mesh => {
  const motion = motionsOf(shape, DEFAULT_FOOT, 'standing').get(bone) ?? STILL;
  const filed = rounded(turned(mesh, motion, (p) => movePoint(motion, p)));
  const home = inverse(motion);
  return turned(filed, home, (p) => movePoint(home, p));
};

const usualBone = (shape: Shape, bone: SkeletonId, level: Level): Mesh => {
  const known = usualOf(shape, bone);
  const ready = known.cut.get(level);
  if (ready) return ready;
  const meshing = meshingOf(shape, bone);
  const joints = settingOf(shape, DEFAULT_FOOT, bone);
  const { local, box } = boneField(shape, bone, joints);
  known.sampled ??= sampled(local, box, meshing.step);
  const standing = motionsOf(shape, DEFAULT_FOOT, 'standing').get(bone) ?? STILL;
  // Many triangles lie on the bone everywhere, and sections through its shaft need them there.
  const weight = level === 'fine' ? null : whatCounts(shape.defaults.counts, bone, joints, standing);
  const bare = cutInto(known.sampled, meshing[level], weight);
  const cut = asFiled(shape, bone, { ...bare, normals: normalsFrom(local.value, bare) });
  known.cut.set(level, cut);
  return cut;
};

/** The default foot, right and standing: as it is shipped. */
export const isUsual = ({ parameters, pose, side }: Foot): boolean =>
  pose === 'standing' &&
  side === 'right' &&
  Object.entries(DEFAULT_FOOT).every(([name, value]) => parameters[name as keyof FootParameters] === value);

/**
 * Takes the triangles of the default foot from one that is already made (the shipped model), so that they need not be found again:
 * the dearest part of a first foot. Those that are already known stay. Throws RangeError for any other foot.
 */
export const startFrom = (shape: Shape, foot: Foot): void => {
  if (!isUsual(foot)) throw new RangeError('feet start from the default one, right and standing');
  const motions = motionsOf(shape, DEFAULT_FOOT, 'standing');
  const k = scaleOf(shape, DEFAULT_FOOT);
  for (const [bone, mesh] of [...foot.bones, ...foot.leg]) {
    const home = inverse(motions.get(bone) ?? STILL);
    const { cut } = usualOf(shape, bone);
    if (!cut.has(foot.level))
      cut.set(
        foot.level,
        turned(mesh, home, (p) => movePoint(home, scale(p, 1 / k))),
      );
  }
};

/** The bone of a foot of some shape, as long as the reference foot and as scanned. */
const shapedBone = (shape: Shape, form: FootParameters, bone: SkeletonId, level: Level): Mesh => {
  const mesh = usualBone(shape, bone, level);
  // Most bones of the toes are turned and not changed.
  if (sameJoints(settingOf(shape, form, bone), settingOf(shape, DEFAULT_FOOT, bone))) return mesh;
  const { local, box } = boneField(shape, bone, settingOf(shape, form, bone));
  const surface = surfaceOf(local, box, meshingOf(shape, bone).step);
  const own = projected(reshaped(shape, form, bone, mesh), surface);
  return { ...own, normals: normalsFrom(local.value, own) };
};

/** The same for a foot of any length, before it is scaled to it. */
const referenceBone = (shape: Shape, form: FootParameters, bone: SkeletonId, level: Level): Mesh =>
  spaced(shape, form, bone, shapedBone(shape, form, bone, level));

const placed = (mesh: Mesh, motion: Motion, k: number): Mesh =>
  turned(mesh, motion, (p) => scale(movePoint(motion, p), k));

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
  built: {
    readonly level: Level;
    readonly bones: ReadonlyMap<BoneId, Mesh>;
    readonly leg: ReadonlyMap<LegId, Mesh>;
    readonly outline?: Mesh;
  },
): Foot => ({
  parameters,
  pose,
  side: 'right',
  level: built.level,
  bones: built.bones,
  leg: built.leg,
  joints: jointsOf(shape, parameters, pose),
  outline: built.outline ?? buildOutline(shape, parameters, pose),
  reference: {
    motions: motionsOf(shape, parameters, pose),
    scale: scaleOf(shape, parameters),
    regions: shape.regions,
    lookAlikes: shape.lookAlikes,
    strands: shape.strands,
  },
});

/** A right foot. Throws RangeError for measures outside the bounds. Await `prepareAnatomy` before. */
export const buildFoot = (
  shape: Shape,
  parameters: FootParameters,
  pose: PoseName = 'standing',
  level: Level = 'display',
): Foot => {
  checkForm(parameters);
  const motions = motionsOf(shape, parameters, pose);
  const k = scaleOf(shape, parameters);
  const build = <T extends SkeletonId>(ids: readonly T[]): Map<T, Mesh> =>
    new Map(
      ids.map((bone) => [bone, placed(referenceBone(shape, parameters, bone, level), motions.get(bone) ?? STILL, k)]),
    );
  return assembleFoot(shape, parameters, pose, { level, bones: build(BONE_IDS), leg: build(LEG_IDS) });
};
