/**
 * Intermediate and lateral cuneiform: wedges driven in from the back of the foot. A broad dorsal face narrows to a crest on the
 * sole, and the side that faces the other of the two is hollowed in front of its facet, where the ligament between them holds. They
 * differ only in measures, in that side and in the metatarsal they carry.
 */
import { add, cross, normalize, scale, subtract, type Vec3 } from '../../units';
import { deg, mm, type Recipe, recipe } from './recipe';

export const cuneiformWedge = (behind: string, ahead: string, hollowed: 'inner' | 'outer'): Recipe =>
  recipe(
    {
      dorsalHeight: mm('from the middle of the facets behind and in front up to the dorsal face'),
      dorsalLength: mm('length of the dorsal face'),
      dorsalWidth: mm('width of the dorsal face'),
      dorsalRise: mm('how far the dorsal face bulges'),
      middleWidth: mm('thickness at mid height'),
      crestDepth: mm('from that middle down to the crest on the sole'),
      crestLength: mm('length of the crest'),
      crestWidth: mm('thickness of the crest'),
      crestForward: mm('how far the crest lies in front of the middle'),
      lean: deg('lean of the wedge, its crest inwards'),
      tilt: deg('tilt of the wedge, its crest backwards'),
      ligamentHollow: mm('depth of the hollow for the ligament between the two'),
      hollowForward: mm('how far that hollow lies in front of the middle'),
    },
    (v, site) => {
      const n = site.facet(behind);
      const m = site.facet(ahead);
      const along = normalize(subtract(m.at, n.at));
      const [lean, tilt] = [v.lean, v.tilt].map((d) => (d * Math.PI) / 180) as [number, number];
      const side = normalize(cross([-Math.sin(lean), Math.cos(lean), 0], along));
      const straight = cross(along, side);
      const top = add(scale(straight, Math.cos(tilt)), scale(along, Math.sin(tilt)));
      const middle = scale(add(n.at, m.at), 0.5);
      const at = (inwards: number, upwards: number, forwards: number): Vec3 =>
        add(add(middle, scale(side, inwards)), add(scale(top, upwards), scale(along, forwards)));
      const away = hollowed === 'inner' ? 1 : -1;
      const hollowRadius = v.ligamentHollow + 3;
      return {
        masses: [
          {
            is: 'shaft',
            name: 'wedge',
            up: along,
            sections: [
              {
                name: 'crest',
                at: at(0, -v.crestDepth, v.crestForward),
                width: v.crestWidth,
                height: v.crestLength,
              },
              {
                name: 'middle',
                at: at(0, 0, v.crestForward * 0.3),
                width: v.middleWidth,
                height: (v.dorsalLength + v.crestLength) * 0.56,
                corner: 3.5,
              },
              {
                name: 'dorsum',
                at: at(0, v.dorsalHeight, 0),
                width: v.dorsalWidth,
                height: v.dorsalLength,
                corner: 4.5,
              },
            ],
          },
          {
            is: 'ellipsoid',
            name: 'dorsalFace',
            at: at(0, v.dorsalHeight, 0),
            size: [v.dorsalWidth * 0.85, v.dorsalRise * 2, v.dorsalLength * 0.85],
            along,
            up: top,
            join: 'fine',
          },
        ],
        hollows: [
          {
            is: 'rod',
            name: 'ligamentHollow',
            from: at(away * (v.crestWidth / 2 + 3), -v.crestDepth * 1.2, v.hollowForward),
            to: at(away * (v.middleWidth / 2 + 3), v.dorsalHeight * 0.3, v.hollowForward),
            radius: [hollowRadius, hollowRadius],
            join: 'fine',
          },
        ],
      };
    },
  );
