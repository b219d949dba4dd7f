/**
 * The medial cuneiform: the largest of the three, a wedge with its base at the sole and its edge on the back of the foot, and a
 * tall kidney in front for the first metatarsal. Anchored on its facets behind and in front.
 */
import { add, cross, normalize, scale, subtract, type Vec3 } from '../../units';
import { deg, mm, recipe } from './recipe';

export const cuneiformMedial = recipe(
  {
    length: mm('from navicular to first metatarsal at mid height'),
    height: mm('from the dorsal edge to the base, without the base'),
    edgeWidth: mm('thickness at the dorsal edge'),
    middleWidth: mm('thickness at mid height'),
    baseWidth: mm('thickness of the plantar base'),
    baseHeight: mm('height of the plantar base'),
    baseLength: mm('length of the plantar base'),
    baseBack: mm('how far the base lies behind the middle'),
    frontHeight: mm('height of the front part, at the first metatarsal'),
    frontWidth: mm('thickness of the front part'),
    lean: deg('lean of the wedge, its edge outwards'),
    bulge: mm('bulge of the inner surface'),
    kidneyNotch: mm('radius of the notch on the outer side between the two lobes of the front facet'),
    soleHollow: mm('radius of the hollow of the sole in front of the base'),
  },
  (v, site) => {
    const n = site.facet('navicular-cuneiformMedial');
    const m = site.facet('cuneiformMedial-metatarsal1');
    const along = normalize(subtract(m.at, n.at));
    const lean = (v.lean * Math.PI) / 180;
    const side = normalize(cross([-Math.sin(lean), Math.cos(lean), 0.45], along));
    const top = cross(along, side);
    const middle = scale(add(n.at, m.at), 0.5);
    const at = (inwards: number, upwards: number, forwards: number): Vec3 =>
      add(add(middle, scale(side, inwards)), add(scale(top, upwards), scale(along, forwards)));
    return {
      masses: [
        {
          is: 'block',
          name: 'wedge',
          at: at(-0.5, v.height * 0.06, 0),
          size: [v.middleWidth, v.height, v.length],
          round: v.middleWidth * 0.42,
          along,
          up: top,
        },
        {
          is: 'rod',
          name: 'dorsalEdge',
          from: at(-1.5, v.height / 2 - v.edgeWidth * 0.2, -v.length * 0.36),
          to: at(-1.5, v.height / 2 - v.edgeWidth * 0.4, v.length * 0.4),
          radius: [v.edgeWidth / 2, v.edgeWidth / 2],
          join: 'fine',
        },
        {
          is: 'ellipsoid',
          name: 'base',
          at: at(1.5, -v.height / 2 + v.baseHeight * 0.25, -v.baseBack),
          size: [v.baseWidth, v.baseHeight, v.baseLength],
          along,
          up: top,
        },
        {
          is: 'ellipsoid',
          name: 'front',
          at: add(add(m.at, scale(m.out, -6)), [0.5, 0, 0]),
          size: [v.frontWidth, v.frontHeight, 16],
          along: m.out,
          up: top,
          join: 'fine',
        },
        {
          is: 'ellipsoid',
          name: 'innerBulge',
          at: at(v.middleWidth * 0.3 + v.bulge * 0.3, -v.height * 0.12, 0),
          size: [v.bulge * 2 + 4, v.height * 0.6, v.length * 0.8],
          along,
          up: top,
        },
      ],
      hollows: [
        {
          is: 'rod',
          name: 'kidneyNotch',
          from: at(-v.middleWidth / 2 - v.kidneyNotch * 0.55, -v.height * 0.12, v.length * 0.2),
          to: at(-v.middleWidth / 2 - v.kidneyNotch * 0.5, -v.height * 0.16, v.length * 0.8),
          radius: [v.kidneyNotch, v.kidneyNotch],
          join: 'fine',
        },
        {
          is: 'rod',
          name: 'soleHollow',
          from: at(-14, -v.height / 2 - v.soleHollow * 0.85, v.length * 0.24),
          to: at(16, -v.height / 2 - v.soleHollow * 0.8, v.length * 0.24),
          radius: [v.soleHollow, v.soleHollow],
          join: 'fine',
        },
      ],
    };
  },
);
