/** The first metatarsal: stout, a tall kidney behind, and under its big head the crista between the grooves of two sesamoids. */
import { add, scale } from '../../units';
import { metatarsalTerms, pits, rayOf } from './metatarsal';
import { mm, recipe } from './recipe';

export const metatarsalFirst = recipe(
  {
    ...metatarsalTerms,
    cristaHeight: mm('height of the crista between the sesamoid grooves'),
    grooveWidth: mm('radius of a sesamoid groove'),
    soleRidge: mm('thickness of the ridge along the sole of the shaft'),
    kidneyNotch: mm('radius of the notch on the outer side of the base'),
  },
  (v, site) => {
    const ray = rayOf(v, site, 'cuneiformMedial-metatarsal1', 'metatarsal1-phalanxProximal1');
    const inHead = (inwards: number, upwards: number, forwards: number) =>
      add(ray.head, add(scale(ray.side, inwards), add(scale(ray.top, upwards), scale(ray.along, forwards))));
    const sole = -v.headHeight / 2;
    const groove = (name: string, to: 1 | -1) => ({
      is: 'rod' as const,
      name,
      from: inHead(to * v.headWidth * 0.26, sole - v.grooveWidth * 0.55, -v.headLength * 0.55),
      to: inHead(to * v.headWidth * 0.26, sole - v.grooveWidth * 0.35, v.headLength * 0.3),
      radius: [v.grooveWidth, v.grooveWidth] as const,
      join: 'fine' as const,
    });
    return {
      masses: [
        ...ray.masses,
        {
          is: 'rod',
          name: 'soleRidge',
          from: ray.at(0.12, -1, -v.baseHeight * 0.3),
          to: ray.at(0.6, -1, -v.midHeight * 0.34),
          radius: [v.soleRidge / 2, v.soleRidge / 2],
        },
        {
          is: 'rod',
          name: 'crista',
          from: inHead(0, sole + 2 - v.cristaHeight * 0.4, -v.headLength * 0.42),
          to: inHead(0, sole + 2 - v.cristaHeight * 0.4, v.headLength * 0.12),
          radius: [v.cristaHeight, v.cristaHeight],
          join: 'fine',
        },
      ],
      hollows: [
        ...pits(v, ray),
        groove('medialGroove', 1),
        groove('lateralGroove', -1),
        {
          is: 'rod',
          name: 'kidneyNotch',
          from: ray.at(-0.1, -v.baseWidth / 2 - v.kidneyNotch * 0.55, -v.baseHeight * 0.08),
          to: ray.at(0.16, -v.baseWidth / 2 - v.kidneyNotch * 0.6, -v.baseHeight * 0.06),
          radius: [v.kidneyNotch, v.kidneyNotch],
          join: 'fine',
        },
      ],
    };
  },
);
