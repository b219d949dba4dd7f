/**
 * The calcaneus: tuberosity with two plantar processes, body under the posterior facet, the shelf that carries the middle facet,
 * and the anterior process behind the cuboid. Anchored on its three facets.
 */
import { add, normalize, scale, subtract, type Vec3 } from '../../units';
import { below, deg, mm, recipe } from './recipe';

const POSTERIOR = 'talus-calcaneus-posterior';
const MIDDLE = 'talus-calcaneus-middleAnterior';
const CUBOID = 'calcaneus-cuboid';

export const calcaneus = recipe(
  {
    heelLength: mm('from the posterior facet back to the middle of the tuberosity'),
    heelDrop: mm('from the posterior facet down to the middle of the tuberosity'),
    heelWidth: mm('greatest width of the tuberosity'),
    tuberosityHeight: mm('height of the tuberosity without its processes'),
    tuberosityDepth: mm('front to back of the tuberosity'),
    tuberosityLean: deg('lean of the back surface, its top backwards'),
    medialProcessWidth: mm('width of the medial process'),
    lateralProcessWidth: mm('width of the lateral process'),
    processDrop: mm('from the middle of the tuberosity down to the tip of the medial process'),
    processLength: mm('length of the medial process along the sole'),
    processNotch: mm('radius of the notch between the two processes'),
    bodyWidth: mm('width of the body below the posterior facet'),
    bodyHeight: mm('height of the body at its middle'),
    slopeHeight: mm('thickness of the ridge from the tuberosity up to the posterior facet'),
    saddleHollow: mm('radius of the saddle of the upper border between tuberosity and posterior facet'),
    facetBlockHeight: mm('height of the block that carries the posterior facet'),
    shelfOverhang: mm('overhang of the sustentaculum tali beyond the inner wall'),
    shelfThickness: mm('thickness of the sustentaculum tali'),
    shelfLength: mm('front to back of the sustentaculum tali'),
    anteriorLength: mm('length of the anterior process'),
    anteriorWidth: mm('width of the anterior process'),
    anteriorHeight: mm('height of the anterior process'),
    beakWidth: mm('width of the beak under the anterior facet'),
    sulcusDepth: mm('radius of the hollow between posterior facet and anterior process'),
    grooveDepth: mm('radius of the groove of flexor hallucis longus under the shelf'),
    wallHollow: mm('radius of the hollow of the inner wall'),
    archHollow: mm('radius of the hollow of the sole in front of the processes'),
    tubercleWidth: mm('width of the anterior tubercle of the sole, behind the facet for the cuboid'),
    trochleaHeight: mm('height of the fibular trochlea above the outer wall'),
  },
  (v, site) => {
    const p = site.facet(POSTERIOR);
    const m = site.facet(MIDDLE);
    const c = site.facet(CUBOID);
    const heel: Vec3 = add(p.at, [0.2, -v.heelDrop, -v.heelLength]);
    const lean = (v.tuberosityLean * Math.PI) / 180;
    const back: Vec3 = [-0.06, Math.sin(lean), Math.cos(lean)];
    const front = below(c, v.anteriorLength / 2);
    const way = normalize(subtract(front, heel));
    /** Square to the bone's long axis, towards the sole. */
    const sole: Vec3 = normalize([0, -way[2], way[1]]);
    const middle = add(heel, scale(subtract(front, heel), 0.5));
    const outside = middle[0] + 0.3 - v.bodyWidth / 2;
    // The tabled facet is the middle and the anterior one together: the shelf carries its inner hind half, the beak its front.
    const shelf = add(below(m, v.shelfThickness * 0.68, -0.7, -0.1), [v.shelfOverhang * 0.12 - 4, 0, 1.5]);
    return {
      masses: [
        {
          is: 'block',
          name: 'tuberosity',
          at: heel,
          size: [v.heelWidth, v.tuberosityHeight, v.tuberosityDepth],
          round: v.heelWidth * 0.34,
          along: back,
        },
        {
          is: 'ellipsoid',
          name: 'medialProcess',
          at: add(heel, [v.heelWidth * 0.16, 11 - v.processDrop, v.processLength * 0.12]),
          size: [v.medialProcessWidth, 24, v.processLength],
          along: way,
          join: 'usual',
        },
        {
          is: 'ellipsoid',
          name: 'lateralProcess',
          at: add(heel, [-v.heelWidth * 0.35, 11.6 - v.processDrop, v.processLength * 0.14]),
          size: [v.lateralProcessWidth, 18, v.processLength * 0.65],
          along: way,
          join: 'usual',
        },
        {
          is: 'block',
          name: 'body',
          at: add(middle, [0.3, -4.5, 0]),
          size: [v.bodyWidth, v.bodyHeight, 50],
          round: v.bodyWidth * 0.36,
          along: way,
          join: 'broad',
        },
        {
          is: 'rod',
          name: 'superiorSlope',
          from: add(heel, [0, v.tuberosityHeight / 2 - v.slopeHeight - 3, 0]),
          to: add(below(p, v.slopeHeight + 3), [0, 0, -10]),
          radius: [v.slopeHeight, v.slopeHeight],
          join: 'usual',
        },
        {
          is: 'block',
          name: 'facetBlock',
          at: add(below(p, v.facetBlockHeight / 2 - 1), [-2, 0, 0]),
          size: [p.extents[0] * 0.86, v.facetBlockHeight, p.extents[1] * 1.25],
          round: 7,
          along: [p.out[0] * 0 - 0.1, -p.out[2], p.out[1]],
          up: p.out,
          join: 'usual',
        },
        {
          is: 'block',
          name: 'sustentaculum',
          at: shelf,
          size: [v.shelfOverhang * 1.6, v.shelfThickness, v.shelfLength],
          round: v.shelfThickness * 0.49,
          along: [-0.3, -m.out[2], m.out[1]],
          up: m.out,
          join: 'usual',
          past: POSTERIOR,
        },
        {
          is: 'ellipsoid',
          name: 'beak',
          at: below(m, v.beakWidth * 0.38, 0.55, -0.2),
          size: [v.beakWidth, v.beakWidth, v.beakWidth * 1.3],
          along: m.major,
          up: m.out,
          join: 'usual',
          past: POSTERIOR,
        },
        {
          is: 'block',
          name: 'anteriorProcess',
          // A beak rises above the facet for the cuboid.
          at: add(front, [0, v.anteriorHeight * 0.03, 0]),
          size: [v.anteriorWidth, v.anteriorHeight * 1.12, v.anteriorLength],
          round: 6,
          along: c.out,
          join: 'usual',
        },
        {
          is: 'ellipsoid',
          name: 'anteriorTubercle',
          at: add(below(c, v.tubercleWidth * 0.55, 0, 0), [1, -v.anteriorHeight * 0.6, -1]),
          size: [v.tubercleWidth, 11, v.tubercleWidth],
          along: c.out,
          join: 'usual',
        },
        {
          is: 'rod',
          name: 'fibularTrochlea',
          // An oblique ridge, forwards and down.
          from: [outside + 3 - v.trochleaHeight, middle[1] + 1, middle[2] + 5],
          to: [outside + 2.5 - v.trochleaHeight, middle[1] - 4, middle[2] + 15],
          radius: [3.5, 3],
          join: 'usual',
        },
      ],
      hollows: [
        {
          is: 'rod',
          name: 'saddle',
          from: add(heel, [-30, v.tuberosityHeight / 2 + v.saddleHollow + 0.4, -2]),
          to: add(heel, [30, v.tuberosityHeight / 2 + v.saddleHollow + 0.4, -2]),
          radius: [v.saddleHollow, v.saddleHollow],
          join: 'usual',
        },
        {
          is: 'rod',
          name: 'flexorGroove',
          from: add(shelf, [v.shelfOverhang * 0.3, -v.shelfThickness / 2 - v.grooveDepth * 0.7, -v.shelfLength]),
          to: add(shelf, [v.shelfOverhang * 0.2, -v.shelfThickness / 2 - v.grooveDepth * 0.7, v.shelfLength]),
          radius: [v.grooveDepth, v.grooveDepth],
          join: 'fine',
        },
        {
          is: 'rod',
          name: 'innerWall',
          from: add(middle, [v.bodyWidth / 2 + v.wallHollow * 0.6, -7, -8]),
          to: add(middle, [v.bodyWidth / 2 + v.wallHollow * 0.6, -3, 22]),
          radius: [v.wallHollow, v.wallHollow * 0.7],
          join: 'usual',
        },
        {
          is: 'rod',
          name: 'sinusTarsi',
          from: add(p.at, [-24, v.sulcusDepth * 0.22, p.extents[1] * 0.5 + v.sulcusDepth * 0.67]),
          to: add(p.at, [6, v.sulcusDepth * 0.17, p.extents[1] * 0.5 + v.sulcusDepth * 0.22]),
          radius: [v.sulcusDepth, v.sulcusDepth * 0.46],
          join: 'fine',
        },
        {
          is: 'rod',
          name: 'processNotch',
          from: add(heel, [-v.heelWidth * 0.15, 2 - v.processDrop, -v.processLength * 0.1]),
          to: add(heel, [-v.heelWidth * 0.15, 8 - v.processDrop, v.processLength * 0.7]),
          radius: [v.processNotch, v.processNotch],
          join: 'usual',
        },
        {
          is: 'rod',
          name: 'arch',
          from: add(add(middle, scale(sole, v.bodyHeight / 2 + v.archHollow * 1.08)), [-24, 0, 0]),
          to: add(add(middle, scale(sole, v.bodyHeight / 2 + v.archHollow * 1.08)), [24, 0, 0]),
          radius: [v.archHollow, v.archHollow],
          join: 'broad',
        },
      ],
    };
  },
);
