/** A distal phalanx: a broad base, a waist, and the spade (ungual tuft) that carries the nail, flat at the sole. */
import { add, cross, normalize, scale, subtract, type Vec3 } from '../../units';
import { mm, type Recipe, recipe } from './recipe';

export const phalanxDistal = (behind: string): Recipe =>
  recipe(
    {
      length: mm('from the base to the tip'),
      baseWidth: mm('width of the base'),
      baseHeight: mm('height of the base'),
      waistWidth: mm('width at the waist'),
      waistHeight: mm('height at the waist'),
      tuftWidth: mm('width of the tuft'),
      tuftHeight: mm('height of the tuft'),
      tuftLength: mm('length of the tuft'),
      soleFlat: mm('how much is taken flat from the sole'),
    },
    (v, site) => {
      const b = site.facet(behind);
      // The bone's centre is the origin of its masses: from the joint through it runs the bone.
      const along = normalize(subtract([0, 0, 0], b.at));
      const side = normalize(cross([0, 1, 0], along));
      const top = cross(along, side);
      const at = (mmAlong: number, upwards = 0): Vec3 => add(add(b.at, scale(along, mmAlong)), scale(top, upwards));
      const sole = -v.baseHeight / 2;
      return {
        masses: [
          {
            is: 'shaft',
            name: 'shaft',
            sections: [
              { name: 'base', at: at(-0.4), width: v.baseWidth, height: v.baseHeight, corner: 2.5 },
              {
                name: 'baseEnd',
                at: at(v.length * 0.22),
                width: v.baseWidth * 0.86,
                height: v.baseHeight * 0.82,
                corner: 2.4,
              },
              {
                name: 'waist',
                at: at(v.length * 0.5, -v.baseHeight * 0.06),
                width: v.waistWidth,
                height: v.waistHeight,
              },
              {
                name: 'tuft',
                at: at(v.length * 0.84, -v.baseHeight * 0.12),
                width: v.tuftWidth * 0.9,
                height: v.tuftHeight,
              },
            ],
          },
          {
            is: 'ellipsoid',
            name: 'tuft',
            at: at(v.length - v.tuftLength / 2, -v.baseHeight * 0.12),
            size: [v.tuftWidth, v.tuftHeight, v.tuftLength],
            along,
            join: 'fine',
          },
        ],
        cuts: [{ name: 'sole', at: at(v.length * 0.5, sole + v.soleFlat), normal: scale(top, -1), join: 'fine' }],
      };
    },
  );
