/**
 * The cuboid: long on its inner, short on its outer side, with the groove of fibularis longus in front of a ridge on the sole and
 * a beak under the calcaneus. Anchored on its facets behind and in front.
 */
import { add, cross, normalize, scale, subtract, type Vec3 } from '../../units';
import { below, deg, mm, recipe } from './recipe';

export const cuboid = recipe(
  {
    width: mm('from inner to outer side at the middle'),
    height: mm('from the back of the foot to the sole, without the ridge'),
    innerLength: mm('length along the inner side'),
    outerLength: mm('length along the outer side'),
    innerWidth: mm('thickness of the long inner part'),
    roll: deg('roll about its length, outer side down'),
    backWidth: mm('width of the part behind, at the calcaneus'),
    backHeight: mm('height of the part behind'),
    ridgeHeight: mm('thickness of the ridge on the sole behind the groove'),
    ridgeReach: mm('how far the ridge reaches outwards, as tuberosity'),
    ridgeDrop: mm('how far the ridge stands below the body'),
    grooveDepth: mm('radius of the groove of fibularis longus'),
    grooveForward: mm('from the middle of the bone forwards to the groove'),
    beakReach: mm('how far the beak reaches back under the calcaneus'),
    beakThickness: mm('thickness of the beak'),
    dorsalSlope: mm('how much is taken from the outer dorsal edge'),
  },
  (v, site) => {
    const c = site.facet('calcaneus-cuboid');
    const m4 = site.facet('cuboid-metatarsal4');
    const m5 = site.facet('cuboid-metatarsal5');
    const ahead = scale(add(m4.at, m5.at), 0.5);
    const along = normalize(subtract(ahead, c.at));
    const roll = (v.roll * Math.PI) / 180;
    const up = normalize([-Math.sin(roll), Math.cos(roll), 0.35]);
    const side = normalize(cross(up, along));
    const top = cross(along, side);
    const middle = add(scale(add(c.at, ahead), 0.5), [0, 0, 0]);
    const at = (inwards: number, upwards: number, forwards: number): Vec3 =>
      add(add(middle, scale(side, inwards)), add(scale(top, upwards), scale(along, forwards)));
    const sole = -v.height / 2;
    return {
      masses: [
        {
          is: 'block',
          name: 'body',
          at: at(-v.width * 0.08, 0, -(v.innerLength - v.outerLength) * 0.12),
          size: [v.width, v.height, v.outerLength + 4],
          round: 4.5,
          along,
          up: top,
        },
        {
          is: 'block',
          name: 'innerPart',
          at: at(v.width / 2 - v.innerWidth / 2, 0.5, 0),
          size: [v.innerWidth, v.height * 0.94, v.innerLength],
          round: 4,
          along,
          up: top,
          join: 'fine',
        },
        {
          is: 'ellipsoid',
          name: 'back',
          at: below(c, 6),
          size: [v.backWidth, v.backHeight, 18],
          along: scale(c.out, -1),
          up: [c.major[0] * 0 - 0.35, 0.9, 0.2],
        },
        {
          is: 'rod',
          name: 'ridge',
          from: at(-v.width * 0.4 - v.ridgeReach, sole - v.ridgeDrop * 0.4, v.grooveForward - v.grooveDepth - 2.5),
          to: at(v.width * 0.36, sole - v.ridgeDrop, v.grooveForward - v.grooveDepth - 4),
          radius: [v.ridgeHeight / 2, v.ridgeHeight / 2],
          join: 'fine',
        },
        {
          is: 'ellipsoid',
          name: 'beak',
          at: add(below(c, 2), [5, -c.extents[1] * 0.42, -v.beakReach * 0.3]),
          size: [12, v.beakThickness, v.beakReach * 2],
          along: [-0.2, 0.2, 1],
          join: 'fine',
        },
      ],
      hollows: [
        {
          is: 'rod',
          name: 'fibularGroove',
          from: at(-v.width * 0.75, sole - v.grooveDepth * 0.15 + 1, v.grooveForward - 1),
          to: at(v.width * 0.6, sole - v.grooveDepth * 0.45, v.grooveForward + 2.5),
          radius: [v.grooveDepth, v.grooveDepth],
          join: 'fine',
        },
      ],
      cuts: [
        {
          name: 'outerDorsalEdge',
          at: at(-v.width / 2 + v.dorsalSlope * 0.4, v.height / 2 - v.dorsalSlope * 0.4, 0),
          normal: add(scale(side, -0.6), scale(top, 0.8)),
          join: 'usual',
        },
      ],
    };
  },
);
