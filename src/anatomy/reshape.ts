/**
 * From the default foot to one of another shape, by moving vertices only: the start from which the exact surface is found. The
 * triangles stay, so that pins and zones do.
 */
import type { SkeletonId } from '../ids';
import { boneShapeOf, jointsAt } from './bone-field';
import { mapMesh } from './mesh';
import { DEFAULT_FOOT } from './parameters';
import { settingOf } from './setting';
import type { Shape } from './shape';
import type { FootParameters, Mesh } from './types';
import { warpOf } from './warp';

const warpFor = (shape: Shape, form: FootParameters, bone: SkeletonId) =>
  warpOf(boneShapeOf(shape, bone).centre, jointsAt(shape, bone), settingOf(shape, form, bone));

/** A bone of the default foot carried to another form, in the bone's own frame (reference foot, as scanned). */
export const reshaped = (shape: Shape, form: FootParameters, bone: SkeletonId, mesh: Mesh): Mesh => {
  const [from, to] = [warpFor(shape, DEFAULT_FOOT, bone), warpFor(shape, form, bone)];
  const home: [number, number, number] = [0, 0, 0];
  return mapMesh(mesh, ([x, y, z]) => {
    from.back(x, y, z, home);
    return to.there([home[0], home[1], home[2]]);
  });
};
