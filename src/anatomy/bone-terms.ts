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
/** What is taken away can lower the middle more than a smooth join does: slack for it, mm. */
const TAKEN_SLACK = 1;

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

/** The field of the terms; masses and hollows are where `back` says that a point came from, joints where they are now. */
export const joinTerms =
  (t: Terms, back: Warp['back']): Field =>
  (x, y, z) => {
    back(x, y, z, home);
    const [a, b, c] = home;
    let d = NOTHING;
    for (const m of t.masses) d = smoothMin(d, m.field(a, b, c), m.join);
    for (const j of t.pads) {
      j.surface.look(x, y, z, j.seen);
      d = smoothMin(d, padAt(j.surface, j.depth, j.seen), j.join);
    }
    for (const h of t.hollows) d = smoothMax(d, -h.field(a, b, c), h.join);
    for (const k of t.cuts) d = smoothMax(d, beyond(k, a, b, c), k.join);
    for (const j of t.surfaces) {
      j.surface.look(x, y, z, j.seen);
      d = smoothMax(d, cutAt(j.surface, j.seen), CUT_JOIN);
    }
    return d;
  };

/** Further than any mass reaches, mm. */
const NOTHING = 1e3;

/** The terms that matter within `radius` of a place whose value is `middle`. */
export const termsNear = (t: Terms, back: Warp['back'], [x, y, z]: Vec3, radius: number, middle: number): Terms => {
  const reach = 2 * STEEPEST * radius;
  back(x, y, z, home);
  const [a, b, c] = home;
  const padOf = (j: Surface): number => {
    j.surface.look(x, y, z, j.seen);
    return padAt(j.surface, j.depth, j.seen);
  };
  // What is joined can only be told from the union of masses; what cuts is told from the end.
  const solid = Math.min(...t.masses.map((m) => m.field(a, b, c)), ...t.pads.map(padOf));
  const adds = (value: number, join: number): boolean => value < solid + reach + join;
  const takes = (value: number, join: number): boolean => value > middle - reach - 2 * join - TAKEN_SLACK;
  return {
    masses: t.masses.filter((m) => adds(m.field(a, b, c), m.join)),
    pads: t.pads.filter((j) => adds(padOf(j), j.join)),
    hollows: t.hollows.filter((h) => takes(-h.field(a, b, c), h.join)),
    cuts: t.cuts.filter((k) => takes(beyond(k, a, b, c), k.join)),
    surfaces: t.surfaces.filter((j) => {
      j.surface.look(x, y, z, j.seen);
      // Beyond the facet's rim the cut falls off with the square of the distance: give it more room.
      return takes(cutAt(j.surface, j.seen) + 2 * radius, CUT_JOIN);
    }),
  };
};
