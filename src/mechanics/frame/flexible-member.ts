/**
 * A member as a chain of straight prismatic segments, end to end: tapered and curved members, without nodes between. The chain is
 * held at its first end; what the segments give way under forces at its last end adds up (exactly, by statics), the inverse of that
 * sum is the stiffness of the last end, and balance of the whole chain gives the rest. Equals the same segments assembled with a
 * node at each joint. mm, N, MPa, rad.
 */
import { length, subtract, type Vec3 } from '../../units';
import { localAxes } from './axes';
import { invert } from './ldl';
import { endStiffness, type Prism } from './timoshenko';

export interface MemberSegment extends Prism {
  readonly from: Vec3;
  readonly to: Vec3;
  /** Any direction not along the segment; local y is its part across it. */
  readonly y: Vec3;
}

const get = (a: Float64Array, i: number): number => a[i] as number;

/** Forces at `at` (fx fy fz mx my mz, global) seen at another point, in its own axes: 6 x 6 row-major. Moments gain (at - point) x f. */
const carried = (at: Vec3, point: Vec3, axes: readonly Vec3[]): Float64Array => {
  const [dx, dy, dz] = subtract(at, point);
  const lever = [0, -dz, dy, dz, 0, -dx, -dy, dx, 0];
  const c = new Float64Array(36);
  axes.forEach((axis, i) => {
    for (let j = 0; j < 3; j++) {
      c[i * 6 + j] = axis[j] as number;
      c[(i + 3) * 6 + j + 3] = axis[j] as number;
      for (let k = 0; k < 3; k++)
        c[(i + 3) * 6 + j] = get(c, (i + 3) * 6 + j) + (axis[k] as number) * (lever[k * 3 + j] as number);
    }
  });
  return c;
};

/** How the end of one clamped segment gives way under forces there, in the segment's axes: 6 x 6 row-major. */
const segmentFlexibility = (s: Prism, l: number): Float64Array => {
  const f = new Float64Array(36);
  const shear = (area: number | undefined): number => (area === undefined ? 0 : l / (s.shearMPa * area));
  const [eiY, eiZ] = [s.youngMPa * s.iyMm4, s.youngMPa * s.izMm4];
  f[0] = l / (s.youngMPa * s.areaMm2);
  f[7] = l ** 3 / (3 * eiZ) + shear(s.shearYMm2);
  f[11] = f[31] = l ** 2 / (2 * eiZ);
  f[35] = l / eiZ;
  f[14] = l ** 3 / (3 * eiY) + shear(s.shearZMm2);
  f[16] = f[26] = -(l ** 2) / (2 * eiY);
  f[28] = l / eiY;
  f[21] = l / (s.shearMPa * s.jMm4);
  return f;
};

/** `sum` += c^T f c, all 6 x 6; f and sum symmetric. */
const addThrough = (sum: Float64Array, f: Float64Array, c: Float64Array): void => {
  const row = new Float64Array(6);
  for (let a = 0; a < 6; a++) {
    row.fill(0);
    for (let b = 0; b < 6; b++) {
      const value = get(f, a * 6 + b);
      if (value === 0) continue;
      for (let j = 0; j < 6; j++) row[j] = get(row, j) + value * get(c, b * 6 + j);
    }
    for (let i = 0; i < 6; i++) {
      const left = get(c, a * 6 + i);
      if (left === 0) continue;
      for (let j = 0; j < i; j++) sum[i * 6 + j] = sum[j * 6 + i] = get(sum, i * 6 + j) + left * get(row, j);
      sum[i * 7] = get(sum, i * 7) + left * get(row, i);
    }
  }
};

const lastOf = (segments: readonly MemberSegment[]): MemberSegment => {
  const last = segments.at(-1);
  if (last === undefined) throw new RangeError('a chain needs a segment');
  return last;
};

/**
 * How a point fast to the last end (that end itself where none is given) gives way under forces and moments there while the first
 * end is held: 6 x 6 row-major, global axes, ux uy uz rx ry rz. Throws RangeError, naming the segment, for one of no length or whose y
 * runs along it.
 */
export const chainFlexibility = (segments: readonly MemberSegment[], end: Vec3 = lastOf(segments).to): Float64Array => {
  const sum = new Float64Array(36);
  segments.forEach((segment, i) => {
    const axes = localAxes(segment.from, segment.to, segment.y);
    if (axes === null) throw new RangeError(`segment ${i} has no length, or its y runs along it`);
    const own = segmentFlexibility(segment, length(subtract(segment.to, segment.from)));
    addThrough(sum, own, carried(end, segment.to, axes));
  });
  return sum;
};

const GLOBAL: readonly Vec3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

/**
 * Stiffness of the chain between segments[0].from and the last .to: 12 x 12 row-major, global axes, ux uy uz rx ry rz at the first
 * end, then at the last. Throws RangeError as `chainFlexibility`, and when a section or modulus is not positive.
 */
export const chainStiffness = (segments: readonly MemberSegment[]): Float64Array => {
  const last = lastOf(segments);
  const end = invert(chainFlexibility(segments), 6);
  // Forces at the last end, seen at the first: balance turns their sign.
  const seen = carried(last.to, (segments[0] ?? last).from, GLOBAL);
  const modes = new Float64Array(72);
  for (let a = 0; a < 6; a++) {
    for (let i = 0; i < 6; i++) modes[a * 12 + i] = -get(seen, i * 6 + a);
    modes[a * 12 + 6 + a] = 1;
  }
  return endStiffness(end, modes);
};
