/**
 * Units and small vectors. Inside: mm, N, MPa, rad, kg, weeks since the injury. Degrees, body weights, feet and pounds
 * exist only at the edge of the screen. Frame: right-handed, right foot, +X medial, +Y dorsal, +Z towards the toes.
 */

export type Vec3 = readonly [x: number, y: number, z: number];

/** A calendar date without a time, `YYYY-MM-DD`, valid in the Gregorian calendar. */
export type IsoDate = string & { readonly __isoDate: true };

/** The closed set of units that a value in an Explanation may carry. */
export type Unit =
  | 'mm'
  | 'mm2'
  | 'mm4'
  | 'N'
  | 'N mm'
  | 'N m'
  | 'MPa'
  | 'kg'
  | 'cm'
  | 'week'
  | 'deg'
  | 'count'
  | 'share'
  | 'body weight'
  | 'times'
  | 'm/s'
  | 'N m/rad'
  | 'second';

/** A number that is never separated from its unit. `lowHigh` is a band when the value is not one figure. */
export interface Quantity {
  readonly value: number;
  readonly unit: Unit;
  readonly lowHigh?: readonly [low: number, high: number];
}

/** Standard gravity, m/s2 (exact by definition, CGPM 1901). */
export const STANDARD_GRAVITY = 9.80665;

export const radians = (degrees: number): number => (degrees * Math.PI) / 180;
export const degrees = (rad: number): number => (rad * 180) / Math.PI;

export const add = (a: Vec3, b: Vec3): Vec3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const subtract = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const scale = (a: Vec3, k: number): Vec3 => [a[0] * k, a[1] * k, a[2] * k];
export const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const length = (a: Vec3): number => Math.hypot(a[0], a[1], a[2]);
/** Unit vector. Throws RangeError for a zero vector: a direction that does not exist is a programmer's error. */
export const normalize = (a: Vec3): Vec3 => {
  const n = length(a);
  if (n === 0) throw new RangeError('normalize: the zero vector has no direction');
  return scale(a, 1 / n);
};

/** Seeded random numbers in [0, 1): mulberry32. Same seed, same sequence, everywhere. */
export const seededRandom = (seed: number): (() => number) => {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
};
