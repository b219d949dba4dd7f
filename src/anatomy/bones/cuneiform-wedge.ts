/**
 * Intermediate and lateral cuneiform: wedges driven in from the back of the foot, a broad dorsal plate over a narrow keel. They
 * differ only in measures and in the metatarsal they carry.
 */
import { add, cross, normalize, scale, subtract, type Vec3 } from '../../units';
import { deg, mm, type Recipe, recipe } from './recipe';

export const cuneiformWedge = (behind: string, ahead: string): Recipe =>
  recipe(
    {
      dorsalLength: mm('length of the dorsal plate'),
      dorsalWidth: mm('width of the dorsal plate'),
      dorsalThickness: mm('thickness of the dorsal plate'),
      height: mm('from the dorsal plate to the keel'),
      middleWidth: mm('thickness at mid height'),
      keelWidth: mm('thickness of the keel at the sole'),
      keelLength: mm('length of the keel'),
      keelForward: mm('how far the keel lies in front of the middle'),
      lean: deg('lean of the wedge, its keel inwards'),
      tilt: deg('tilt of the wedge, its keel forwards'),
      plateTurn: deg('turn of the dorsal plate about the height, its front inwards'),
    },
    (v, site) => {
      const n = site.facet(behind);
      const m = site.facet(ahead);
      const along = normalize(subtract(m.at, n.at));
      const [lean, tilt, turn] = [v.lean, v.tilt, v.plateTurn].map((d) => (d * Math.PI) / 180) as [
        number,
        number,
        number,
      ];
      const side = normalize(cross([-Math.sin(lean), Math.cos(lean), Math.tan(tilt)], along));
      const top = cross(along, side);
      const middle = scale(add(n.at, m.at), 0.5);
      const at = (inwards: number, upwards: number, forwards: number): Vec3 =>
        add(add(middle, scale(side, inwards)), add(scale(top, upwards), scale(along, forwards)));
      const plateWay = normalize(add(scale(along, Math.cos(turn)), scale(side, Math.sin(turn))));
      return {
        masses: [
          {
            is: 'block',
            name: 'dorsalPlate',
            at: at(0, v.height / 2 - v.dorsalThickness / 2, 0),
            size: [v.dorsalWidth, v.dorsalThickness, v.dorsalLength],
            round: v.dorsalThickness * 0.48,
            along: plateWay,
            up: top,
          },
          {
            is: 'block',
            name: 'body',
            at: at(0, 0, 0),
            size: [v.middleWidth, v.height * 0.86, v.dorsalLength * 0.96],
            round: v.middleWidth * 0.48,
            along,
            up: top,
          },
          {
            is: 'ellipsoid',
            name: 'keel',
            at: at(0, -v.height * 0.36, v.keelForward),
            size: [v.keelWidth, v.height * 0.42, v.keelLength],
            along,
            up: top,
          },
        ],
      };
    },
  );
