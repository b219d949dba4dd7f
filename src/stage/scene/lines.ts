/**
 * Lines on a bone's surface from stations along its axis: zone borders and the break. Each is a polyline in mm, foot frame,
 * lying a hair outside the surface. Pure.
 */
import { fromBone, inBone } from '../../anatomy/bone-axis';
import { sliceMesh } from '../../anatomy/slice';
import type { BoneAxis, Mesh } from '../../anatomy/types';
import { add, length, normalize, scale, subtract, type Vec3 } from '../../units';
import type { BreakAt } from '../types';

type Line = readonly Vec3[];

/** Long tooth side of the sawtooth and its swing to either side, mm. */
const TOOTH_MM = 2.2;
const SWING_MM = 0.8;
const OUTSIDE_MM = 0.15;
/** Tilt of an oblique break against the plane across the bone, and the turns a spiral makes per its length. */
const OBLIQUE = 0.75;
/** A spiral is drawn as one turn over this length. Published spiral breaks differ: it shows the kind, not the measure. */
const SPIRAL_MM = 16;

const closed = (loop: Line): Line => (loop[0] === undefined ? loop : [...loop, loop[0]]);

const outwards = (p: Vec3, centre: Vec3): Vec3 => {
  const d = subtract(p, centre);
  return length(d) < 1e-6 ? p : add(p, scale(normalize(d), OUTSIDE_MM));
};

const centreOf = (line: Line): Vec3 =>
  scale(
    line.reduce<Vec3>((sum, p) => add(sum, p), [0, 0, 0]),
    1 / line.length,
  );

/** The longest loop of the cut: the outer surface. */
const outerLoop = (mesh: Mesh, at: Vec3, normal: Vec3): Line => {
  const loops = sliceMesh(mesh, at, normal);
  return loops.reduce<Line>((best, loop) => (wayOf(loop) > wayOf(best) ? loop : best), []);
};

export const wayOf = (line: Line): number =>
  line.slice(1).reduce((sum, p, i) => sum + length(subtract(p, line[i] ?? p)), 0);

/** Points at equal steps along a polyline; the last step is stretched so that both ends are kept. */
export const resample = (line: Line, stepMm: number): Line => {
  const total = wayOf(line);
  const steps = Math.max(1, Math.round(total / stepMm));
  const out: Vec3[] = [];
  let [i, before] = [0, 0];
  for (let k = 0; k <= steps; k += 1) {
    const want = (total * k) / steps;
    let piece = length(subtract(line[i + 1] ?? [0, 0, 0], line[i] ?? [0, 0, 0]));
    while (i + 2 < line.length && before + piece < want) {
      before += piece;
      i += 1;
      piece = length(subtract(line[i + 1] ?? [0, 0, 0], line[i] ?? [0, 0, 0]));
    }
    const [a, b] = [line[i], line[i + 1]];
    if (a === undefined || b === undefined) continue;
    const t = piece === 0 ? 0 : Math.min(1, (want - before) / piece);
    out.push(add(a, scale(subtract(b, a), t)));
  }
  return out;
};

/** The line round the bone at a station. Empty off the bone. */
export const ringAt = (mesh: Mesh, axis: BoneAxis, sMm: number): Line => {
  const loop = outerLoop(mesh, fromBone(axis, sMm), axis.axis);
  if (loop.length === 0) return [];
  const centre = centreOf(loop);
  return closed(loop.map((p) => outwards(p, centre)));
};

const sawtooth = (line: Line, axis: BoneAxis): Line => {
  const points = resample(line, TOOTH_MM);
  const last = points.length - 1;
  const ring = length(subtract(points[0] ?? [0, 0, 0], points[last] ?? [0, 0, 0])) < 1e-6;
  return points.map((p, i) => {
    const swing = i % 2 === 0 ? SWING_MM : -SWING_MM;
    // Round a ring the last tooth must meet the first.
    return add(p, scale(axis.axis, ring && i === last ? SWING_MM : swing));
  });
};

const helix = (mesh: Mesh, axis: BoneAxis, sMm: number): Line => {
  const STEPS = 28;
  const points: Vec3[] = [];
  for (let k = 0; k <= STEPS; k += 1) {
    const share = k / STEPS;
    const loop = outerLoop(mesh, fromBone(axis, sMm + (share - 0.5) * SPIRAL_MM), axis.axis);
    if (loop.length === 0) continue;
    const centre = centreOf(loop);
    const from = inBone(axis, centre);
    const angle = 2 * Math.PI * share;
    // The point of the cut whose direction from its middle is nearest to the turning hand.
    const best = resample(closed(loop), 0.6).reduce<{ p: Vec3; off: number } | null>((found, p) => {
      const q = inBone(axis, p);
      const at = Math.atan2(q.lateralMm - from.lateralMm, q.dorsalMm - from.dorsalMm);
      const off = Math.abs(Math.atan2(Math.sin(at - angle), Math.cos(at - angle)));
      return found === null || off < found.off ? { p, off } : found;
    }, null);
    if (best !== null) points.push(outwards(best.p, centre));
  }
  return points;
};

const tilted = (mesh: Mesh, axis: BoneAxis, sMm: number, slope: number): Line => {
  const normal = normalize(add(axis.axis, add(scale(axis.lateral, slope), scale(axis.dorsal, slope * 0.4))));
  const loop = outerLoop(mesh, fromBone(axis, sMm), normal);
  if (loop.length === 0) return [];
  const centre = centreOf(loop);
  return closed(loop.map((p) => outwards(p, centre)));
};

/** Starts a ring at its most lateral point, so that a break that does not go through is drawn from the outer side. */
const fromOuterSide = (ring: Line, axis: BoneAxis): Line => {
  const open = ring.slice(0, -1);
  const start = open.reduce(
    (best, p, i) => (inBone(axis, p).lateralMm > inBone(axis, open[best] ?? p).lateralMm ? i : best),
    0,
  );
  return closed([...open.slice(start), ...open.slice(0, start)]);
};

/** The break as it is said to run. A direction that is not stated is drawn straight across. */
export const breakLines = (mesh: Mesh, axis: BoneAxis, sMm: number, direction: BreakAt['direction']): Line[] => {
  const across = (): Line => ringAt(mesh, axis, sMm);
  const lines: Line[] = (() => {
    switch (direction) {
      case 'spiral':
        return [helix(mesh, axis, sMm)];
      case 'oblique':
      case 'avulsion':
        return [tilted(mesh, axis, sMm, OBLIQUE)];
      case 'comminuted':
        return [tilted(mesh, axis, sMm - 1, OBLIQUE), tilted(mesh, axis, sMm + 1, -OBLIQUE)];
      case 'incomplete': {
        const ring = fromOuterSide(across(), axis);
        const half = resample(ring, 0.8);
        const quarter = Math.floor(half.length / 4);
        return [[...half.slice(-quarter - 1, -1), ...half.slice(0, quarter)]];
      }
      case 'transverse':
      case 'notStated':
        return [across()];
    }
  })();
  return lines.filter((line) => line.length > 1).map((line) => sawtooth(line, axis));
};
