/**
 * What a bone is joined from, in order: masses and pads, less hollows and flat cuts, less what lies beyond the joints. And what of
 * it can be left out near a place: sampling asks for a bone hundreds of thousands of times, and only a few masses matter at each.
 */
import type { Vec3 } from '../units';
import { type Field, smoothMax, smoothMin } from './field';
import { cutAt, type JointSurface, padAt, type Seen } from './joint-surface';
import { STEEPEST } from './meshing/grid';
import type { Warp } from './warp';

/** Width of the smooth join of joint cuts, mm. */
const CUT_JOIN = 0.8;

interface Term {
  readonly field: Field;
  readonly join: number;
}
interface Plane {
  readonly at: Vec3;
  readonly n: Vec3;
  readonly join: number;
}
export interface Surface {
  readonly surface: JointSurface;
  readonly depth: number;
  readonly join: number;
  readonly seen: Seen;
}
export interface Terms {
  readonly masses: readonly Term[];
  readonly pads: readonly Surface[];
  readonly hollows: readonly Term[];
  readonly cuts: readonly Plane[];
  readonly surfaces: readonly Surface[];
}

const beyond = (k: Plane, x: number, y: number, z: number): number =>
  (x - k.at[0]) * k.n[0] + (y - k.at[1]) * k.n[1] + (z - k.at[2]) * k.n[2];

const home: [number, number, number] = [0, 0, 0];
/** Further than any mass reaches, mm. */
const NOTHING = 1e3;

/** Masses and pads less hollows and flat cuts; what the joints leave of it comes after. */
const uncut = (t: Terms, back: Warp['back'], x: number, y: number, z: number): number => {
  back(x, y, z, home);
  const a = home[0];
  const b = home[1];
  const c = home[2];
  let d = NOTHING;
  for (const m of t.masses) d = smoothMin(d, m.field(a, b, c), m.join);
  for (const j of t.pads) {
    j.surface.look(x, y, z, j.seen);
    d = smoothMin(d, padAt(j.surface, j.depth, j.seen), j.join);
  }
  for (const h of t.hollows) d = smoothMax(d, -h.field(a, b, c), h.join);
  for (const k of t.cuts) d = smoothMax(d, beyond(k, a, b, c), k.join);
  return d;
};

/** The field of the terms; masses and hollows are where `back` says that a point came from, joints where they are now. */
export const joinTerms = (t: Terms, back: Warp['back']): Field => {
  // A joint with a pad has been looked at for it.
  const rest = t.surfaces.filter((j) => !t.pads.includes(j));
  const looked = t.surfaces.filter((j) => t.pads.includes(j));
  return (x, y, z) => {
    let d = uncut(t, back, x, y, z);
    for (const j of looked) d = smoothMax(d, cutAt(j.surface, j.seen), CUT_JOIN);
    for (const j of rest) {
      j.surface.look(x, y, z, j.seen);
      d = smoothMax(d, cutAt(j.surface, j.seen), CUT_JOIN);
    }
    return d;
  };
};

/** The terms that matter within `radius` of a place. */
export const termsNear = (t: Terms, back: Warp['back'], [x, y, z]: Vec3, radius: number): Terms => {
  const reach = 2 * STEEPEST * radius;
  const middle = uncut(t, back, x, y, z);
  const [a, b, c] = home;
  const masses = t.masses.map((m) => m.field(a, b, c));
  const pads = t.pads.map((j) => padAt(j.surface, j.depth, j.seen));
  // What is joined can only be told from the union of masses, what takes away from what is there before the joints cut.
  const solid = Math.min(...masses, ...pads);
  const adds = (value: number, join: number): boolean => value < solid + reach + join;
  const takes = (value: number, join: number): boolean => value > middle - reach - 2 * join;
  return {
    masses: t.masses.filter((m, i) => adds(masses[i] as number, m.join)),
    pads: t.pads.filter((j, i) => adds(pads[i] as number, j.join)),
    hollows: t.hollows.filter((h) => takes(-h.field(a, b, c), h.join)),
    cuts: t.cuts.filter((k) => takes(beyond(k, a, b, c), k.join)),
    surfaces: t.surfaces.filter((j) => {
      j.surface.look(x, y, z, j.seen);
      // The cut gives way with the square of the distance beyond the rim: what counts is where the ball comes nearest to the facet.
      const nearer = Math.max(0, j.seen.radius - (2 * radius) / Math.min(...j.surface.shape.extents));
      return takes(cutAt(j.surface, { side: j.seen.side, radius: nearer }), CUT_JOIN);
    }),
  };
};
