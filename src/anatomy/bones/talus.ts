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
    trochleaGroove: mm('depth of the groove between the two rims'),
    bodyHeight: mm('height of the body under the trochlea'),
    bodyDepth: mm('front to back of the body'),
    lateralReach: mm('how far the lateral process reaches outwards beyond the trochlea'),
    lateralDepth: mm('front to back of the lateral process'),
    lateralHeight: mm('height of the lateral process'),
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
    headTilt: deg('tilt of the head about its own axis, outer side up'),
  },
  (v, site) => {
    const p = site.facet('talus-calcaneus-posterior');
    const n = site.facet('talus-navicular');
    const d = site.facet('tibia-talus');
    // The facet's centre lies inside the curve by the depth of its arc's centroid.
    const axis = below(d, v.domeRadius - d.extents[1] ** 2 / (32 * v.domeRadius));
    const across = d.major;
    const head = below(n, v.headLength * 0.46);
    const root: Vec3 = add(axis, [0.5, -v.domeRadius * 0.1, v.domeRadius * 0.5]);
    const way = normalize(subtract(head, root));
    const tilt = (v.headTilt * Math.PI) / 180;
    const outside = axis[0] - v.trochleaFrontWidth / 2;
    const backRim = p.at[2] - p.extents[1] / 2;
    return {
      masses: [
        {
          is: 'roller',
          name: 'trochleaFront',
          at: add(axis, [0, -0.6, v.domeRadius * 0.12]),
          along: across,
          // Beyond the joint's surface, which trims it.
          radius: v.domeRadius + 1,
          width: v.trochleaFrontWidth,
          round: 2.5,
        },
        {
          is: 'roller',
          name: 'trochleaBack',
          at: add(axis, [0.8, 0, -v.domeRadius * 0.06]),
          along: across,
          radius: v.domeRadius + 1.5,
          width: v.trochleaBackWidth,
          round: 2.5,
          join: 'fine',
        },
        {
          is: 'block',
          name: 'body',
          at: add(p.at, [0.5, v.bodyHeight / 2 - 1, 3]),
          size: [v.trochleaBackWidth * 1.02, v.bodyHeight, v.bodyDepth],
          round: 5,
          along: [0.05, -0.05, 1],
          join: 'fine',
        },
        {
          is: 'ellipsoid',
          name: 'lateralProcess',
          at: [outside - v.lateralReach * 0.1, p.at[1] + v.lateralHeight * 0.3, axis[2] - 1],
          size: [v.lateralReach * 2.2, v.lateralHeight, v.lateralDepth],
          along: [0, -0.12, 1],
          up: [-0.35, 0.94, 0],
        },
        {
          is: 'ellipsoid',
          name: 'posteriorProcess',
          at: [p.at[0] + 2.5, p.at[1] + 3.5, backRim + 2 - v.posteriorReach * 0.4],
          size: [v.posteriorWidth, 11, v.posteriorReach * 2.6],
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
          name: 'groove',
          from: add(axis, [0, v.domeRadius + 14 - v.trochleaGroove, -22]),
          to: add(axis, [0.5, v.domeRadius + 14 - v.trochleaGroove, 18]),
          radius: [14, 14],
          join: 'fine',
        },
        {
          is: 'rod',
          name: 'sulcus',
          from: add(p.at, [-17, 1, p.extents[1] * 0.5 + v.sulcusDepth * 1.3]),
          to: add(p.at, [14, 0, p.extents[1] * 0.5 + v.sulcusDepth * 0.25]),
          radius: [v.sulcusDepth, v.sulcusDepth * 0.55],
          join: 'fine',
        },
        {
          is: 'rod',
          name: 'neckTop',
          from: add(root, [-20, v.neckHeight / 2 + v.neckHollow * 0.75, v.domeRadius * 0.42]),
          to: add(root, [20, v.neckHeight / 2 + v.neckHollow * 0.75, v.domeRadius * 0.34]),
          radius: [v.neckHollow, v.neckHollow],
          join: 'usual',
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
