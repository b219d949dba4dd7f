/**
 * A middle phalanx: one short block from base to pulley, waisted in the second toe and hardly in the fifth, its ends given by its two
 * joints. A base and condyles of their own would find no room between them.
 */
import { add, cross, length, normalize, scale, subtract, type Vec3 } from '../../units';
import { mm, type Recipe, recipe } from './recipe';

/** How far the block is led past either facet, to be cut by the joint, mm. */
const PAST_MM = 1.2;
/** How far the bone ends before the middle of its facet, half of the gap, and how round the groove of its pulley is, mm. */
const [SHORT_MM, GROOVE_MM] = [0.8, 1.6];

export const phalanxMiddle = (behind: string, ahead: string): Recipe =>
  recipe(
    {
      baseWidth: mm('width of the base'),
      baseHeight: mm('height of the base'),
      baseInwards: mm('how far the base reaches inwards past the middle of its facet'),
      baseUp: mm('how far the base reaches up past the middle of its facet'),
      waistWidth: mm('width between base and pulley'),
      waistHeight: mm('height between base and pulley'),
      pulleyWidth: mm('width of the pulley'),
      pulleyHeight: mm('height of the pulley'),
      pulleyInwards: mm('how far the pulley reaches inwards past the middle of its facet'),
      pulleyGroove: mm('depth of the groove between its condyles'),
      soleHollow: mm('how far the sole is hollowed between base and pulley'),
      extensorLip: mm('how far the middle of the base stands up where the extensor ends'),
    },
    (v, site) => {
      const b = site.facet(behind);
      const p = site.facet(ahead);
      const along = normalize(subtract(p.at, b.at));
      const long = length(subtract(p.at, b.at));
      const side = normalize(cross([0, 1, 0], along));
      const top = cross(along, side);
      /** `s` mm from facet to facet, the ends drawn aside and up as far as theirs are. */
      const at = (s: number, upwards = 0): Vec3 => {
        const share = Math.min(1, Math.max(0, s / long));
        const inwards = v.baseInwards + (v.pulleyInwards - v.baseInwards) * share;
        const up = v.baseUp * (1 - share) + upwards;
        return add(b.at, add(scale(along, s), add(scale(side, inwards), scale(top, up))));
      };
      const corner = 2.8;
      const groove = (to: 1 | -1): Vec3 => at(long - SHORT_MM + GROOVE_MM - v.pulleyGroove, (to * v.pulleyHeight) / 2);
      return {
        masses: [
          {
            is: 'shaft',
            name: 'block',
            up: top,
            sections: [
              { name: 'base', at: at(-PAST_MM), width: v.baseWidth, height: v.baseHeight, corner },
              { name: 'baseEnd', at: at(0.24 * long), width: v.baseWidth, height: v.baseHeight, corner },
              {
                name: 'waist',
                at: at(0.5 * long, v.soleHollow / 2),
                width: v.waistWidth,
                height: v.waistHeight,
                corner,
              },
              { name: 'neck', at: at(0.74 * long), width: v.pulleyWidth, height: v.pulleyHeight, corner },
              { name: 'pulley', at: at(long + PAST_MM), width: v.pulleyWidth, height: v.pulleyHeight, corner },
            ],
          },
          {
            is: 'ellipsoid',
            name: 'extensorLip',
            at: at(0.14 * long, v.baseHeight / 2 - v.extensorLip),
            size: [v.baseWidth * 0.5, v.extensorLip * 4, long * 0.5],
            along,
            up: top,
            join: 'fine',
          },
        ],
        hollows: [
          {
            is: 'rod',
            name: 'pulleyGroove',
            from: groove(1),
            to: groove(-1),
            radius: [GROOVE_MM, GROOVE_MM],
            join: 'fine',
          },
        ],
      };
    },
  );
