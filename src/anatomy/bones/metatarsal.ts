/**
 * A metatarsal: a square base, a shaft bowed upwards and narrowest towards its head, a head pressed in from the sides with two
 * condyles at the sole. Anchored on the facet behind its base and the facet of its toe.
 */
import { add, cross, length, normalize, scale, subtract, type Vec3 } from '../../units';
import type { Mass, Parts } from './mass';
import { below, deg, mm, type Recipe, recipe, type Site, share, type Values } from './recipe';

export const metatarsalTerms = {
  baseWidth: mm('width of the base'),
  baseHeight: mm('height of the base'),
  baseRoll: deg('roll of the base about the shaft, outer side down'),
  baseLength: mm('length of the square part of the base'),
  baseBack: mm('how far the base reaches back beyond the centre of its facet'),
  metaphysisWidth: mm('width where the base has passed into the shaft'),
  metaphysisHeight: mm('height there'),
  midWidth: mm('width at the middle of the shaft'),
  midHeight: mm('height at the middle of the shaft'),
  waistWidth: mm('width at the waist'),
  waistHeight: mm('height at the waist'),
  waistAt: share('place of the waist from base to head'),
  dorsalBow: mm('bow of the shaft upwards at its middle'),
  lateralBow: mm('bow of the shaft outwards at its middle'),
  headWidth: mm('width of the head'),
  headHeight: mm('height of the head'),
  headLength: mm('length of the head'),
  condyleDrop: mm('how far the condyles stand below the head'),
} as const;
export type MetatarsalValues = Values<typeof metatarsalTerms>;

/** What recipes for single rays build on: the frame of the bone and its common masses. */
export interface Ray {
  readonly along: Vec3;
  readonly side: Vec3;
  readonly top: Vec3;
  readonly lengthMm: number;
  /** A point at a share of the way from base to head centre, moved inwards and upwards. */
  readonly at: (share: number, inwards?: number, upwards?: number) => Vec3;
  readonly head: Vec3;
  readonly masses: readonly Mass[];
}

/** `aside`: where the middle of the base lies from its facet, where it is not behind it. */
export const rayOf = (v: MetatarsalValues, site: Site, base: string, toe: string, aside: Vec3 = [0, 0, 0]): Ray => {
  const b = site.facet(base);
  const t = site.facet(toe);
  const first = add(add(b.at, scale(b.out, v.baseBack)), aside);
  const head = below(t, v.headLength * 0.5);
  const along = normalize(subtract(head, first));
  const lengthMm = length(subtract(head, first));
  const side = normalize(cross([0, 1, 0], along));
  const top = cross(along, side);
  const at = (s: number, inwards = 0, upwards = 0): Vec3 =>
    add(
      add(first, scale(along, lengthMm * s)),
      add(scale(side, inwards - v.lateralBow * 4 * s * (1 - s)), scale(top, upwards + v.dorsalBow * 4 * s * (1 - s))),
    );
  const square = v.baseLength / lengthMm;
  const condyle = (name: string, to: 1 | -1): Mass => ({
    is: 'ellipsoid',
    name,
    at: add(
      head,
      add(
        scale(side, to * v.headWidth * 0.24),
        add(scale(top, -v.headHeight * 0.3 - v.condyleDrop * 0.3), scale(along, -v.headLength * 0.22)),
      ),
    ),
    size: [v.headWidth * 0.42, v.headHeight * 0.3 + v.condyleDrop, v.headLength * 0.75],
    along,
    join: 'fine',
  });
  return {
    along,
    side,
    top,
    lengthMm,
    at,
    head,
    masses: [
      {
        is: 'shaft',
        name: 'shaft',
        sections: [
          { name: 'base', at: at(0), width: v.baseWidth, height: v.baseHeight, roll: v.baseRoll, corner: 3 },
          {
            name: 'baseEnd',
            at: at(square),
            width: v.baseWidth * 0.92,
            height: v.baseHeight * 0.9,
            roll: v.baseRoll,
            corner: 2.8,
          },
          {
            name: 'metaphysis',
            at: at(square + 0.16),
            width: v.metaphysisWidth,
            height: v.metaphysisHeight,
            roll: v.baseRoll * 0.8,
          },
          { name: 'middle', at: at(0.52), width: v.midWidth, height: v.midHeight, roll: v.baseRoll * 0.3 },
          { name: 'waist', at: at(v.waistAt), width: v.waistWidth, height: v.waistHeight },
          { name: 'neck', at: at(0.88), width: v.waistWidth * 1.04, height: v.waistHeight * 1.04 },
          { name: 'headStart', at: at(1), width: v.headWidth * 0.72, height: v.headHeight * 0.72 },
        ],
      },
      {
        is: 'ellipsoid',
        name: 'head',
        at: head,
        size: [v.headWidth, v.headHeight, v.headLength],
        along,
        join: 'fine',
      },
      condyle('medialCondyle', 1),
      condyle('lateralCondyle', -1),
    ],
  };
};

/** Hollows at the sides of the head where the collateral ligaments start. */
export const pits = (v: MetatarsalValues, ray: Ray): Mass[] =>
  ([1, -1] as const).map((to) => ({
    is: 'ellipsoid',
    name: to === 1 ? 'medialPit' : 'lateralPit',
    at: add(
      ray.head,
      add(
        scale(ray.side, to * v.headWidth * 0.56),
        add(scale(ray.along, -v.headLength * 0.3), scale(ray.top, v.headHeight * 0.1)),
      ),
    ),
    size: [v.headWidth * 0.26, v.headHeight * 0.4, v.headLength * 0.4],
    along: ray.along,
    join: 'fine',
  }));

/** The second to the fourth. `base`: the facet behind the base. */
export const metatarsal = (base: string, toe: string): Recipe =>
  recipe(
    {
      ...metatarsalTerms,
      baseWedge: mm('how much narrower the base is at the sole'),
    },
    (v, site): Parts => {
      const ray = rayOf(v, site, base, toe);
      const low = -v.baseHeight / 2;
      const flank = (to: 1 | -1) => ({
        name: to === 1 ? 'innerFlank' : 'outerFlank',
        is: 'rod' as const,
        from: ray.at(-0.12, to * (v.baseWidth / 2 + 6 - v.baseWedge / 2), low - 1),
        to: ray.at(0.2, to * (v.baseWidth / 2 + 7 - v.baseWedge / 2), low + 1),
        radius: [6, 6] as const,
        join: 'fine' as const,
      });
      return { masses: ray.masses, hollows: [...pits(v, ray), flank(1), flank(-1)] };
    },
  );
