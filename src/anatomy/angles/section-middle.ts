/** The middle of a bone where a plane cuts it. mm. */
import { add, cross, dot, normalize, scale, subtract, type Vec3 } from '../../units';
import { sliceMesh } from '../slice';
import type { Mesh } from '../types';

interface SectionMiddle {
  readonly at: Vec3;
  readonly areaMm2: number;
}

/** Area and centroid of the area inside a flat loop. */
const middleOf = (loop: readonly Vec3[], normal: Vec3): SectionMiddle => {
  const about = loop[0] ?? [0, 0, 0];
  let sum: Vec3 = [0, 0, 0];
  let twice = 0;
  for (const [i, p] of loop.entries()) {
    const [a, b] = [subtract(p, about), subtract(loop[(i + 1) % loop.length] ?? p, about)];
    const w = dot(cross(a, b), normal);
    sum = add(sum, scale(add(a, b), w / 3));
    twice += w;
  }
  return { at: add(about, scale(sum, 1 / twice)), areaMm2: twice / 2 };
};

/** Centroid of the largest piece that a plane cuts out of a closed mesh. Throws RangeError when the plane misses the bone. */
export const sectionMiddle = (mesh: Mesh, at: Vec3, normal: Vec3): SectionMiddle => {
  const n = normalize(normal);
  const pieces = sliceMesh(mesh, at, n).map((loop) => middleOf(loop, n));
  const [first, ...rest] = pieces;
  if (!first) throw new RangeError('the plane does not cut the bone');
  return rest.reduce((most, piece) => (piece.areaMm2 > most.areaMm2 ? piece : most), first);
};

/** Centroid of the part of a bone between two stations of its axis (mm from its proximal end): sections weighted by area. */
export const blockMiddle = (
  mesh: Mesh,
  { origin, axis }: { readonly origin: Vec3; readonly axis: Vec3 },
  fromMm: number,
  toMm: number,
): Vec3 => {
  const sections = 24;
  let sum: Vec3 = [0, 0, 0];
  let weight = 0;
  for (let i = 0; i < sections; i++) {
    const s = fromMm + ((i + 0.5) / sections) * (toMm - fromMm);
    const { at, areaMm2 } = sectionMiddle(mesh, add(origin, scale(axis, s)), axis);
    sum = add(sum, scale(at, areaMm2));
    weight += areaMm2;
  }
  return scale(sum, 1 / weight);
};
