/** A foot of another shape at once, to follow a hand on a slider: vertices moved, no surface looked for. */
import { BONE_IDS, LEG_IDS, type SkeletonId } from '../ids';
import { scale } from '../units';
import { assembleFoot } from './build';
import { mapMesh } from './mesh';
import { reshaped } from './reshape';
import type { Shape } from './shape';
import { scaleOf } from './size';
import { drawnTogether, standingSurfaces } from './spacing';
import { inverse, movePoint, STILL } from './stance/motion';
import { motionsOf } from './stance/stance';
import type { Foot, FootParameters, Mesh } from './types';

/**
 * The standing right foot of these parameters from the usual one (the default foot, standing). Joints and the places of bones are
 * exact; surfaces lie within 2 mm of the exact ones that `buildFoot` makes, and the outline is only scaled.
 */
export const previewFoot = (shape: Shape, usual: Foot, parameters: FootParameters): Foot => {
  const [before, now] = [motionsOf(shape, usual.parameters, 'standing'), motionsOf(shape, parameters, 'standing')];
  const [k0, k] = [scaleOf(shape, usual.parameters), scaleOf(shape, parameters)];
  const draw = drawnTogether(standingSurfaces(shape, parameters), k);
  const moved = (bone: SkeletonId, mesh: Mesh): Mesh => {
    const home = inverse(before.get(bone) ?? STILL);
    const there = now.get(bone) ?? STILL;
    const own = mapMesh(mesh, (p) => movePoint(home, scale(p, 1 / k0)));
    return mapMesh(reshaped(shape, parameters, bone, own), (p) => scale(draw(movePoint(there, p)), k));
  };
  const carry = <T extends SkeletonId>(ids: readonly T[], meshes: ReadonlyMap<T, Mesh>): Map<T, Mesh> =>
    new Map(
      ids.flatMap((id) => {
        const mesh = meshes.get(id);
        return mesh ? [[id, moved(id, mesh)] as const] : [];
      }),
    );
  return assembleFoot(shape, parameters, 'standing', {
    level: usual.level,
    bones: carry(BONE_IDS, usual.bones),
    leg: carry(LEG_IDS, usual.leg),
    outline: mapMesh(usual.outline, (p) => scale(p, k / k0)),
  });
};
