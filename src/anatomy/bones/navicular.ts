/**
 * The navicular: a boat, hollow behind for the head of the talus, with three facets in front and the tuberosity at its inner end.
 * Anchored on the talonavicular facet; its long axis runs from the tuberosity outwards and up.
 */
import { add, cross, normalize, scale, type Vec3 } from '../../units';
import { deg, mm, recipe } from './recipe';

export const navicular = recipe(
  {
    length: mm('from the root of the tuberosity to the outer end'),
    height: mm('from the sole to the back of the foot at the middle'),
    thickness: mm('front to back at the middle'),
    outerThickness: mm('front to back near the outer end'),
    outerHeight: mm('height near the outer end'),
    axisTurn: deg('how far the outer end lies in front of the inner one'),
    axisRise: deg('how far the outer end lies above the inner one'),
    dorsalRise: mm('height of the dorsal crest above the plate'),
    plantarLip: mm('how far the plantar edge reaches down'),
    tuberosityReach: mm('how far the tuberosity reaches inwards'),
    tuberosityDrop: mm('how far the tuberosity reaches down'),
    tuberosityBack: mm('how far the tuberosity reaches back'),
    tuberosityWidth: mm('thickness of the tuberosity at its root'),
    tuberosityTip: mm('thickness of the tuberosity at its tip'),
    tuberosityNotch: mm('radius of the notch between tuberosity and plantar edge'),
  },
  (v, site) => {
    const t = site.facet('talus-navicular');
    const [turn, rise] = [v.axisTurn, v.axisRise].map((d) => (d * Math.PI) / 180) as [number, number];
    const out = normalize([-Math.cos(turn) * Math.cos(rise), Math.sin(rise), Math.sin(turn) * Math.cos(rise)]);
    const front = scale(t.out, -1);
    const up = normalize(cross(out, front));
    const at = (outwards: number, upwards: number, forwards: number): Vec3 =>
      add(add(t.at, scale(out, outwards)), add(scale(up, upwards), scale(front, forwards)));
    const inner = at(-v.length * 0.32, v.height * 0.1, v.thickness * 0.42);
    return {
      masses: [
        {
          is: 'ellipsoid',
          name: 'plate',
          at: at(-v.length * 0.08, 0, v.thickness * 0.42),
          size: [v.thickness, v.height, v.length],
          along: out,
          up,
        },
        {
          is: 'ellipsoid',
          name: 'outerEnd',
          at: at(v.length * 0.27, v.outerHeight * 0.05, v.outerThickness * 0.42),
          size: [v.outerThickness, v.outerHeight, v.length * 0.42],
          along: out,
          up,
        },
        {
          is: 'rod',
          name: 'dorsalCrest',
          from: at(-v.length * 0.24, v.height * 0.36 + v.dorsalRise * 0.5, v.thickness * 0.86),
          to: at(v.length * 0.22, v.height * 0.36 + v.dorsalRise * 0.4, v.thickness * 0.5),
          radius: [v.dorsalRise + 2, v.dorsalRise + 2],
        },
        {
          is: 'ellipsoid',
          name: 'plantarLip',
          at: at(-v.length * 0.1, -v.height * 0.38 - v.plantarLip * 0.3, v.thickness * 0.3),
          size: [v.thickness * 0.7, v.plantarLip * 2.4, v.length * 0.6],
          along: out,
          up,
        },
        {
          is: 'rod',
          name: 'tuberosity',
          from: inner,
          to: add(inner, [v.tuberosityReach, -v.tuberosityDrop, -v.tuberosityBack]),
          radius: [v.tuberosityWidth / 2, v.tuberosityTip / 2],
        },
      ],
      hollows: [
        {
          is: 'rod',
          name: 'tuberosityNotch',
          from: add(inner, [
            v.tuberosityReach * 0.5 - 1,
            -v.tuberosityDrop - v.tuberosityWidth / 2 - v.tuberosityNotch * 0.6,
            12,
          ]),
          to: add(inner, [
            v.tuberosityReach * 0.1 - 1,
            -v.tuberosityDrop - v.tuberosityWidth / 2 - v.tuberosityNotch * 0.5,
            -2,
          ]),
          radius: [v.tuberosityNotch, v.tuberosityNotch],
          join: 'fine',
        },
      ],
    };
  },
);
