/**
 * The distal phalanx of the hallux: a broad base with the tubercle of the long flexor at its sole, a waist, and the flat tuft that
 * carries the nail, a crescent whose two horns point back.
 */
import { add, scale } from '../../units';
import type { Mass } from './mass';
import { DISTAL_TERMS, distalFrame } from './phalanx-distal-frame';
import { flanks } from './phalanx-flanks';
import { mm, type Recipe, recipe } from './recipe';

export const phalanxDistal = (behind: string): Recipe =>
  recipe(
    {
      ...DISTAL_TERMS,
      flexorTubercle: mm('how far the tubercle of the long flexor stands below the base'),
      tuftWidth: mm('width of the tuft'),
    },
    (v, site) => {
      const b = site.facet(behind);
      const { along, side, top, start, at } = distalFrame(b, v.length, v.rise, v.roll);
      const tip = v.tuftHeight / 2;
      const back = 1 - v.tuftLength / v.length;
      const horn = (name: string, to: 1 | -1): Mass => ({
        is: 'rod',
        name,
        from: at(1 - tip / v.length, to * v.tuftWidth * 0.14),
        to: at(back, to * (v.tuftWidth / 2 - tip * 0.8)),
        radius: [tip, tip * 0.8],
        join: 'fine',
      });
      return {
        masses: [
          {
            is: 'block',
            name: 'base',
            at: add(start, scale(b.out, 0.5 - v.baseLength / 2)),
            size: [v.baseWidth, v.baseHeight, v.baseLength + 1],
            round: v.baseLength * 0.4,
            along: scale(b.out, -1),
            up: top,
          },
          {
            is: 'shaft',
            name: 'shaft',
            up: top,
            join: 'fine',
            sections: [
              { name: 'base', at: at(0.06), width: v.baseWidth * 0.8, height: v.baseHeight * 0.84, corner: 2.5 },
              { name: 'baseEnd', at: at(0.26), width: v.baseWidth * 0.76, height: v.baseHeight * 0.72, corner: 2.4 },
              { name: 'waist', at: at(0.48), width: v.waistWidth, height: v.waistHeight },
              { name: 'tuft', at: at(0.82), width: v.tuftWidth * 0.72, height: v.tuftHeight * 0.9 },
            ],
          },
          {
            is: 'ellipsoid',
            name: 'flexorTubercle',
            at: at(0.12, 0, -v.baseHeight * 0.25),
            size: [v.baseWidth * 0.56, v.baseHeight * 0.5 + v.flexorTubercle * 2, v.length * 0.36],
            along,
            up: top,
            join: 'fine',
          },
          horn('innerHorn', 1),
          horn('outerHorn', -1),
        ],
        hollows: flanks({
          at: at(0.46),
          side,
          top,
          width: v.waistWidth,
          tall: v.baseHeight,
          round: v.length * 0.11,
        }),
      };
    },
  );
