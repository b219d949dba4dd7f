/**
 * How a bone gives when its joints do not lie where the table has them: every joint carries the bone near it, the middle stays.
 * Weights are normalised Gaussians about the joints' centres and the bone's own centre. mm, the bone's frame (reference foot, as
 * scanned).
 */
import { add, subtract, type Vec3 } from '../units';
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
  // Flat numbers: asked for at every block of a bone's grid. Centres that hold still first, the bone's own with its weight.
  const held = Float64Array.from([...centre, ANCHOR, ...still.flatMap((c) => [...c, 1])]);
  const moving = Float64Array.from(pulls.flatMap((q) => [...q.at, ...q.rows.flat(), ...q.to]));
  const out = new Float64Array(3);
  const near = (dx: number, dy: number, dz: number): number => Math.exp(-(dx * dx + dy * dy + dz * dz) * fall);
  const n = (k: number): number => moving[k] as number;
  /** Writes the shift of a point into `out`. */
  const shift = (x: number, y: number, z: number): void => {
    let sum = 1e-6;
    for (let o = 0; o < held.length; o += 4)
      sum +=
        (held[o + 3] as number) *
        near(x - (held[o] as number), y - (held[o + 1] as number), z - (held[o + 2] as number));
    let [sx, sy, sz] = [0, 0, 0];
    for (let o = 0; o < moving.length; o += 15) {
      const [dx, dy, dz] = [x - n(o), y - n(o + 1), z - n(o + 2)];
      const w = near(dx, dy, dz);
      sum += w;
      sx += w * (n(o + 3) * dx + n(o + 4) * dy + n(o + 5) * dz + n(o + 12) - x);
      sy += w * (n(o + 6) * dx + n(o + 7) * dy + n(o + 8) * dz + n(o + 13) - y);
      sz += w * (n(o + 9) * dx + n(o + 10) * dy + n(o + 11) * dz + n(o + 14) - z);
    }
    out[0] = sx / sum;
    out[1] = sy / sum;
    out[2] = sz / sum;
  };
  return {
    there: (p) => {
      shift(p[0], p[1], p[2]);
      return [p[0] + (out[0] as number), p[1] + (out[1] as number), p[2] + (out[2] as number)];
    },
    back: (x, y, z, from) => {
      // Two steps of the fixed point p = q - shift(p): the shifts are small against their reach.
      shift(x, y, z);
      shift(x - (out[0] as number), y - (out[1] as number), z - (out[2] as number));
      from[0] = x - (out[0] as number);
      from[1] = y - (out[1] as number);
      from[2] = z - (out[2] as number);
    },
    most: Math.max(...pulls.map((q) => Math.hypot(...subtract(q.to, q.at)))),
  };
};
