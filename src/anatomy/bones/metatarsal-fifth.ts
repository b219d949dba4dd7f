/** The fifth metatarsal: a flat, rolled base whose tuberosity (styloid) overhangs the cuboid outwards and backwards. */
import { add, scale } from '../../units';
import { condyleDrop, lesserCondyles, metatarsalTerms, rayOf } from './metatarsal';
import { headPits, underHead } from './metatarsal-head';
import { mm, recipe } from './recipe';

export const metatarsalFifth = recipe(
  {
    ...metatarsalTerms,
    condyleDrop,
    baseOut: mm('how far the middle of the base lies outwards of the facet of the cuboid, along the roll'),
    styloidBack: mm('how far the tip of the tuberosity reaches back beyond that facet'),
    styloidOut: mm('how far its tip lies outwards of the middle of the base'),
    styloidDrop: mm('how far its tip lies below the middle of the base'),
    styloidRoot: mm('thickness of the tuberosity at its root'),
    styloidTip: mm('thickness of the tuberosity at its tip'),
  },
  (v, site) => {
    const ray = rayOf(v, site, {
      base: 'cuboid-metatarsal5',
      toe: 'metatarsal5-phalanxProximal5',
      baseOut: v.baseOut,
      condyles: lesserCondyles(v.condyleDrop),
    });
    const root = ray.at(0.16, -v.styloidOut * 0.35, -v.styloidDrop * 0.35);
    const tip = add(ray.at(0, -v.styloidOut, -v.styloidDrop), scale(ray.along, -v.styloidBack));
    return {
      masses: [
        ...ray.masses,
        { is: 'rod', name: 'styloid', from: root, to: tip, radius: [v.styloidRoot / 2, v.styloidTip / 2] },
      ],
      hollows: [...headPits(v, ray), underHead(v, ray, v.condyleDrop)],
    };
  },
);
