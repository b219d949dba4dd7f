/**
 * From the default foot to one of another shape, by moving vertices only: quick enough to follow a hand on a slider, and the start
 * from which the exact surface is found. The triangles stay, so that pins and zones do.
 */
import { BONE_IDS, LEG_IDS, type SkeletonId } from '../ids';
import { scale } from '../units';
import { boneShapeOf, jointsAt } from './bone-field';
import { mapMesh } from './mesh';
import { DEFAULT_FOOT } from './parameters';
import { settingOf } from './setting';
import type { Shape } from './shape';
import { inverse, movePoint, STILL } from './stance/motion';
import { motionsOf } from './stance/stance';
import type { Foot, FootForm, FootParameters, Mesh } from './types';
import { warpOf } from './warp';

const warpFor = (shape: Shape, form: FootForm, bone: SkeletonId) =>
  warpOf(boneShapeOf(shape, bone).centre, jointsAt(shape, bone), settingOf(shape, form, bone));

/** A bone of the default foot carried to another form, in the bone's own frame (reference foot, as scanned). */
export const reshaped = (shape: Shape, form: FootForm, bone: SkeletonId, mesh: Mesh): Mesh => {
  const [from, to] = [warpFor(shape, DEFAULT_FOOT, bone), warpFor(shape, form, bone)];
  const home: [number, number, number] = [0, 0, 0];
  return mapMesh(mesh, ([x, y, z]) => {
    from.back(x, y, z, home);
    return to.there([home[0], home[1], home[2]]);
  });
};

/**
 * The default standing right foot as it would be with other parameters: bones turned and their ends moved, joints and outline as
 * they were. Surfaces are within a millimetre of the exact ones that `buildFoot` makes.
 */
export const previewFoot = (shape: Shape, usual: Foot, parameters: FootParameters): Foot => {
  const [before, now] = [motionsOf(shape, DEFAULT_FOOT, 'standing'), motionsOf(shape, parameters, 'standing')];
  const k0 = usual.parameters.heelToSecondHeadMm / shape.scale.referenceHMm;
  const k = parameters.heelToSecondHeadMm / shape.scale.referenceHMm;
  const moved = (bone: SkeletonId, mesh: Mesh): Mesh => {
    const home = inverse(before.get(bone) ?? STILL);
    const there = now.get(bone) ?? STILL;
    const own = mapMesh(mesh, (p) => movePoint(home, scale(p, 1 / k0)));
    return mapMesh(reshaped(shape, parameters, bone, own), (p) => scale(movePoint(there, p), k));
  };
  const carry = <T extends SkeletonId>(ids: readonly T[], meshes: ReadonlyMap<T, Mesh>): Map<T, Mesh> =>
    new Map(
      ids.flatMap((id) => {
        const mesh = meshes.get(id);
        return mesh ? [[id, moved(id, mesh)] as const] : [];
      }),
    );
  return {
    ...usual,
    parameters,
    bones: carry(BONE_IDS, usual.bones),
    leg: carry(LEG_IDS, usual.leg),
    reference: { ...usual.reference, motions: now, scale: k },
  };
};
