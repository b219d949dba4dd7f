/**
 * The lower end of the tibia, closed above by a flat cut: a shaft that flares into the block over the talar dome, the medial
 * malleolus with its two colliculi, and the notch of the fibula between two tubercles. Anchored on its joints with the talus.
 */
import { add, cross, dot, normalize, radians, scale, subtract, type Vec3 } from '../../units';
import type { Mass } from './mass';
import { below, deg, mm, recipe } from './recipe';

const DOME = 'tibia-talus';
const MEDIAL = 'tibia-talus-medial';

export const tibia = recipe(
  {
    stumpHeight: mm('from the plafond up to the cut through the shaft'),
    shaftLean: deg('lean of the shaft forwards on the plafond: how much lower its hind lip is'),
    shaftWidth: mm('width of the shaft at the cut'),
    shaftDepth: mm('front to back of the shaft at the cut'),
    anteriorBorder: mm('radius of the rounded anterior border, which runs down and inwards to the malleolus'),
    flareHeight: mm('height above the plafond where the shaft begins to widen'),
    plafondWidth: mm('width of the block over the dome, from the notch of the fibula to the root of the malleolus'),
    plafondDepth: mm('front to back of the block over the dome'),
    lipDrop: mm('how far the front and hind lips reach down from the middle of the plafond'),
    malleolusThickness: mm('thickness of the medial malleolus'),
    malleolusDepth: mm('front to back of the medial malleolus'),
    anteriorColliculus: mm('how far the anterior colliculus reaches below the plafond'),
    posteriorColliculus: mm('how far the posterior colliculus reaches below the plafond'),
    colliculiGroove: mm('radius of the notch between the colliculi'),
    tendonGroove: mm('radius of the groove of tibialis posterior behind the malleolus'),
    anteriorTubercle: mm('width of the tubercle in front of the fibula'),
    posteriorTubercle: mm('width of the tubercle behind the fibula'),
  },
  (v, site) => {
    const dome = site.facet(DOME);
    const inner = site.facet(MEDIAL);
    const lean = radians(v.shaftLean);
    const medial = dome.major;
    const up = normalize(add(scale(dome.out, -Math.cos(lean)), scale(dome.minor, Math.sin(lean))));
    const front = cross(medial, up);
    /** A point so far medial, up and in front of the middle of the plafond. */
    const q = (m: number, u: number, f: number): Vec3 =>
      add(dome.at, add(scale(medial, m), add(scale(up, u), scale(front, f))));
    const half = dome.extents[0] / 2;
    // The block reaches from the notch, just outside the dome's lateral rim, to the root of the malleolus.
    const middle = v.plafondWidth / 2 - half - 4;
    const side = dot(subtract(below(inner, v.malleolusThickness / 2), dome.at), medial);
    const thick = v.malleolusThickness / 2;
    const [ahead, behind] = [v.malleolusDepth * 0.3, -v.malleolusDepth * 0.24];
    const colliculus = (name: string, drop: number, f: number, share: number): Mass => ({
      is: 'rod',
      name,
      from: q(side, 4, f * 0.8),
      to: q(side, thick * share - drop, f),
      radius: [thick, thick * share],
      past: DOME,
      join: 'fine',
    });
    return {
      masses: [
        {
          is: 'shaft',
          name: 'shaft',
          past: MEDIAL,
          up: front,
          sections: [
            { name: 'cut', at: q(0, v.stumpHeight + 4, -1), width: v.shaftWidth, height: v.shaftDepth, corner: 2.05 },
            {
              name: 'flare',
              at: q(0.5, v.flareHeight, -0.5),
              width: v.shaftWidth * 1.16,
              height: v.shaftDepth * 1.12,
              corner: 2.1,
            },
            {
              name: 'metaphysis',
              at: q(middle, 9, 0),
              width: v.plafondWidth * 0.94,
              height: v.plafondDepth * 0.98,
              corner: 2.6,
            },
            { name: 'end', at: q(middle, 1, 0), width: v.plafondWidth, height: v.plafondDepth, corner: 3.2 },
          ],
        },
        {
          is: 'rod',
          name: 'anteriorBorder',
          past: MEDIAL,
          from: q(-1, v.stumpHeight + 4, v.shaftDepth / 2 - v.anteriorBorder * 0.7),
          to: q(side - thick, 12, v.malleolusDepth * 0.3),
          radius: [v.anteriorBorder, v.anteriorBorder * 1.4],
          join: 'usual',
        },
        {
          is: 'block',
          name: 'plafond',
          past: MEDIAL,
          at: add(add(dome.at, scale(medial, middle)), scale(dome.out, v.lipDrop - 8)),
          size: [v.plafondWidth, 16, v.plafondDepth * 0.9],
          round: 5,
          along: dome.minor,
          up: scale(dome.out, -1),
          join: 'usual',
        },
        {
          is: 'ellipsoid',
          name: 'anteriorTubercle',
          past: MEDIAL,
          at: q(-half - 0.5, 8, v.plafondDepth * 0.3),
          size: [v.anteriorTubercle, 34, v.plafondDepth * 0.36],
          along: front,
          up: normalize(add(up, scale(medial, 0.22))),
          join: 'broad',
        },
        {
          is: 'ellipsoid',
          name: 'posteriorTubercle',
          past: MEDIAL,
          at: q(-half + 1, 2, -v.plafondDepth * 0.38),
          size: [v.posteriorTubercle, 20, v.plafondDepth * 0.34],
          join: 'fine',
        },
        {
          is: 'block',
          name: 'malleolus',
          past: DOME,
          at: q(side, (10 - v.posteriorColliculus) / 2, 0),
          size: [v.malleolusThickness, 12 + v.posteriorColliculus, v.malleolusDepth],
          round: thick * 0.9,
          along: front,
          up,
          join: 'fine',
        },
        colliculus('anteriorColliculus', v.anteriorColliculus, ahead, 0.95),
        colliculus('posteriorColliculus', v.posteriorColliculus, behind, 0.8),
      ],
      hollows: [
        {
          is: 'rod',
          name: 'colliculiGroove',
          from: q(half, -v.posteriorColliculus - v.colliculiGroove * 0.5, 0),
          to: q(half + 2 * v.malleolusThickness, -v.posteriorColliculus - v.colliculiGroove * 0.5, 0),
          radius: [v.colliculiGroove, v.colliculiGroove],
          join: 'fine',
        },
        {
          is: 'rod',
          name: 'tendonGroove',
          from: q(half + v.malleolusThickness * 0.55, 26, -v.plafondDepth / 2 - v.tendonGroove * 0.2),
          to: q(half + v.malleolusThickness * 0.5, -16, behind - thick - v.tendonGroove * 0.6),
          radius: [v.tendonGroove, v.tendonGroove],
          join: 'fine',
        },
      ],
      cuts: [{ name: 'stump', at: q(0, v.stumpHeight, 0), normal: up, join: 'fine' }],
    };
  },
);
