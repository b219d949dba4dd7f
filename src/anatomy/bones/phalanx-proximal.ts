/**
 * A proximal phalanx: a hollow base, broader than tall, with a tubercle either side of its sole, a waist, and a pulley of two condyles.
 * Anchored on its two joints.
 */
import { add, cross, length, normalize, scale, subtract, type Vec3 } from '../../units';
import type { Mass } from './mass';
import { flanks } from './phalanx-flanks';
import { mm, type Recipe, recipe, share } from './recipe';

export const phalanxProximal = (behind: string, ahead: string): Recipe =>
  recipe(
    {
      baseWidth: mm('width of the base'),
      baseHeight: mm('height of the base'),
      baseLength: mm('length of the base before it narrows'),
      baseInwards: mm('how far the base reaches inwards past the middle of its facet'),
      baseDown: mm('how far the base reaches down past the middle of its facet'),
      innerTubercle: mm('how far the inner tubercle of the base stands below it and aside'),
      outerTubercle: mm('how far the outer tubercle of the base stands below it and aside'),
      waistWidth: mm('width at the waist'),
      waistHeight: mm('height at the waist'),
      waistAt: share('place of the waist from base to pulley'),
      dorsalBow: mm('bow of the shaft upwards'),
      innerBow: mm('bow of the shaft inwards'),
      pulleyWidth: mm('width of the pulley'),
      pulleyHeight: mm('height of the pulley'),
      pulleyGroove: mm('depth of the groove between its condyles'),
      soleFlat: mm('how much is taken flat from the sole of the shaft'),
    },
    (v, site) => {
      const b = site.facet(behind);
      const p = site.facet(ahead);
      const axle = add(p.at, scale(p.out, -v.pulleyHeight * 0.42));
      const along = normalize(subtract(axle, b.at));
      const long = length(subtract(axle, b.at));
      const side = normalize(cross([0, 1, 0], along));
      const top = cross(along, side);
      const at = (s: number, upwards = 0, inwards = 0): Vec3 =>
        add(
          add(b.at, scale(along, long * s)),
          add(scale(top, upwards + v.dorsalBow * 4 * s * (1 - s)), scale(side, inwards + v.innerBow * 4 * s * (1 - s))),
        );
      const radius = v.pulleyHeight / 2;
      const disc = (name: string, aside: number, r: number, width: number): Mass => ({
        is: 'roller',
        name,
        at: add(axle, scale(side, aside * v.pulleyWidth)),
        along: side,
        radius: r,
        width,
        round: Math.min(r, width / 2) * 0.6,
        join: 'fine',
      });
      const thick = v.waistHeight;
      // The base is square to its facet, wherever the shaft goes from there.
      const base = add(b.at, add(scale(side, v.baseInwards), scale(top, -v.baseDown)));
      const atBase = (depth: number): Vec3 => add(base, scale(b.out, -depth));
      const baseEnd = v.baseLength / long;
      const tubercle = (name: string, to: 1 | -1, standsOut: number): Mass => {
        const [wide, tall] = [v.baseWidth * 0.4, v.baseHeight * 0.5];
        const aside = to * ((v.baseWidth - wide) / 2 + standsOut * 0.5);
        const up = tall / 2 - v.baseHeight / 2 - standsOut;
        return {
          is: 'ellipsoid',
          name,
          at: add(atBase(v.baseLength * 0.35), add(scale(side, aside), scale(top, up))),
          size: [wide, tall, v.baseLength * 1.2],
          along,
          up: top,
          join: 'fine',
        };
      };
      return {
        masses: [
          {
            is: 'shaft',
            name: 'base',
            up: top,
            sections: [
              { name: 'rim', at: atBase(-v.baseLength * 0.4), width: v.baseWidth, height: v.baseHeight, corner: 3 },
              { name: 'rimEnd', at: atBase(v.baseLength * 0.7), width: v.baseWidth, height: v.baseHeight, corner: 3 },
            ],
          },
          {
            is: 'shaft',
            name: 'shaft',
            sections: [
              {
                name: 'base',
                at: at(0.05, -v.baseDown, v.baseInwards),
                width: v.baseWidth * 0.9,
                height: v.baseHeight * 0.9,
              },
              {
                name: 'baseEnd',
                at: at(baseEnd, -v.baseDown * (1 - baseEnd), v.baseInwards * (1 - baseEnd)),
                width: v.baseWidth * 0.88,
                height: v.baseHeight * 0.86,
                corner: 2.4,
              },
              { name: 'waist', at: at(v.waistAt), width: v.waistWidth, height: v.waistHeight },
              { name: 'neck', at: at((v.waistAt + 1) / 2), width: v.waistWidth * 1.06, height: v.waistHeight },
              { name: 'pulley', at: at(1), width: v.pulleyWidth * 0.86, height: v.pulleyHeight * 0.8 },
            ],
          },
          tubercle('innerTubercle', 1, v.innerTubercle),
          tubercle('outerTubercle', -1, v.outerTubercle),
          disc('axle', 0, radius - v.pulleyGroove, v.pulleyWidth * 0.9),
          disc('medialCondyle', 0.32, radius, v.pulleyWidth * 0.36),
          disc('lateralCondyle', -0.32, radius, v.pulleyWidth * 0.36),
        ],
        hollows: [
          // In the shortest, pads of both joints would fill the waist.
          ...flanks({
            at: at(v.waistAt),
            side,
            top,
            width: v.waistWidth,
            tall: v.baseHeight,
            round: length(subtract(p.at, b.at)) * 0.11,
          }),
          {
            is: 'block',
            name: 'sole',
            at: at(v.waistAt, v.soleFlat - (v.waistHeight + thick) / 2),
            size: [v.baseWidth * 1.2, thick, long * 0.5],
            round: thick / 3,
            along,
            join: 'fine',
          },
        ],
      };
    },
  );
