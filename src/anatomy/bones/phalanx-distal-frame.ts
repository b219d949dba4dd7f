/**
 * What distal phalanges have in common: measures and directions. Its bone's centre is the origin of its masses: its length runs through it, `rise` degrees above the
 * way from the middle of the facet, and its dorsum is turned `roll` degrees outwards about its length.
 */
import { add, cross, dot, normalize, radians, scale, type Vec3 } from '../../units';
import { deg, type Facet, mm } from './recipe';

/** Measures that every distal phalanx has. */
export const DISTAL_TERMS = {
  length: mm('from the facet to the tip'),
  rise: deg('how far its length rises above the way from the middle of the facet to the middle of the bone'),
  roll: deg('turn of its dorsum outwards'),
  baseWidth: mm('width of the base'),
  baseHeight: mm('height of the base'),
  baseLength: mm('thickness of the base'),
  waistWidth: mm('width at the waist'),
  waistHeight: mm('height at the waist'),
  tuftHeight: mm('thickness of the tuft'),
  tuftLength: mm('length of the tuft'),
};

export interface DistalFrame {
  readonly along: Vec3;
  readonly side: Vec3;
  readonly top: Vec3;
  /** Where the length leaves the plane of the facet. */
  readonly start: Vec3;
  /** A point `share` of the length ahead of the facet, mm inwards and upwards. */
  readonly at: (share: number, inwards?: number, upwards?: number) => Vec3;
}

export const distalFrame = (b: Facet, length: number, riseDeg: number, rollDeg: number): DistalFrame => {
  const through = normalize(scale(b.at, -1));
  const across = normalize(cross([0, 1, 0], through));
  const [rise, roll] = [radians(riseDeg), radians(rollDeg)];
  const along = add(scale(through, Math.cos(rise)), scale(cross(through, across), Math.sin(rise)));
  const side = add(scale(across, Math.cos(roll)), scale(cross(along, across), Math.sin(roll)));
  const top = cross(along, side);
  const facetAt = dot(b.at, along);
  return {
    along,
    side,
    top,
    start: scale(along, dot(b.at, b.out) / dot(along, b.out)),
    at: (share, inwards = 0, upwards = 0) =>
      add(scale(along, facetAt + share * length), add(scale(side, inwards), scale(top, upwards))),
  };
};
