/**
 * The axis of the talus, one line in space for every view: from the centre of the body to the centre of the head, as it is drawn
 * on films. Body: centroid of the bone from 10 to 55 % of its length (behind the neck, without the posterior process). Head: mean
 * of the surface of the front third, every patch counted by the square of the cosine between its normal and the way the head
 * looks, which is itself that mean of normals. Nothing but the talus decides it, so it turns exactly with the bone. Other films
 * draw the line half-way between the borders of neck and head; on the four feet of the measured table that line falls 1 to 3.5 deg
 * less than one to the centre of the talonavicular facet, and on a mesh it depends on where the neck is taken to begin.
 */
import { add, dot, normalize, scale, subtract, type Vec3 } from '../../units';
import { boneAxis, meshOf } from '../bone-axis';
import type { Foot } from '../types';
import type { Segment } from './angle';
import { patchesOf } from './patches';
import { blockMiddle } from './section-middle';

const BODY = [0.1, 0.55] as const;
/** The head begins here and counts fully a little further on, so that no triangle falls in or out at once. */
const HEAD = [0.65, 0.8] as const;
/** Rounds of finding the way the head looks; it stands still after a few. */
const ROUNDS = 12;

/** Centre of the front of the talar head, and the way it looks. */
export const talarHead = (foot: Foot): { readonly at: Vec3; readonly looks: Vec3 } => {
  const { origin, axis, lengthMm } = boneAxis(foot, 'talus');
  const front = patchesOf(meshOf(foot, 'talus')).map((p) => {
    const share = dot(subtract(p.at, origin), axis) / lengthMm;
    return { ...p, area: p.area * Math.min(1, Math.max(0, (share - HEAD[0]) / (HEAD[1] - HEAD[0]))) };
  });
  let head = { at: origin, looks: axis };
  for (let round = 0; round < ROUNDS; round++) {
    let at: Vec3 = [0, 0, 0];
    let looks: Vec3 = [0, 0, 0];
    let whole = 0;
    for (const p of front) {
      const weight = p.area * Math.max(0, dot(p.normal, head.looks)) ** 2;
      at = add(at, scale(p.at, weight));
      looks = add(looks, scale(p.normal, weight));
      whole += weight;
    }
    head = { at: scale(at, 1 / whole), looks: normalize(looks) };
  }
  return head;
};

/** From the centre of the body to the centre of the head. */
export const talarAxis = (foot: Foot): Segment => {
  const axis = boneAxis(foot, 'talus');
  const body = blockMiddle(meshOf(foot, 'talus'), axis, BODY[0] * axis.lengthMm, BODY[1] * axis.lengthMm);
  return [body, talarHead(foot).at];
};
