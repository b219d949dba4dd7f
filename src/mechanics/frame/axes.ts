/** Local axes of a member: x along it, y the part of the given direction across it, z = x cross y. */
import { cross, dot, length, normalize, scale, subtract, type Vec3 } from '../../units';

export type Axes = readonly [x: Vec3, y: Vec3, z: Vec3];

/** A direction nearer to the member than this (sine of the angle) says nothing about which way is across. */
const PARALLEL_SINE = 1e-9;

/** Null when the two points are one, or the direction has no length or runs along the member. */
export const localAxes = (from: Vec3, to: Vec3, across: Vec3): Axes | null => {
  const along = subtract(to, from);
  if (length(along) === 0 || length(across) === 0) return null;
  const x = normalize(along);
  const towards = normalize(across);
  const y = subtract(towards, scale(x, dot(towards, x)));
  if (length(y) < PARALLEL_SINE) return null;
  const unitY = normalize(y);
  return [x, unitY, cross(x, unitY)];
};
