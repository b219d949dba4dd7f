/**
 * A section as a figure of closed loops: one outline, any number of holes in it. Coordinates dorsal and lateral of the bone's
 * axis, mm. Checked once here, so that whatever is computed from a figure may rely on it.
 */
import { integralsOf, type Loop2, type Point2 } from '../../anatomy/inside/polygon';

export interface Figure {
  /** Counter-clockwise with the first coordinate to the right and the second upwards. */
  readonly outline: Loop2;
  /** Clockwise. */
  readonly holes: readonly Loop2[];
}

export type SectionFault = 'no section' | 'loop crosses itself' | 'canal leaves the bone' | 'canals meet' | 'no mesh';

/** A section that cannot be: which fault, and what to do about it. */
export class SectionError extends RangeError {
  readonly fault: SectionFault;
  constructor(fault: SectionFault, told: string) {
    super(`${fault}: ${told}`);
    this.name = 'SectionError';
    this.fault = fault;
  }
}

/** Twice the area on the left of a loop, with its sign. */
export const turnOf = (loop: Loop2): number =>
  loop.reduce((sum, [a, b], i) => {
    const [c, d] = loop[(i + 1) % loop.length] ?? [a, b];
    return sum + a * d - c * b;
  }, 0);

/** Corners nearer than this share of the figure's extent are one corner. */
const SAME_SHARE = 1e-9;

const cleaned = (loop: Loop2, same: number): Loop2 => {
  const apart = ([a, b]: Point2, [c, d]: Point2): boolean => Math.hypot(a - c, b - d) > same;
  return loop.filter((p, i) => apart(p, loop[(i + 1) % loop.length] ?? p));
};

const directed = (loop: Loop2, sense: 1 | -1): Loop2 => (turnOf(loop) * sense < 0 ? loop.toReversed() : loop);

/** True inside a loop; on its border either way. */
export const isInside = (loop: Loop2, [a, b]: Point2): boolean => {
  let inside = false;
  for (let i = 0; i < loop.length; i++) {
    const [a0, b0] = loop[i] ?? [0, 0];
    const [a1, b1] = loop[(i + 1) % loop.length] ?? [0, 0];
    if (b0 > b !== b1 > b && a < a0 + ((b - b0) / (b1 - b0)) * (a1 - a0)) inside = !inside;
  }
  return inside;
};

interface Side {
  readonly loop: number;
  readonly at: number;
  readonly from: Point2;
  readonly to: Point2;
  readonly low: number;
  readonly high: number;
}

const sideOf = ([a0, b0]: Point2, [a1, b1]: Point2, [a, b]: Point2): number =>
  (a1 - a0) * (b - b0) - (b1 - b0) * (a - a0);

const meet = (s: Side, t: Side): boolean => {
  const [p, q] = [sideOf(s.from, s.to, t.from), sideOf(s.from, s.to, t.to)];
  const [r, o] = [sideOf(t.from, t.to, s.from), sideOf(t.from, t.to, s.to)];
  if (p > 0 !== q > 0 && r > 0 !== o > 0) return true;
  // Lying along each other: they share more than a point where their boxes do.
  if (p !== 0 || q !== 0) return false;
  const shared = (i: 0 | 1): number =>
    Math.min(Math.max(s.from[i], s.to[i]), Math.max(t.from[i], t.to[i])) -
    Math.max(Math.min(s.from[i], s.to[i]), Math.min(t.from[i], t.to[i]));
  return shared(0) >= 0 && shared(1) >= 0 && shared(0) + shared(1) > 0;
};

/** Two sides that meet and are no neighbours, by a sweep along the first coordinate. */
const crossing = (loops: readonly Loop2[]): readonly [Side, Side] | null => {
  const sides = loops
    .flatMap((points, loop) =>
      points.map((from, at): Side => {
        const to = points[(at + 1) % points.length] ?? from;
        return { loop, at, from, to, low: Math.min(from[0], to[0]), high: Math.max(from[0], to[0]) };
      }),
    )
    .sort((a, b) => a.low - b.low);
  const neighbours = (s: Side, t: Side): boolean => {
    const n = loops[s.loop]?.length ?? 0;
    return s.loop === t.loop && ((s.at + 1) % n === t.at || (t.at + 1) % n === s.at);
  };
  for (let i = 0; i < sides.length; i++) {
    const s = sides[i];
    for (let j = i + 1; s && j < sides.length; j++) {
      const t = sides[j];
      if (!t || t.low > s.high) break;
      if (!neighbours(s, t) && meet(s, t)) return [s, t];
    }
  }
  return null;
};

const told = ([a, b]: Point2): string => `${a.toFixed(2)}, ${b.toFixed(2)} mm`;

/**
 * Loops as a figure, either way round. Throws SectionError for an outline without area, loops that cross themselves, a canal that
 * leaves the bone or leaves nothing of it, canals that meet.
 */
export const figureOf = (outline: Loop2, holes: readonly Loop2[] = []): Figure => {
  const all = [outline, ...holes].flat(2);
  if (!all.every(Number.isFinite)) throw new SectionError('no section', 'a corner has no place; mend the cut');
  const extent = all.reduce((most, x) => Math.max(most, Math.abs(x)), 0);
  const outer = directed(cleaned(outline, SAME_SHARE * extent), 1);
  const inner = holes.map((hole) => directed(cleaned(hole, SAME_SHARE * extent), -1));
  const whole = integralsOf([outer]).area;
  const few = (loop: Loop2): boolean => loop.length < 3;
  if (few(outer) || inner.some(few))
    throw new SectionError('no section', 'a loop has fewer than three corners; leave it out');
  const found = crossing([outer, ...inner]);
  if (found) {
    const [s, t] = found;
    const at = told(s.from);
    if (s.loop === t.loop) throw new SectionError('loop crosses itself', `near ${at}; mend the outline`);
    if (s.loop === 0 || t.loop === 0) throw new SectionError('canal leaves the bone', `near ${at}; make it narrower`);
    throw new SectionError('canals meet', `near ${at}; give them as one`);
  }
  for (const loop of [outer, ...inner]) {
    if (!(Math.abs(turnOf(loop)) > 1e-12 * extent * extent)) {
      throw new SectionError('no section', 'a loop encloses no area; leave it out or cut elsewhere');
    }
  }
  inner.forEach((hole, i) => {
    const [p] = hole;
    if (!p) return;
    if (!isInside(outer, p)) throw new SectionError('canal leaves the bone', `it lies at ${told(p)}; move it inside`);
    const within = inner.some((other, j) => j !== i && isInside(other, p));
    if (within) throw new SectionError('canals meet', `one lies in another at ${told(p)}; give them as one`);
  });
  const left = whole - inner.reduce((sum, hole) => sum + integralsOf([hole]).area, 0);
  if (!(left > 0)) throw new SectionError('no section', `canals leave nothing of ${whole.toFixed(2)} mm2`);
  return { outline: outer, holes: inner };
};
