/** The fifth metatarsal: a flat, rolled base whose tuberosity (styloid) overhangs the cuboid outwards and backwards. */
import { add, scale } from '../../units';
import { metatarsalTerms, pits, rayOf } from './metatarsal';
import { mm, recipe } from './recipe';

export const metatarsalFifth = recipe(
  {
    ...metatarsalTerms,
    baseOut: mm('how far the middle of the base lies outwards of the facet of the cuboid'),
    baseDown: mm('how far the middle of the base lies below that facet'),
    styloidBack: mm('how far the tip of the tuberosity reaches back beyond the facet of the cuboid'),
    styloidOut: mm('how far its tip lies outwards of the middle of the base'),
    styloidDrop: mm('how far its tip lies below the middle of the base'),
    styloidRoot: mm('thickness of the tuberosity at its root'),
    styloidTip: mm('thickness of the tuberosity at its tip'),
  },
  (v, site) => {
    const ray = rayOf(v, site, 'cuboid-metatarsal5', 'metatarsal5-phalanxProximal5', [-v.baseOut, -v.baseDown, -1]);
    const root = ray.at(0.12, -v.baseWidth * 0.14, -1);
    const tip = add(
      ray.at(0),
      add(scale(ray.side, -v.styloidOut), add(scale(ray.top, -v.styloidDrop), scale(ray.along, -v.styloidBack))),
    );
    return {
      masses: [
        ...ray.masses,
        { is: 'rod', name: 'styloid', from: root, to: tip, radius: [v.styloidRoot / 2, v.styloidTip / 2] },
      ],
      hollows: pits(v, ray),
    };
  },
);
