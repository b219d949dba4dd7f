/**
 * The midline of a stretch of a bone as a view shows it: the line that lies half-way between the two borders of the outline,
 * measured across itself. It turns with the bone, because nothing but the outline decides it. mm, foot frame.
 */
import { add, normalize, scale, type Vec3 } from '../../units';
import { meshCentroid, verticesOf } from '../mesh';
import { sliceMesh } from '../slice';
import type { Mesh } from '../types';
import { placed, type Segment, seen, type View } from './angle';

const STATIONS = 17;
/** Rounds of turning the line on to the middles that are found across it; it stands still long before. */
const ROUNDS = 12;

interface Line {
  readonly at: Vec3;
  readonly along: Vec3;
}

const flat = (view: View, along: number, across: number): Vec3 => placed(view, { along, across, depth: 0 });

const dotIn = (view: View, a: Vec3, b: Vec3): number => {
  const [p, q] = [seen(view, a), seen(view, b)];
  return p.along * q.along + p.across * q.across;
};

const stretchOf = (mesh: Mesh, view: View, along: Vec3): readonly [number, number] => {
  const places = verticesOf(mesh).map((p) => dotIn(view, p, along));
  return [Math.min(...places), Math.max(...places)];
};

const throughMiddles = (mesh: Mesh, view: View, along: Vec3, from: number, to: number): Line => {
  const { along: u, across: v } = seen(view, along);
  const side = flat(view, -v, u);
  const [low, high] = stretchOf(mesh, view, along);
  const points = Array.from({ length: STATIONS }, (_, i) => {
    const s = low + (high - low) * (from + ((to - from) * i) / (STATIONS - 1));
    const borders = sliceMesh(mesh, scale(along, s), along)
      .flat()
      .map((p) => dotIn(view, p, side));
    return { s, t: (Math.min(...borders) + Math.max(...borders)) / 2 };
  });
  const [ms, mt] = [points.reduce((n, p) => n + p.s, 0) / STATIONS, points.reduce((n, p) => n + p.t, 0) / STATIONS];
  const slope =
    points.reduce((n, p) => n + (p.s - ms) * (p.t - mt), 0) / points.reduce((n, p) => n + (p.s - ms) ** 2, 0);
  return {
    at: add(scale(along, ms), scale(side, mt)),
    along: normalize(add(along, scale(side, slope))),
  };
};

/**
 * Midline of the outline from one share of the bone's stretch along the line to another, drawn over the whole stretch at the depth
 * of the bone's centroid. `start` is a direction to begin with; only its part in the view counts.
 */
export const midlineIn = (mesh: Mesh, view: View, start: Vec3, from: number, to: number): Segment => {
  const first = seen(view, start);
  let line: Line = { at: [0, 0, 0], along: normalize(flat(view, first.along, first.across)) };
  for (let i = 0; i < ROUNDS; i++) line = throughMiddles(mesh, view, line.along, from, to);
  const { depth } = seen(view, meshCentroid(mesh));
  const [low, high] = stretchOf(mesh, view, line.along);
  const here = dotIn(view, line.at, line.along);
  const end = (s: number): Vec3 => {
    const { along, across } = seen(view, add(line.at, scale(line.along, s - here)));
    return placed(view, { along, across, depth });
  };
  return [end(low), end(high)];
};
