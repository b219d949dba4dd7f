/**
 * How a bone is made from its named measures. A recipe lists the measures it needs, in words of the trade, and turns their values
 * (content/anatomy) into masses. What it holds itself are proportions, directions and the
 * small lengths of what is only drawn (how round an edge is, how far a hollow is led beyond the bone).
 */
import * as v from 'valibot';
import { add, cross, scale, type Vec3 } from '../../units';
import type { Parts } from './mass';

/** mm on the reference foot; deg; share of a length of the same bone. */
export type TermUnit = 'mm' | 'deg' | 'share';
export interface Term {
  readonly unit: TermUnit;
  readonly means: string;
}
export const mm = (means: string): Term => ({ unit: 'mm', means });
export const deg = (means: string): Term => ({ unit: 'deg', means });
export const share = (means: string): Term => ({ unit: 'share', means });

/** A joint as this bone has it, in the frame of masses: `out` points away from the bone, `minor` = out x major. */
export interface Facet {
  readonly at: Vec3;
  readonly out: Vec3;
  readonly major: Vec3;
  readonly minor: Vec3;
  /** Full extents along major and minor, mm. */
  readonly extents: readonly [number, number];
}

/** Where the bone sits: its joints by id. Throws RangeError for a joint that is not this bone's. */
export interface Site {
  readonly facet: (joint: string) => Facet;
}

/** A point of the bone `depth` mm below a facet's centre, moved by shares of the half extents along major and minor. */
export const below = (f: Facet, depth: number, alongMajor = 0, alongMinor = 0): Vec3 =>
  add(
    add(f.at, scale(f.out, -depth)),
    add(scale(f.major, (alongMajor * f.extents[0]) / 2), scale(f.minor, (alongMinor * f.extents[1]) / 2)),
  );

export const facetOf = (at: Vec3, out: Vec3, major: Vec3, extents: readonly [number, number]): Facet => ({
  at,
  out,
  major,
  minor: cross(out, major),
  extents,
});

export type Values<T> = Readonly<Record<keyof T, number>>;

export interface Recipe {
  readonly terms: Readonly<Record<string, Term>>;
  readonly make: (values: Readonly<Record<string, number>>, site: Site) => Parts;
}

/** The terms' names are the names of the values that `make` may read. */
export const recipe = <T extends Readonly<Record<string, Term>>>(
  terms: T,
  make: (values: Values<T>, site: Site) => Parts,
): Recipe => ({ terms, make: (values, site) => make(values as Values<T>, site) });

const BOUNDS: Readonly<Record<TermUnit, readonly [number, number]>> = { mm: [-60, 120], deg: [-90, 90], share: [0, 2] };

/** The schema of a bone's values: exactly the recipe's terms. */
export const valuesSchema = (terms: Recipe['terms']) =>
  v.strictObject(
    Object.fromEntries(
      Object.entries(terms).map(([name, { unit, means }]) => {
        const [low, high] = BOUNDS[unit];
        return [name, v.pipe(v.number(`${name}: ${means}, ${unit}`), v.minValue(low), v.maxValue(high))];
      }),
    ),
  );
