/**
 * The cuboid: long on its inner, short on its outer side, where the groove of fibularis longus begins as a notch and runs forwards and
 * inwards across the sole in front of a ridge; a beak reaches back under the calcaneus. Anchored on its facets behind and in front.
 */
import { add, cross, normalize, scale, subtract, type Vec3 } from '../../units';
import { below, deg, mm, recipe } from './recipe';

export const cuboid = recipe(
  {
    width: mm('from inner to outer side at the middle'),
    height: mm('from the dorsal face to the sole, without the ridge'),
    innerLength: mm('length along the inner side'),
    outerLength: mm('length along the outer side'),
    innerHeight: mm('height of the long inner side'),
    roll: deg('roll about its length, outer side down'),
    backWidth: mm('width of the part behind, at the calcaneus'),
    backHeight: mm('height of the part behind'),
    ridgeWidth: mm('thickness of the ridge on the sole behind the groove'),
    ridgeDrop: mm('how far the ridge stands below the sole'),
    tuberosityReach: mm('how far the ridge reaches outwards, as tuberosity'),
    grooveWidth: mm('width of the groove of fibularis longus'),
    grooveDepth: mm('depth of the groove in the sole'),
    grooveForward: mm('from the middle of the bone forwards to the groove'),
    beakReach: mm('how far the beak reaches back under the calcaneus'),
    beakThickness: mm('thickness of the beak'),
    dorsalSlope: mm('how much is taken from the outer dorsal edge'),
    cornerSlope: mm('how much is taken from the inner dorsal corner behind, under the head of the talus'),
  },
  (v, site) => {
    const c = site.facet('calcaneus-cuboid');
    const m4 = site.facet('cuboid-metatarsal4');
    const m5 = site.facet('cuboid-metatarsal5');
    const ahead = scale(add(m4.at, m5.at), 0.5);
    const along = normalize(subtract(ahead, c.at));
    const roll = (v.roll * Math.PI) / 180;
    const side = normalize(cross([-Math.sin(roll), Math.cos(roll), 0.35], along));
    const top = cross(along, side);
    const middle = scale(add(c.at, ahead), 0.5);
    const at = (inwards: number, upwards: number, forwards: number): Vec3 =>
      add(add(middle, scale(side, inwards)), add(scale(top, upwards), scale(along, forwards)));
    const sole = -v.height / 2;
    const cornerWay = normalize(add(scale(c.major, -0.75), scale(c.minor, 0.65)));
    const grooveRadius = v.grooveWidth / 2;
    const ridgeBack = v.grooveForward - grooveRadius - v.ridgeWidth * 0.35;
    return {
      masses: [
        {
          is: 'block',
          name: 'body',
          at: at(-v.width * 0.06, 0, -(v.innerLength - v.outerLength) * 0.12),
          size: [v.width, v.height, v.outerLength],
          round: 4.5,
          along,
          up: top,
        },
        {
          is: 'block',
          name: 'innerSide',
          at: at(v.width * 0.18, v.height * 0.04, 0),
          size: [v.width * 0.64, v.innerHeight, v.innerLength],
          round: 4,
          along,
          up: top,
          join: 'fine',
        },
        {
          is: 'ellipsoid',
          name: 'back',
          at: below(c, 5),
          size: [v.backWidth, v.backHeight, 16],
          along: scale(c.out, -1),
          up: c.minor,
        },
        {
          is: 'rod',
          name: 'ridge',
          from: at(-v.width * 0.4 - v.tuberosityReach, sole - v.ridgeDrop * 0.6 + v.ridgeWidth * 0.5, ridgeBack - 0.5),
          to: at(v.width * 0.36, sole - v.ridgeDrop + v.ridgeWidth * 0.5, ridgeBack),
          radius: [v.ridgeWidth * 0.55, v.ridgeWidth / 2],
          join: 'fine',
        },
        {
          is: 'rod',
          name: 'beak',
          from: below(c, 7, -0.35, -0.7),
          to: below(c, -v.beakReach, -0.4, -1.4),
          radius: [v.beakThickness * 0.6, v.beakThickness * 0.4],
        },
      ],
      hollows: [
        {
          is: 'rod',
          name: 'fibularGroove',
          from: at(-v.width * 0.75, sole + v.grooveDepth + 1 - grooveRadius, v.grooveForward - 1),
          to: at(v.width * 0.6, sole + v.grooveDepth - grooveRadius, v.grooveForward + 2.5),
          radius: [grooveRadius, grooveRadius],
          join: 'fine',
        },
      ],
      cuts: [
        {
          name: 'outerDorsalEdge',
          at: at(-v.width / 2 + v.dorsalSlope * 0.4, v.height / 2 - v.dorsalSlope * 0.4, 0),
          normal: add(scale(side, -0.6), scale(top, 0.8)),
        },
        {
          name: 'innerDorsalCorner',
          at: add(below(c, 2, -0.8, 0.6), scale(cornerWay, -v.cornerSlope)),
          normal: cornerWay,
          join: 'fine',
        },
      ],
    };
  },
);
