/**
 * The lower end of the fibula, closed above by a flat cut: a slender shaft that widens into the lateral malleolus, flattened from
 * side to side, its tip behind the middle; the facet for the talus inside, the malleolar fossa behind it. Anchored on its joints
 * with talus and tibia.
 */
import { add, cross, dot, normalize, scale, subtract, type Vec3 } from '../../units';
import { below, mm, recipe } from './recipe';

const TALUS = 'fibula-talus';
const TIBIA = 'tibia-fibula';

export const fibula = recipe(
  {
    stumpHeight: mm('from the middle of the facet for the talus up to the cut through the shaft'),
    shaftWidth: mm('width of the shaft at the cut'),
    shaftDepth: mm('front to back of the shaft at the cut'),
    neckWidth: mm('width of the shaft in the notch of the tibia'),
    neckDepth: mm('front to back of the shaft in the notch of the tibia'),
    malleolusThickness: mm('thickness of the lateral malleolus, side to side'),
    malleolusDepth: mm('front to back of the lateral malleolus at its widest'),
    tipDrop: mm('from the middle of the facet down to the tip'),
    tipBack: mm('how far the tip lies behind the middle of the malleolus'),
    tipWidth: mm('width of the tip'),
    lateralCrest: mm('height of the crest on the outer side above the malleolus'),
    fossaDepth: mm('radius of the malleolar fossa behind and below the facet'),
    tendonGroove: mm('radius of the groove of the fibular tendons behind the malleolus'),
  },
  (v, site) => {
    const facet = site.facet(TALUS);
    const notch = site.facet(TIBIA);
    const up = notch.major;
    const inward = normalize(subtract(facet.out, scale(up, dot(facet.out, up))));
    const front = cross(inward, up);
    /** A point so far inward, up and in front of the middle of the malleolus, level with the middle of its facet. */
    const middle = below(facet, v.malleolusThickness / 2);
    const q = (m: number, u: number, f: number): Vec3 =>
      add(middle, add(scale(inward, m), add(scale(up, u), scale(front, f))));
    const shaft = below(notch, v.neckWidth / 2);
    const rise = dot(subtract(shaft, middle), up);
    const beside = (p: Vec3, u: number): Vec3 => add(p, scale(up, u - rise));
    return {
      masses: [
        {
          is: 'shaft',
          name: 'shaft',
          up: front,
          sections: [
            {
              name: 'cut',
              at: beside(add(shaft, scale(inward, -1)), v.stumpHeight + 4),
              width: v.shaftWidth,
              height: v.shaftDepth,
              corner: 2.3,
            },
            { name: 'neck', at: shaft, width: v.neckWidth, height: v.neckDepth, corner: 2.4 },
            {
              name: 'waist',
              at: q(0.5, 8, -0.5),
              width: v.malleolusThickness * 0.98,
              height: v.malleolusDepth * 0.86,
              corner: 2.5,
            },
            {
              // Swells outwards; inwards it goes past the facet for the talus, whose surface trims it flat.
              name: 'malleolus',
              at: q(-1.2, -1, 0),
              width: v.malleolusThickness * 1.25,
              height: v.malleolusDepth,
              corner: 2.5,
            },
            {
              name: 'below',
              at: q(-v.tipWidth * 0.27, 6 - v.tipDrop, -v.tipBack * 0.7),
              width: v.tipWidth * 1.25,
              height: v.malleolusDepth * 0.74,
              corner: 2.2,
            },
          ],
        },
        {
          is: 'ellipsoid',
          name: 'tip',
          at: q(-v.tipWidth * 0.6, v.tipWidth * 0.5 - v.tipDrop, -v.tipBack),
          size: [v.tipWidth, v.tipWidth, v.malleolusDepth * 0.5],
          along: front,
          up,
          join: 'usual',
        },
        {
          is: 'rod',
          name: 'lateralCrest',
          from: q(-v.malleolusThickness * 0.5 + v.lateralCrest * 0.2, 0, 0),
          to: add(beside(shaft, rise + 8), scale(inward, -v.neckWidth * 0.3)),
          radius: [v.lateralCrest, v.lateralCrest * 0.8],
          join: 'usual',
        },
      ],
      hollows: [
        {
          is: 'ellipsoid',
          name: 'malleolarFossa',
          at: q(v.malleolusThickness * 0.28, -v.tipDrop * 0.6, -v.malleolusDepth * 0.36),
          size: [v.fossaDepth * 1.6, v.fossaDepth * 2.2, v.fossaDepth * 1.8],
          along: front,
          up,
          join: 'fine',
        },
        {
          is: 'rod',
          name: 'tendonGroove',
          from: q(-1, 16, -v.malleolusDepth * 0.45 - v.tendonGroove * 0.7),
          to: q(-1, -v.tipDrop, -v.malleolusDepth * 0.5 - v.tendonGroove * 0.75),
          radius: [v.tendonGroove, v.tendonGroove],
          join: 'fine',
        },
      ],
      cuts: [{ name: 'stump', at: q(0, v.stumpHeight, 0), normal: up, join: 'fine' }],
    };
  },
);
