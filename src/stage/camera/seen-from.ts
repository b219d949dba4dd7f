/** From which named view a bone is really seen: what is lit in a question must be in sight. Pure. */
import type { BoneId } from '../../ids';
import type { ViewId } from '../../session/types';
import { add, cross, dot, length, scale, subtract, type Vec3 } from '../../units';
import { firstSeen } from '../draw/pick';
import type { PlateMesh } from '../draw/plate-mesh';
import { basisOf } from './camera';
import { anglesOf } from './views';

/** Of the whole foot, the one that people know it from first. */
const VIEWS_OF_ALL: readonly ViewId[] = ['outer', 'inner', 'top', 'sole', 'front', 'back'];
/** So many facets of a bone tell how much of it is in sight. */
const LOOKED_AT = 160;
/** An earlier view that shows this share of what the best one shows is good enough: feet are known from their sides. */
const ENOUGH = 0.5;

const at = (a: Float32Array, v: number): Vec3 => [a[3 * v] ?? 0, a[3 * v + 1] ?? 0, a[3 * v + 2] ?? 0];

/** What the eye sees of a bone, about, mm² of the picture. */
export const seenMm2 = (mesh: PlateMesh, bone: BoneId, eye: Vec3): number => {
  const range = mesh.ranges.find((each) => each.bone === bone);
  if (range === undefined) return 0;
  const stride = 3 * Math.max(1, Math.floor(range.count / 3 / LOOKED_AT));
  let sum = 0;
  for (let v = range.start; v < range.start + range.count; v += stride) {
    const [a, b, c] = [at(mesh.positions, v), at(mesh.positions, v + 1), at(mesh.positions, v + 2)];
    const towards = dot(cross(subtract(b, a), subtract(c, a)), eye) / 2;
    if (towards <= 0) continue;
    const middle = scale(add(add(a, b), c), 1 / 3);
    const hit = firstSeen(mesh, middle, eye);
    if (hit?.bone === bone && length(subtract(hit.point, middle)) < 0.5) sum += towards;
  }
  return (sum * stride) / 3;
};

/** The first view that shows the bone about as well as any does. A left foot shows the same from its own sides. */
export const viewThatShows = (mesh: PlateMesh, bone: BoneId): ViewId => {
  const seen = VIEWS_OF_ALL.map((view) => ({ view, mm2: seenMm2(mesh, bone, basisOf(anglesOf(view, false)).eye) }));
  const most = Math.max(...seen.map(({ mm2 }) => mm2));
  return seen.find(({ mm2 }) => mm2 >= ENOUGH * most)?.view ?? 'outer';
};
