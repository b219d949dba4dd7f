/** A sesamoid of the hallux: a bead, rounder below, with a facet above that runs under its groove. */
import { add, normalize, scale, subtract } from '../../units';
import { deg, mm, type Recipe, recipe } from './recipe';

export const sesamoid = (above: string): Recipe =>
  recipe(
    {
      length: mm('front to back'),
      width: mm('from side to side'),
      height: mm('from the facet to the sole'),
      turn: deg('turn of its length, its front inwards'),
      bellyBack: mm('how far its thickest part lies behind the middle'),
    },
    (v, site) => {
      const f = site.facet(above);
      const turn = (v.turn * Math.PI) / 180;
      const up = f.out;
      const ahead = normalize(
        subtract([Math.sin(turn), 0, Math.cos(turn)], scale(up, Math.sin(turn) * up[0] + Math.cos(turn) * up[2])),
      );
      return {
        masses: [
          {
            is: 'ellipsoid',
            name: 'body',
            at: scale(up, v.height * 0.08),
            size: [v.width, v.height, v.length],
            along: ahead,
            up,
          },
          {
            is: 'ellipsoid',
            name: 'belly',
            at: add(scale(ahead, -v.bellyBack), scale(up, -v.height * 0.2)),
            size: [v.width * 0.86, v.height * 0.8, v.length * 0.62],
            along: ahead,
            up,
            join: 'fine',
          },
        ],
      };
    },
  );
