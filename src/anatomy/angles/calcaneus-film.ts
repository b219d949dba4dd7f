/**
 * The two angles of the upper border of the calcaneus on the lateral film, by which a crushed heel bone is known. "Highest" is meant
 * with the bone at its usual pitch, so that the angles do not change when the bone is turned up or down. A bone tilted sideways shows
 * the film another border, and both angles change, as on real films. mm and deg, foot frame.
 */
import { add, dot, scale, subtract, type Vec3 } from '../../units';
import { meshOf } from '../bone-axis';
import { verticesOf } from '../mesh';
import { sliceMesh } from '../slice';
import type { Foot } from '../types';
import { type Angle, type Segment, slopeIn, turnBetween } from './angle';
import { usualStance } from './heel-film';

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

/** What lies less than this share of the bone's length below a top belongs to it. */
const FLAT = 0.006;

/** The highest stretch of a border: of a flat top all of it. */
const topOf = (border: readonly Vec3[], up: Vec3, flat: number): readonly Vec3[] => {
  const height = dot(highest(border, up), up);
  return border.filter((p) => height - dot(p, up) <= flat);
};

const middleOf = (points: readonly Vec3[]): Vec3 => scale(points.reduce(add), 1 / points.length);

/** The point that a line from `from` touches from above. */
const touched = (from: Vec3, points: readonly Vec3[]): Vec3 => {
  const [first, ...rest] = points;
  if (!first) throw new RangeError('no part of the calcaneus lies there');
  const rise = (p: Vec3): number => slopeIn('lateral', [from, p]);
  return rest.reduce((top, p) => (turnBetween(rise(top), rise(p)) > 0 ? p : top), first);
};

const STEPS = 160;

/** The upper border on the film of the part of the bone within a share of its width from the lateral side, and where tops lie on it. */
interface Border {
  readonly points: readonly Vec3[];
  readonly part: (stretch: readonly [number, number]) => readonly Vec3[];
  readonly forwards: Vec3;
  readonly up: Vec3;
  /** mm below a top that still belong to it. */
  readonly flat: number;
}

const upperBorder = (foot: Foot, lateral: number): Border => {
  const mesh = meshOf(foot, 'calcaneus');
  const { forwards, up } = usualStance(foot);
  const vertices = verticesOf(mesh);
  const widths = vertices.map((p) => p[0]);
  const limit = Math.min(...widths) + lateral * (Math.max(...widths) - Math.min(...widths));
  const stations = vertices.map((p) => dot(p, forwards));
  const [back, front] = [Math.min(...stations), Math.max(...stations)];
  const points: Vec3[] = [];
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
    if (inside.length > 0) points.push(highest(inside, up));
  }
  const shareOf = (p: Vec3): number => (dot(p, forwards) - back) / (front - back);
  const part = ([from, to]: readonly [number, number]): readonly Vec3[] =>
    points.filter((p) => shareOf(p) >= from && shareOf(p) <= to);
  return { points, part, forwards, up, flat: FLAT * (front - back) };
};

/**
 * Lateral film: lines from the highest point of the posterior facet (of a flat one its middle) to the upper back corner of the
 * tuberosity and to the top of the anterior process (where the line touches it); the acute angle between them.
 */
export const boehler = (foot: Foot): Angle => {
  const { part, forwards, up, flat } = upperBorder(foot, 1);
  const corner = middleOf(topOf(part(TUBEROSITY), scale(subtract(up, forwards), CORNER), flat));
  const top = middleOf(topOf(part(FACET), up, flat));
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

/** Share of the bone's width, from its lateral side, whose upper border the film shows as the dense lines of the corner. */
const LATERAL = 0.38;

/** The corner in front of the posterior facet: its wall behind (from the facet's top down) and in front (up to the process' top). */
interface Corner {
  readonly facet: Vec3;
  readonly down: readonly Vec3[];
  readonly bottom: Vec3;
  readonly rising: readonly Vec3[];
  readonly process: Vec3;
  readonly up: Vec3;
}

/** The floor of the corner is what lies lower than this share of its depth; its bottom is the middle of the floor. */
const FLOOR = 0.25;

const cornerOf = (foot: Foot): Corner => {
  const { points, part, up, flat } = upperBorder(foot, LATERAL);
  const top = topOf(part(FACET), up, flat);
  const facet = middleOf(top);
  const process = touched(facet, part(PROCESS));
  const walls = points.slice(points.indexOf(top.at(-1) ?? facet), points.indexOf(process) + 1);
  const heights = walls.map((p) => dot(p, up));
  const low = Math.min(...heights);
  const rim = Math.min(dot(facet, up), dot(process, up));
  const onFloor = heights.map((h) => h <= low + FLOOR * Math.max(0, rim - low));
  const [first, last] = [onFloor.indexOf(true), onFloor.lastIndexOf(true)];
  return {
    facet,
    down: walls.slice(0, first + 1),
    bottom: middleOf(walls.slice(first, last + 1)),
    rising: walls.slice(last),
    process,
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
  const { facet, bottom, process } = cornerOf(foot);
  return { ...opening('gissaneChordal', [facet, bottom], [bottom, process]), vertex: bottom };
};

/** Of a wall's height, the share about its middle that is looked at. */
const WALL = 0.9;

/** The line that lies nearest to a wall of the corner, rim and foot left out, from back to front; null where there is no wall. */
const slopeOf = (wall: readonly Vec3[], up: Vec3): Segment | null => {
  const heights = wall.map((p) => dot(p, up));
  const [low, top] = [Math.min(...heights), Math.max(...heights)];
  const inner = wall.filter((_, i) => Math.abs((heights[i] ?? low) - (low + top) / 2) <= (WALL / 2) * (top - low));
  const points = inner.length > 1 ? inner : wall;
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last || first === last) return null;
  // The long axis of the points in the film's plane.
  const middle = middleOf(points);
  let [yy, yz, zz] = [0, 0, 0];
  for (const p of points) {
    const [, y, z] = subtract(p, middle);
    yy += y * y;
    yz += y * z;
    zz += z * z;
  }
  const angle = Math.atan2(2 * yz, zz - yy) / 2;
  const way: Vec3 = [0, Math.sin(angle), Math.cos(angle)];
  const at = (p: Vec3): Vec3 => add(middle, scale(way, dot(subtract(p, middle), way)));
  return [at(first), at(last)];
};

/**
 * Lateral film: between the slopes of the corner's two walls, each over nine tenths of its height, as along dense cortex. A bone
 * without a corner gives the straight line over it, 180 deg.
 */
export const gissaneTangent = (foot: Foot): Angle => {
  const { facet, down, rising, process, up } = cornerOf(foot);
  const over: Segment = [facet, process];
  const [back, front] = [slopeOf(down, up), slopeOf(rising, up)];
  return back && front ? opening('gissaneTangent', back, front) : opening('gissaneTangent', over, over);
};
