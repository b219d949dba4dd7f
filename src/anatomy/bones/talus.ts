/**
 * The talus: a trochlea wider in front than behind, on a body with a lateral and a posterior process; a neck turned inwards and
 * downwards, and an oval head. Anchored on its facets; the dome turns about the same axis as the mortise.
 */
import { add, normalize, scale, subtract, type Vec3 } from '../../units';
import { below, deg, mm, recipe } from './recipe';

export const talus = recipe(
  {
    domeRadius: mm('radius of the trochlea about the ankle axis'),
    trochleaFrontWidth: mm('width of the trochlea in front'),
    trochleaBackWidth: mm('width of the trochlea behind'),
    lateralDepth: mm('front to back of the lateral process'),
    lateralReach: mm('how far the lateral process juts out beyond the outer end of the posterior facet'),
    bodyLength: mm('front to back of the body above the posterior facet'),
    posteriorReach: mm('how far the posterior process reaches back beyond the facet'),
    posteriorWidth: mm('width of the posterior process'),
    tendonGroove: mm('radius of the groove of flexor hallucis longus between its tubercles'),
    neckWidth: mm('width of the neck'),
    neckHeight: mm('height of the neck'),
    headLong: mm('long diameter of the head'),
    headShort: mm('short diameter of the head'),
    headLength: mm('front to back of the head'),
    sulcusDepth: mm('radius of the sulcus tali between its two lower facets'),
    neckHollow: mm('radius of the hollow on top of the neck'),
    outerWaist: mm('radius of the hollow of the outer side of the neck, where the sinus tarsi opens'),
    innerWaist: mm('radius of the hollow of the inner side of the neck'),
    headTilt: deg('tilt of the head about its own axis, outer side up'),
  },
  (v, site) => {
    const p = site.facet('talus-calcaneus-posterior');
    const n = site.facet('talus-navicular');
    const d = site.facet('tibia-talus');
    // The facet's centre lies inside the curve by the depth of its arc's centroid.
    const axis = below(d, v.domeRadius - d.extents[1] ** 2 / (32 * v.domeRadius));
    const across = d.major;
    const head = add(below(n, v.headLength * 0.46, -0.2), [0, -0.7, 0]);
    const root: Vec3 = add(axis, [0.5, -v.domeRadius * 0.1, v.domeRadius * 0.5]);
    const way = normalize(subtract(head, root));
    const tilt = (v.headTilt * Math.PI) / 180;
    const backRim = p.at[2] - p.extents[1] / 2;
    return {
      masses: [
        {
          is: 'drum',
          name: 'trochlea',
          at: axis,
          along: across,
          front: scale(d.minor, -1),
          // Beyond the joint's surface, which trims it and gives it its groove.
          radius: v.domeRadius + 1.5,
          width: [v.trochleaBackWidth, v.trochleaFrontWidth],
          round: 1.5,
        },
        {
          is: 'ellipsoid',
          name: 'lateralProcess',
          // Between the facet for the fibula above and the outer end of the posterior facet below.
          at: add(p.at, [7.5 - p.extents[0] / 2 - v.lateralReach, 4, 3.5]),
          size: [15, 15, v.lateralDepth],
          along: [0, -0.12, 1],
          up: [-0.35, 0.94, 0],
        },
        {
          is: 'block',
          name: 'body',
          // Down past the posterior facet, whose surface hollows it between a front and a hind rim.
          at: add(p.at, [1.5, 5, 0]),
          size: [p.extents[0] * 0.92, 18, v.bodyLength],
          round: 5,
          along: p.minor[2] > 0 ? p.minor : scale(p.minor, -1),
          up: scale(p.out, -1),
          join: 'fine',
        },
        {
          is: 'ellipsoid',
          name: 'posteriorProcess',
          at: [p.at[0] + 2.5, p.at[1] + 1, backRim + 1.5 - v.posteriorReach * 0.4],
          size: [v.posteriorWidth, 13, v.posteriorReach * 2.9],
        },
        {
          is: 'ellipsoid',
          name: 'neck',
          at: add(root, scale(subtract(head, root), 0.5)),
          size: [v.neckWidth, v.neckHeight, 36],
          along: way,
          join: 'usual',
          past: 'talus-calcaneus-posterior',
        },
        {
          is: 'ellipsoid',
          name: 'head',
          at: head,
          size: [v.headLong, v.headShort, v.headLength],
          along: n.out,
          up: [Math.sin(tilt), Math.cos(tilt), 0.1],
          join: 'fine',
          past: 'talus-calcaneus-posterior',
        },
      ],
      hollows: [
        {
          is: 'rod',
          name: 'sulcus',
          from: add(p.at, [-20, v.sulcusDepth * 0.8, p.extents[1] * 0.5 + v.sulcusDepth * 1.85]),
          to: add(p.at, [14, 0, p.extents[1] * 0.5 + v.sulcusDepth * 0.7]),
          radius: [v.sulcusDepth * 1.8, v.sulcusDepth * 0.5],
          join: 'fine',
        },
        {
          is: 'rod',
          name: 'neckTop',
          from: add(root, [-20, v.neckHeight / 2 + v.neckHollow * 0.75, v.domeRadius * 0.56]),
          to: add(root, [20, v.neckHeight / 2 + v.neckHollow * 0.75, v.domeRadius * 0.5]),
          radius: [v.neckHollow, v.neckHollow],
          join: 'fine',
        },
        {
          is: 'rod',
          name: 'outerWaist',
          from: add(root, [-v.neckWidth * 0.48 - v.outerWaist, 2, 7]),
          to: add(root, [-v.neckWidth * 0.7 - v.outerWaist, -10, 3.5]),
          radius: [v.outerWaist, v.outerWaist],
          join: 'fine',
        },
        {
          is: 'rod',
          name: 'innerWaist',
          from: add(root, [v.neckWidth * 0.66 + v.innerWaist, 6, 6.5]),
          to: add(root, [v.neckWidth * 0.7 + v.innerWaist, -6, 6]),
          radius: [v.innerWaist, v.innerWaist],
          join: 'fine',
        },
        {
          is: 'rod',
          name: 'tendonGroove',
          from: [p.at[0] + 4, p.at[1] + 14, backRim - v.posteriorReach - v.tendonGroove * 0.3],
          to: [p.at[0] + 7, p.at[1] - 8, backRim - v.posteriorReach * 0.6 - v.tendonGroove * 0.3],
          radius: [v.tendonGroove, v.tendonGroove],
          join: 'fine',
        },
      ],
    };
  },
);
