/** The first metatarsal: stout, a tall kidney behind, and under its big head the crista between the grooves of two sesamoids. */
import { add, scale } from '../../units';
import { metatarsalTerms, rayOf } from './metatarsal';
import { headPits, inHead } from './metatarsal-head';
import { mm, recipe } from './recipe';

export const metatarsalFirst = recipe(
  {
    ...metatarsalTerms,
    cristaHeight: mm('how far the crista between the sesamoid grooves stands below the head'),
    grooveDepth: mm('depth of the sesamoid grooves in the sole of the head'),
    soleRidge: mm('thickness of the ridge along the sole of the shaft'),
    kidneyNotch: mm('depth of the notch on the outer side of the base'),
  },
  (v, site) => {
    const ray = rayOf(v, site, {
      base: 'cuneiformMedial-metatarsal1',
      toe: 'metatarsal1-phalanxProximal1',
      condyles: { apart: 0.68, width: 0.4, drop: v.headHeight * 0.1, outerLower: -0.1 },
    });
    const radius = v.headWidth * 0.16;
    const underHead = (inwards: number, ahead: number, drop: number) =>
      add(inHead(v, ray, inwards, -1, ahead), scale(ray.top, -drop));
    const groove = (name: string, to: 1 | -1) => ({
      is: 'rod' as const,
      name,
      from: underHead(to * 0.48, -1.1, radius - v.grooveDepth),
      to: underHead(to * 0.48, 0.5, radius - v.grooveDepth),
      radius: [radius, radius] as const,
      join: 'fine' as const,
    });
    const thin = v.cristaHeight * 0.6;
    const notch = v.baseHeight * 0.3;
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
          from: underHead(0, -0.8, v.cristaHeight * 0.6 - thin),
          to: underHead(0, 0.35, v.cristaHeight - thin),
          radius: [thin, thin],
          join: 'fine',
        },
      ],
      hollows: [
        ...headPits(v, ray),
        groove('medialGroove', 1),
        groove('lateralGroove', -1),
        {
          is: 'rod',
          name: 'kidneyNotch',
          from: ray.atBase(-0.1, -v.baseWidth / 2 - notch + v.kidneyNotch, -v.baseHeight * 0.06),
          to: ray.atBase(0.2, -v.baseWidth / 2 - notch + v.kidneyNotch * 0.7, -v.baseHeight * 0.06),
          radius: [notch, notch],
          join: 'fine',
        },
      ],
    };
  },
);
