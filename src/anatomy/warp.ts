/**
 * How a bone gives when its joints do not lie where the table has them: every joint carries the bone near it, the middle stays.
 * Weights are normalised Gaussians about the joints' centres and the bone's own centre. mm, the bone's frame (reference foot, as
 * scanned).
 */
import { add, dot, subtract, type Vec3 } from '../units';
import { frameOfJoint } from './joint-surface';
import type { JointShape } from './shape';

export interface Warp {
  /** Where a point of the tabled bone goes. */
  readonly there: (p: Vec3) => Vec3;
  /** Where a point of the given bone came from, written into `home`. */
  readonly back: (x: number, y: number, z: number, home: [number, number, number]) => void;
  /** No joint's centre moves further than this, mm. */
  readonly most: number;
}

/** Reach of a joint's pull, mm. */
const REACH = 14;
/** Weight of the bone's centre against one joint. */
const ANCHOR = 0.6;

interface Pull {
  readonly at: Vec3;
  readonly rows: readonly [Vec3, Vec3, Vec3];
  readonly to: Vec3;
}

const pullOf = (home: JointShape, now: JointShape): Pull => {
  const [a, b] = [frameOfJoint(home), frameOfJoint(now)];
  const row = (k: 0 | 1 | 2): Vec3 =>
    add(add([b.u[k] * a.u[0], b.u[k] * a.u[1], b.u[k] * a.u[2]], [b.v[k] * a.v[0], b.v[k] * a.v[1], b.v[k] * a.v[2]]), [
      b.w[k] * a.w[0],
      b.w[k] * a.w[1],
      b.w[k] * a.w[2],
    ]);
  return { at: home.centre, rows: [row(0), row(1), row(2)], to: now.centre };
};

const STILL: Warp = {
  there: (p) => p,
  back: (x, y, z, home) => {
    home[0] = x;
    home[1] = y;
    home[2] = z;
  },
  most: 0,
};

/** `home` and `now`: the same joints in the same order. */
export const warpOf = (centre: Vec3, home: readonly JointShape[], now: readonly JointShape[]): Warp => {
  const pulls = home.flatMap((j, i) => {
    const moved = now[i];
    return moved === undefined || moved === j ? [] : [pullOf(j, moved)];
  });
  if (pulls.length === 0) return STILL;
  const still = home.filter((j, i) => now[i] === undefined || now[i] === j).map((j) => j.centre);
  const fall = 1 / (2 * REACH * REACH);
  const weight = (p: Vec3, c: Vec3): number => {
    const d = subtract(p, c);
    return Math.exp(-dot(d, d) * fall);
  };
  const shift = (p: Vec3): Vec3 => {
    let sum = ANCHOR * weight(p, centre) + 1e-6;
    for (const c of still) sum += weight(p, c);
    let [x, y, z] = [0, 0, 0];
    for (const q of pulls) {
      const w = weight(p, q.at);
      const d = subtract(p, q.at);
      sum += w;
      x += w * (dot(q.rows[0], d) + q.to[0] - p[0]);
      y += w * (dot(q.rows[1], d) + q.to[1] - p[1]);
      z += w * (dot(q.rows[2], d) + q.to[2] - p[2]);
    }
    return [x / sum, y / sum, z / sum];
  };
  return {
    there: (p) => add(p, shift(p)),
    back: (x, y, z, home3) => {
      // Two steps of the fixed point p = q - shift(p): the shifts are small against their reach.
      const s = shift([x, y, z]);
      const t = shift([x - s[0], y - s[1], z - s[2]]);
      home3[0] = x - t[0];
      home3[1] = y - t[1];
      home3[2] = z - t[2];
    },
    most: Math.max(...pulls.map((q) => Math.hypot(...subtract(q.to, q.at)))),
  };
};
