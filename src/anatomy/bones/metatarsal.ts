/**
 * A metatarsal: a square base rolled about the shaft, a shaft with flat sides, bowed upwards and narrowest towards its head, a head
 * pressed in from the sides. Anchored on the facet behind its base and the facet of its toe.
 */
import { add, cross, length, normalize, radians, scale, subtract, type Vec3 } from '../../units';
import type { Mass, Parts } from './mass';
import { type Condyles, headMasses, headPits, underHead } from './metatarsal-head';
import { below, deg, mm, type Recipe, recipe, type Site, share, type Values } from './recipe';

export const metatarsalTerms = {
  baseWidth: mm('width of the base, along its roll'),
  baseHeight: mm('height of the base, across its roll'),
  baseRoll: deg('roll of the base about the shaft, outer side down'),
  baseLength: mm('length of the square part of the base'),
  baseTaper: share('how much of what the base has more than the shaft is left a sixth of the length in front of it'),
  midWidth: mm('width at the middle of the shaft'),
  midHeight: mm('height at the middle of the shaft'),
  waistWidth: mm('width at the waist'),
  waistHeight: mm('height at the waist'),
  waistAt: share('place of the waist from base to head'),
  neckFlare: share('width and height of the neck behind the head, of those of the waist'),
  dorsalBow: mm('bow of the shaft upwards at its middle'),
  lateralBow: mm('bow of the shaft outwards at its middle, inwards where negative'),
  headWidth: mm('width of the head'),
  headHeight: mm('height of the head'),
  pitDepth: mm('depth of the hollows at the sides of the head where the collateral ligaments start'),
} as const;
/** The first has none: its condyles are the edges of the sesamoid grooves. */
export const condyleDrop = mm('how far the condyles stand below the head');
export const lesserCondyles = (drop: number): Condyles => ({ apart: 0.56, width: 0.38, drop, outerLower: 0.15 });
export type MetatarsalValues = Values<typeof metatarsalTerms>;

/** What recipes for single rays build on: the frame of the bone and its common masses. */
export interface Ray {
  readonly along: Vec3;
  readonly side: Vec3;
  readonly top: Vec3;
  readonly lengthMm: number;
  /** A point at a share of the way from base to head centre, moved inwards and upwards. */
  readonly at: (share: number, inwards?: number, upwards?: number) => Vec3;
  /** The same, inwards and upwards turned with the roll of the base. */
  readonly atBase: (share: number, inwards: number, upwards: number) => Vec3;
  readonly head: Vec3;
  readonly headLength: number;
  readonly masses: readonly Mass[];
}

export interface RayPlan {
  /** The facet behind the base, and that of the toe. */
  readonly base: string;
  readonly toe: string;
  /** How far the middle of the base lies from its facet along the roll, outwards, where the facet is not behind it; mm. */
  readonly baseOut?: number;
  readonly condyles: Condyles;
}

export const rayOf = (v: MetatarsalValues, site: Site, plan: RayPlan): Ray => {
  const { baseOut = 0 } = plan;
  const behind = site.facet(plan.base);
  const headLength = v.headHeight * 0.92;
  const head = below(site.facet(plan.toe), headLength * 0.45);
  const roll = radians(v.baseRoll);
  const frame = (from: Vec3) => {
    const along = normalize(subtract(head, from));
    const side = normalize(cross([0, 1, 0], along));
    const top = cross(along, side);
    return {
      along,
      side,
      top,
      rolledSide: add(scale(side, Math.cos(roll)), scale(top, Math.sin(roll))),
      rolledTop: subtract(scale(top, Math.cos(roll)), scale(side, Math.sin(roll))),
    };
  };
  const back = add(behind.at, scale(behind.out, v.baseLength * 0.1));
  const first = subtract(back, scale(frame(back).rolledSide, baseOut));
  const { along, side, top, rolledSide, rolledTop } = frame(first);
  const lengthMm = length(subtract(head, first));
  const at = (s: number, inwards = 0, upwards = 0): Vec3 =>
    add(
      add(first, scale(along, lengthMm * s)),
      add(scale(side, inwards - v.lateralBow * 4 * s * (1 - s)), scale(top, upwards + v.dorsalBow * 4 * s * (1 - s))),
    );
  const atBase = (s: number, inwards: number, upwards: number): Vec3 =>
    add(at(s), add(scale(rolledSide, inwards), scale(rolledTop, upwards)));
  const square = v.baseLength / lengthMm;
  const shaft: Mass = {
    is: 'shaft',
    name: 'shaft',
    sections: [
      { name: 'base', at: at(0), width: v.baseWidth, height: v.baseHeight, roll: v.baseRoll, corner: 3 },
      {
        name: 'baseEnd',
        at: at(square),
        width: v.baseWidth * 0.92,
        height: v.baseHeight * 0.92,
        roll: v.baseRoll,
        corner: 2.8,
      },
      {
        name: 'metaphysis',
        at: at(square + 0.16),
        width: v.midWidth + v.baseTaper * (v.baseWidth - v.midWidth),
        height: v.midHeight + v.baseTaper * (v.baseHeight - v.midHeight),
        roll: v.baseRoll * 0.7,
        corner: 2.6,
      },
      {
        name: 'middle',
        at: at(0.52),
        width: v.midWidth,
        height: v.midHeight,
        roll: v.baseRoll * 0.2,
        corner: 2.3,
      },
      { name: 'waist', at: at(v.waistAt), width: v.waistWidth, height: v.waistHeight, corner: 2.3 },
      { name: 'neck', at: at(0.88), width: v.waistWidth * v.neckFlare, height: v.waistHeight * v.neckFlare },
      { name: 'headStart', at: at(1), width: v.headWidth * 0.7, height: v.headHeight * 0.7 },
    ],
  };
  return {
    along,
    side,
    top,
    lengthMm,
    at,
    atBase,
    head,
    headLength,
    masses: [shaft, ...headMasses(v, { along, side, top, head, headLength }, plan.condyles)],
  };
};

/** The second to the fourth. `base`: the facet behind the base. */
export const metatarsal = (base: string, toe: string): Recipe =>
  recipe(
    {
      ...metatarsalTerms,
      condyleDrop,
      baseWedge: mm('how much narrower the base is at the sole, taken from its outer side'),
    },
    (v, site): Parts => {
      const ray = rayOf(v, site, { base, toe, condyles: lesserCondyles(v.condyleDrop) });
      const low = -v.baseHeight / 2;
      const out = -(v.baseWidth / 2 + 6 - v.baseWedge / 2);
      const flank: Mass = {
        is: 'rod',
        name: 'outerFlank',
        from: ray.atBase(-0.12, out, low - 1),
        to: ray.atBase(0.2, out - 1, low + 1),
        radius: [6, 6],
        join: 'fine',
      };
      return {
        masses: ray.masses,
        hollows: [...headPits(v, ray), underHead(v, ray, v.condyleDrop), flank],
      };
    },
  );
