/**
 * The lower end of the tibia, closed above by a flat cut: a shaft that flares into the block over the talar dome, the medial
 * malleolus with its two colliculi, and the notch of the fibula between two tubercles. Anchored on its joints with the talus.
 */
import { add, cross, normalize, radians, scale, type Vec3 } from '../../units';
import { below, deg, mm, recipe } from './recipe';

const DOME = 'tibia-talus';
const MEDIAL = 'tibia-talus-medial';

export const tibia = recipe(
  {
    stumpHeight: mm('from the plafond up to the cut through the shaft'),
    shaftLean: deg('lean of the shaft forwards on the plafond: how much lower its hind lip is'),
    shaftWidth: mm('width of the shaft at the cut'),
    shaftDepth: mm('front to back of the shaft at the cut'),
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
    const root = below(inner, v.malleolusThickness / 2);
    const colliculus = (drop: number, f: number, radius: number): { from: Vec3; to: Vec3 } => {
      const side = (root[0] - dome.at[0]) * medial[0] + (root[1] - dome.at[1]) * medial[1] + (root[2] - dome.at[2]) * medial[2];
      return { from: q(side, 9, f * 0.8), to: q(side + 0.5, radius - drop, f) };
    };
    const thick = v.malleolusThickness / 2;
    const [ahead, behind] = [v.malleolusDepth * 0.3, -v.malleolusDepth * 0.24];
    return {
      masses: [
        {
          is: 'shaft',
          name: 'shaft',
          up: front,
          sections: [
            { name: 'cut', at: q(0, v.stumpHeight + 4, -1), width: v.shaftWidth, height: v.shaftDepth, corner: 2.4 },
            { name: 'flare', at: q(0.5, v.flareHeight, -0.5), width: v.shaftWidth * 1.16, height: v.shaftDepth * 1.12, corner: 2.5 },
            { name: 'metaphysis', at: q(middle, 9, 0), width: v.plafondWidth * 0.94, height: v.plafondDepth * 0.98, corner: 2.9 },
            { name: 'end', at: q(middle, 1, 0), width: v.plafondWidth, height: v.plafondDepth, corner: 3.2 },
          ],
        },
        {
          is: 'block',
          name: 'plafond',
          at: add(add(dome.at, scale(medial, middle)), scale(dome.out, v.lipDrop - 8)),
          size: [v.plafondWidth, 16, v.plafondDepth * 0.94],
          round: 4,
          along: dome.minor,
          up: scale(dome.out, -1),
          join: 'usual',
        },
        {
          is: 'ellipsoid',
          name: 'anteriorTubercle',
          at: q(-half - 3, 3, v.plafondDepth * 0.32),
          size: [v.anteriorTubercle, 17, v.plafondDepth * 0.32],
          join: 'fine',
        },
        {
          is: 'ellipsoid',
          name: 'posteriorTubercle',
          at: q(-half - 2, 2, -v.plafondDepth * 0.38),
          size: [v.posteriorTubercle, 16, v.plafondDepth * 0.3],
          join: 'fine',
        },
        {
          is: 'rod',
          name: 'anteriorColliculus',
          ...colliculus(v.anteriorColliculus, ahead, thick * 0.95),
          radius: [thick * 1.25, thick * 0.95],
          past: DOME,
          join: 'fine',
        },
        {
          is: 'rod',
          name: 'posteriorColliculus',
          ...colliculus(v.posteriorColliculus, behind, thick * 0.9),
          radius: [thick * 1.15, thick * 0.9],
          past: DOME,
          join: 'fine',
        },
      ],
      hollows: [
        {
          is: 'rod',
          name: 'colliculiGroove',
          from: q(half, -v.posteriorColliculus - v.colliculiGroove * 0.75, -1),
          to: q(half + 2 * v.malleolusThickness, -v.posteriorColliculus - v.colliculiGroove * 0.75, -1),
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
