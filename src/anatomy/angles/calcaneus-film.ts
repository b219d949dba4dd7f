/**
 * The two angles of the upper border of the calcaneus on the lateral film, by which a crushed heel bone is known. "Highest" is meant
 * with the bone at its usual pitch, so that the angles do not change when the bone is turned. mm and deg, foot frame.
 */
import { add, dot, scale, subtract, type Vec3 } from '../../units';
import { meshOf } from '../bone-axis';
import { verticesOf } from '../mesh';
import { sliceMesh } from '../slice';
import type { Foot } from '../types';
import { type Angle, type Segment, slopeIn, turnBetween } from './angle';
import { sharesAlong, usualStance } from './heel-film';

/** Parts of the bone's length in which tuberosity, posterior facet and anterior process have their tops. */
const TUBEROSITY = [0, 0.35] as const;
const FACET = [0.35, 0.7] as const;
const PROCESS = [0.75, 1] as const;
/** The upper back corner of the tuberosity is where a ruler touches it that leans back by half a right angle. */
const CORNER = Math.SQRT1_2;

const highest = (points: readonly Vec3[], up: Vec3): Vec3 => {
  const [first, ...rest] = points;
  if (!first) throw new RangeError('no part of the calcaneus lies there');
  return rest.reduce((top, p) => (dot(p, up) > dot(top, up) ? p : top), first);
};

/** The point that a line from `from` touches from above. */
const touched = (from: Vec3, points: readonly Vec3[]): Vec3 => {
  const [first, ...rest] = points;
  if (!first) throw new RangeError('no part of the calcaneus lies there');
  const rise = (p: Vec3): number => slopeIn('lateral', [from, p]);
  return rest.reduce((top, p) => (turnBetween(rise(top), rise(p)) > 0 ? p : top), first);
};

/**
 * Lateral film: lines from the highest point of the posterior facet to the upper back corner of the tuberosity and to the top of the
 * anterior process (where the line touches it); the acute angle between them.
 */
export const boehler = (foot: Foot): Angle => {
  const { forwards, up } = usualStance(foot);
  const points = verticesOf(meshOf(foot, 'calcaneus'));
  const share = sharesAlong(points, forwards);
  const part = ([from, to]: readonly [number, number]): Vec3[] =>
    points.filter((p) => share(p) >= from && share(p) <= to);
  const corner = highest(part(TUBEROSITY), scale(subtract(up, forwards), CORNER));
  const top = highest(part(FACET), up);
  const front = touched(top, part(PROCESS));
  return {
    id: 'boehler',
    value: slopeIn('lateral', [corner, top]) - slopeIn('lateral', [top, front]),
    unit: 'deg',
    view: 'lateral',
    lines: [
      [top, corner],
      [top, front],
    ],
    vertex: top,
  };
};

/** Share of the bone's width, from its lateral side, whose upper border the film shows as the dense lines of the angle. */
const LATERAL = 0.38;
const STEPS = 160;

/** Highest points of the lateral part of the bone, from back to front. */
const upperBorder = (foot: Foot, forwards: Vec3, up: Vec3): Vec3[] => {
  const mesh = meshOf(foot, 'calcaneus');
  const points = verticesOf(mesh);
  const widths = points.map((p) => p[0]);
  const limit = Math.min(...widths) + LATERAL * (Math.max(...widths) - Math.min(...widths));
  const stations = points.map((p) => dot(p, forwards));
  const [back, front] = [Math.min(...stations), Math.max(...stations)];
  const border: Vec3[] = [];
  for (let i = 1; i < STEPS; i++) {
    const at = scale(forwards, back + ((front - back) * i) / STEPS);
    const inside = sliceMesh(mesh, at, forwards).flatMap((loop) =>
      loop.flatMap((p, k) => {
        const q = loop[(k + 1) % loop.length] ?? p;
        const crosses = p[0] < limit !== q[0] < limit;
        const edge = crosses ? [add(p, scale(subtract(q, p), (limit - p[0]) / (q[0] - p[0])))] : [];
        return p[0] < limit ? [p, ...edge] : edge;
      }),
    );
    if (inside.length > 0) border.push(highest(inside, up));
  }
  return border;
};

/** The corner in front of the posterior facet: its wall behind (from the facet's top down) and in front (up to the process' top). */
interface Corner {
  readonly down: readonly Vec3[];
  readonly bottom: Vec3;
  readonly rising: readonly Vec3[];
  readonly up: Vec3;
}

/** The floor of the corner is what lies lower than this share of its depth; its bottom is the middle of the floor. */
const FLOOR = 0.25;

const cornerOf = (foot: Foot): Corner => {
  const { forwards, up } = usualStance(foot);
  const border = upperBorder(foot, forwards, up);
  const share = sharesAlong(verticesOf(meshOf(foot, 'calcaneus')), forwards);
  const part = ([from, to]: readonly [number, number]): Vec3[] =>
    border.filter((p) => share(p) >= from && share(p) <= to);
  const facet = highest(part(FACET), up);
  const process = touched(facet, part(PROCESS));
  const walls = border.slice(border.indexOf(facet), border.indexOf(process) + 1);
  const heights = walls.map((p) => dot(p, up));
  const low = Math.min(...heights);
  const rim = Math.min(dot(facet, up), dot(process, up));
  const onFloor = heights.map((h) => h <= low + FLOOR * (rim - low));
  const [first, last] = [onFloor.indexOf(true), onFloor.lastIndexOf(true)];
  const floor = walls.slice(first, last + 1);
  return {
    down: walls.slice(0, first + 1),
    bottom: scale(floor.reduce(add), 1 / floor.length),
    rising: walls.slice(last),
    up,
  };
};

const opening = (id: 'gissaneChordal' | 'gissaneTangent', back: Segment, front: Segment): Angle => ({
  id,
  value: 180 + slopeIn('lateral', back) - slopeIn('lateral', front),
  unit: 'deg',
  view: 'lateral',
  lines: [back, front],
});

/** Lateral film: highest point of the posterior facet - bottom of the corner between - top of the anterior process. */
export const gissaneChordal = (foot: Foot): Angle => {
  const { down, bottom, rising } = cornerOf(foot);
  const [facet, process] = [down[0] ?? bottom, rising.at(-1) ?? bottom];
  return { ...opening('gissaneChordal', [facet, bottom], [bottom, process]), vertex: bottom };
};

/** The middle half of a wall of the corner, by height, as a line from back to front; null where the wall is no longer than a step. */
const slopeOf = (wall: readonly Vec3[], up: Vec3): Segment | null => {
  const heights = wall.map((p) => dot(p, up));
  const [low, top] = [Math.min(...heights), Math.max(...heights)];
  const middle = wall.filter((_, i) => Math.abs((heights[i] ?? low) - (low + top) / 2) <= (top - low) / 4);
  const [first, last] = middle.length > 1 ? [middle[0], middle.at(-1)] : [wall[0], wall.at(-1)];
  return first && last && first !== last ? [first, last] : null;
};

/**
 * Lateral film: between the slopes of the corner's two walls, each over the middle half of its height, as along dense cortex. A bone
 * without a corner gives the straight line over it, 180 deg.
 */
export const gissaneTangent = (foot: Foot): Angle => {
  const { down, bottom, rising, up } = cornerOf(foot);
  const over: Segment = [down[0] ?? bottom, rising.at(-1) ?? bottom];
  const [back, front] = [slopeOf(down, up), slopeOf(rising, up)];
  return back && front ? opening('gissaneTangent', back, front) : opening('gissaneTangent', over, over);
};
