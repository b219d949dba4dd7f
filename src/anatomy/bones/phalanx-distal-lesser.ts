/**
 * The distal phalanx of a lesser toe: a broad oval base with a low lip for the extensor, a slender waist, and a flat tuft shaped like
 * an arrowhead, with the rough ridge of the toe's pad on its sole.
 */
import { add, normalize, scale } from '../../units';
import { DISTAL_TERMS, distalFrame } from './phalanx-distal-frame';
import { mm, type Recipe, recipe } from './recipe';

export const phalanxDistalLesser = (behind: string): Recipe =>
  recipe(
    {
      ...DISTAL_TERMS,
      baseUp: mm('how far the base reaches up past its length'),
      tuftWidth: mm('width of the tuft, at its barbs'),
      tuftInwards: mm('how far the tuft leans inwards'),
      padRidge: mm('how far the ridge of the pad stands below the tuft'),
    },
    (v, site) => {
      const b = site.facet(behind);
      const { along, top, start, at } = distalFrame(b, v.length, v.rise, v.roll);
      // Toes were scanned bent: what faced the head behind is the lower part of the base, which stands squarer to its bone than that.
      const back = normalize(add(b.out, scale(along, -1)));
      const lean = (share: number): number => v.tuftInwards * Math.max(0, (share - 0.4) / 0.6);
      const barbs = 1 - v.tuftLength / v.length;
      const spine = (share: number, upwards = 0) => at(share, lean(share), upwards);
      return {
        masses: [
          {
            is: 'block',
            name: 'base',
            at: add(start, add(scale(back, 0.6 - v.baseLength / 2), scale(top, v.baseUp))),
            size: [v.baseWidth, v.baseHeight, v.baseLength + 1.2],
            round: v.baseHeight * 0.36,
            along: scale(back, -1),
            up: top,
          },
          {
            is: 'shaft',
            name: 'shaft',
            up: top,
            join: 'fine',
            sections: [
              { name: 'base', at: spine(0.1, v.baseUp), width: v.baseWidth * 0.8, height: v.baseHeight * 0.8 },
              {
                name: 'baseEnd',
                at: spine(0.28, v.baseUp / 2),
                width: v.baseWidth * 0.62,
                height: v.baseHeight * 0.62,
              },
              { name: 'waist', at: spine((0.3 + barbs) / 2), width: v.waistWidth, height: v.waistHeight },
              { name: 'barbs', at: spine(barbs + 0.04), width: v.tuftWidth, height: v.tuftHeight },
              { name: 'tuft', at: spine((barbs + 1) / 2 + 0.06), width: v.tuftWidth * 0.78, height: v.tuftHeight },
              { name: 'tip', at: spine(0.98), width: v.tuftWidth * 0.36, height: v.tuftHeight * 0.8 },
            ],
          },
          {
            is: 'ellipsoid',
            name: 'padRidge',
            at: spine(barbs + 0.1, -v.tuftHeight / 2),
            size: [v.tuftWidth * 0.72, v.padRidge * 2, v.tuftLength * 0.7],
            along,
            up: top,
            join: 'fine',
          },
        ],
      };
    },
  );
