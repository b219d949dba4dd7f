/**
 * Where a joint surface looks and where its middle is, for surfaces that curve so much that they have no plane: the mean of the
 * surface, every patch counted by the square of the cosine between its normal and the way the whole looks, which is that same mean
 * of normals. mm, foot frame.
 */
import { add, dot, normalize, scale, type Vec3 } from '../../units';
import type { Patch } from './patches';

/** Rounds of finding the way a surface looks; it stands still after a few. */
const ROUNDS = 12;

export interface Look {
  readonly at: Vec3;
  readonly looks: Vec3;
}

export const lookOf = (patches: readonly Patch[], start: Vec3): Look => {
  let look: Look = { at: [0, 0, 0], looks: normalize(start) };
  for (let round = 0; round < ROUNDS; round++) {
    let at: Vec3 = [0, 0, 0];
    let looks: Vec3 = [0, 0, 0];
    let whole = 0;
    for (const p of patches) {
      const weight = p.area * Math.max(0, dot(p.normal, look.looks)) ** 2;
      at = add(at, scale(p.at, weight));
      looks = add(looks, scale(p.normal, weight));
      whole += weight;
    }
    look = { at: scale(at, 1 / whole), looks: normalize(looks) };
  }
  return look;
};
