/**
 * Heel under the leg, seen straight from behind (the films for it look down by 20 or 45 deg). deg, foot frame.
 */
import { add, dot, normalize, scale, subtract, type Vec3 } from '../../units';
import { boneAxis, meshOf } from '../bone-axis';
import { sliceMesh } from '../slice';
import type { Foot, Mesh } from '../types';
import { type Angle, placed, type Segment, seen, slopeIn, turnBetween } from './angle';
import { sectionMiddle } from './section-middle';

const UP: Vec3 = [0, 1, 0];

/** The heel: the back 35 % of the calcaneus' length, without the shelf for the talus. */
const HEEL_TO = 0.35;
/** Which part of the heel's height is halved: above the two processes it stands on, below the slope to the joint. */
const HEIGHT = [0.2, 0.7] as const;
/** The part of the lower end of the tibia that is shaft or nearly, in shares of its height: less would be too short to aim by. */
const SHAFT = [0.6, 0.95] as const;
const SECTIONS = 13;
/** Rounds of measuring widths across the line that they give. */
const ROUNDS = 8;

/** Line through points by their heights along `up`. */
const lineThrough = (points: readonly Vec3[], up: Vec3): Segment => {
  const middle = scale(points.reduce(add), 1 / points.length);
  const off = (p: Vec3): number => dot(subtract(p, middle), up);
  const tilt = points.reduce<Vec3>((sum, p) => add(sum, scale(subtract(p, middle), off(p))), [0, 0, 0]);
  const along = normalize(tilt);
  const ends = points.map((p) => dot(subtract(p, middle), along));
  return [add(middle, scale(along, Math.min(...ends))), add(middle, scale(along, Math.max(...ends)))];
};

/** Loop points and where the loop passes the front of the heel. */
const within = (loop: readonly Vec3[], stationOf: (p: Vec3) => number, limit: number): Vec3[] =>
  loop.flatMap((p, i) => {
    const q = loop[(i + 1) % loop.length] ?? p;
    const [s, t] = [stationOf(p), stationOf(q)];
    const edge = s < limit !== t < limit ? [add(p, scale(subtract(q, p), (limit - s) / (t - s)))] : [];
    return s <= limit ? [p, ...edge] : edge;
  });

/** Upwards through the heel, half-way between its medial and lateral border, widths being measured across the line itself. */
const heelAxis = (foot: Foot): Segment => {
  const mesh = meshOf(foot, 'calcaneus');
  const { origin, axis, lengthMm } = boneAxis(foot, 'calcaneus');
  const stationOf = (p: Vec3): number => dot(subtract(p, origin), axis);
  const limit = HEEL_TO * lengthMm;
  const inHeel = (up: Vec3, height: number): Vec3[] =>
    sliceMesh(mesh, scale(up, height), up).flatMap((loop) => within(loop, stationOf, limit));
  const heights = (up: Vec3): readonly [number, number] => {
    const points: number[] = [];
    for (let i = 0; i < mesh.positions.length; i += 3) {
      const p: Vec3 = [mesh.positions[i] ?? 0, mesh.positions[i + 1] ?? 0, mesh.positions[i + 2] ?? 0];
      if (stationOf(p) <= limit) points.push(dot(p, up));
    }
    return [Math.min(...points), Math.max(...points)];
  };
  let up = UP;
  let line: Segment = [origin, add(origin, up)];
  for (let round = 0; round < ROUNDS; round++) {
    const [low, top] = heights(up);
    const side: Vec3 = [up[1], -up[0], 0];
    const middles = Array.from({ length: SECTIONS }, (_, i): Vec3 => {
      const height = low + (top - low) * (HEIGHT[0] + ((HEIGHT[1] - HEIGHT[0]) * i) / (SECTIONS - 1));
      const points = inHeel(up, height);
      const across = points.map((p) => dot(p, side));
      const depth = points.reduce((sum, p) => sum + p[2], 0) / points.length;
      const flat = add(scale(side, (Math.min(...across) + Math.max(...across)) / 2), scale(up, height));
      return [flat[0], flat[1], depth];
    });
    line = lineThrough(middles, up);
    up = normalize(placed('rear', { ...seen('rear', subtract(line[1], line[0])), depth: 0 }));
  }
  return line;
};

/** Upwards through the middles of the shaft of the tibia's lower end. Throws RangeError for a foot without a tibia. */
const tibialAxis = (foot: Foot): Segment => {
  const mesh: Mesh | undefined = foot.leg.get('tibia');
  if (!mesh) throw new RangeError('this foot has no tibia');
  let up = UP;
  let line: Segment = [up, up];
  for (let round = 0; round < ROUNDS; round++) {
    const heights: number[] = [];
    for (let i = 0; i < mesh.positions.length; i += 3)
      heights.push(dot([mesh.positions[i] ?? 0, mesh.positions[i + 1] ?? 0, mesh.positions[i + 2] ?? 0], up));
    const [low, top] = [Math.min(...heights), Math.max(...heights)];
    const middles = Array.from({ length: SECTIONS }, (_, i) => {
      const share = SHAFT[0] + ((SHAFT[1] - SHAFT[0]) * i) / (SECTIONS - 1);
      return sectionMiddle(mesh, scale(up, low + (top - low) * share), up).at;
    });
    line = lineThrough(middles, up);
    up = normalize(subtract(line[1], line[0]));
  }
  return line;
};

/** Axis of the tibia to axis of the heel: positive when the heel is in varus (its lower end medial), negative in valgus. */
export const hindfootAlignment = (foot: Foot): Angle => {
  const [leg, heel] = [tibialAxis(foot), heelAxis(foot)];
  return {
    id: 'hindfootAlignment',
    value: turnBetween(slopeIn('rear', heel), slopeIn('rear', leg)),
    unit: 'deg',
    view: 'rear',
    lines: [leg, heel],
  };
};
