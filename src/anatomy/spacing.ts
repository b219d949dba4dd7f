/**
 * How near bones lie to each other in a foot of another length. Cartilage is taken to be as thick in every foot (assumed, no source),
 * at the rim of a facet as in its middle: were only the cut in the middle held, rims would part with the length, and a facet would
 * face less of the other. So the standing reference foot, before it is scaled k times, is drawn together at its joints: what lies near
 * a joint's surface lies k times nearer to it. One map of all of space, so that bones that were clear of each other stay so. mm.
 */
import { add, cross, dot, scale, subtract, type Vec3 } from '../units';
import { type JointSurface, jointSurface } from './joint-surface';
import type { Shape } from './shape';
import { STILL } from './stance/motion';
import { joined, lengthened, motionsOf } from './stance/stance';
import type { FootForm } from './types';

/** Within this share of the reference size a gap is off by less than a tenth of a millimetre: the bones are only scaled. */
export const isSameSize = (k: number): boolean => Math.abs(k - 1) <= 0.02;

/** A facet acts in full as far past its rim, and from the second on not at all. */
const RIM = [3, 8] as const;
/** As deep in a bone a joint asks for half of what it would: the bone's other sides stay. */
const DEEP = 4;
/**
 * Triangles at a rim reach far down a flank that stays, so that what lies on them follows in part: at this distance from the surface
 * twice as much is asked for where the foot is longer, and far less where it is shorter and bones part.
 */
const HALF_HEARD = 3.5;
/** Farther from its facet than this a joint gives way to the others, and where no joint is heard nothing moves. */
const NEAR = 1;
const QUIET = 1e-3;
/** Nothing further from the middle of a joint than this beyond its long extent is moved by it. */
const FAR = 15;

/** The surfaces of all joints of the standing reference foot of some shape, each midway between its bones. */
export const standingSurfaces = (shape: Shape, form: FootForm): readonly JointSurface[] => {
  const motions = motionsOf(shape, form, 'standing');
  const longer = lengthened(shape, form);
  return shape.joints.map((j) => {
    const grown = longer.has(j.first) ? undefined : longer.get(j.second);
    return jointSurface(joined(j, motions.get(j.first) ?? STILL, motions.get(j.second) ?? STILL, grown), 1, 1);
  });
};

const actsAt = (past: number): number => {
  const t = Math.min(1, Math.max(0, (past - RIM[0]) / (RIM[1] - RIM[0])));
  return 1 - t * t * (3 - 2 * t);
};

/** How far along the way of a surface a point at this distance from it is to go. */
const askedOf = (side: number, k: number): number => {
  const rim = 1 + (side / HALF_HEARD) ** 2;
  return ((1 / k - 1) * side * (k > 1 ? rim : rim ** -4)) / (1 + (side / DEEP) ** 6);
};

/** Where a point of the standing reference foot goes in a foot k times as large, before it is scaled. */
export const drawnTogether = (surfaces: readonly JointSurface[], k: number): ((p: Vec3) => Vec3) => {
  if (isSameSize(k)) return (p) => p;
  return (p) => {
    // The shift that comes nearest to what each joint asks for along its own way, and to none where they act less: least squares.
    let acts = 0;
    let heard = 0;
    const sum = { xx: 0, yy: 0, zz: 0, xy: 0, xz: 0, yz: 0 };
    let right: Vec3 = [0, 0, 0];
    for (const { stand, shape } of surfaces) {
      const [dx, dy, dz] = subtract(p, shape.centre);
      if (dx * dx + dy * dy + dz * dz > (shape.extents[0] + FAR) ** 2) continue;
      const { side, way, past } = stand(p);
      const here = actsAt(past);
      if (here === 0) continue;
      const weight = here / (1 + (past * past + side * side) / NEAR ** 2) ** 2;
      acts = Math.max(acts, here);
      heard += weight;
      const [x, y, z] = way;
      sum.xx += weight * x * x;
      sum.yy += weight * y * y;
      sum.zz += weight * z * z;
      sum.xy += weight * x * y;
      sum.xz += weight * x * z;
      sum.yz += weight * y * z;
      right = add(right, scale(way, weight * askedOf(side, k)));
    }
    if (acts === 0) return p;
    const stay = (1 - acts) * heard + QUIET;
    const rows: readonly [Vec3, Vec3, Vec3] = [
      [sum.xx + stay, sum.xy, sum.xz],
      [sum.xy, sum.yy + stay, sum.yz],
      [sum.xz, sum.yz, sum.zz + stay],
    ];
    const [a, b, c] = [cross(rows[1], rows[2]), cross(rows[2], rows[0]), cross(rows[0], rows[1])];
    const shift = add(add(scale(a, right[0]), scale(b, right[1])), scale(c, right[2]));
    return add(p, scale(shift, 1 / dot(rows[0], a)));
  };
};
