/**
 * How far each joint turns from the as-scanned to the standing foot: up and down beside how far people's joints were seen to move that
 * way, sideways and about its length by itself: the second bone against the first, so that a turn that carries several joints counts at each of them.
 */
import { degrees } from '../../units';
import type { HowRead } from '../how-read';
import type { Shape } from '../shape';
import { after, inverse, type Motion, moveDirection, STILL } from '../stance/motion';
import { motionsOf } from '../stance/stance';
import type { FootForm } from '../types';

export interface JointTurn {
  /** The joint of the table. */
  readonly joint: string;
  /** About the axis across the foot; front end down is positive. */
  readonly degrees: number;
  /** Front end inwards, and inner side up: no study we found tells how far joints turn these ways on loading. */
  readonly inwardsDeg: number;
  readonly innerUpDeg: number;
  /** The widest motion found from standing towards as scanned, or from end to end where no study gives ways; null: none found. */
  readonly published: { readonly deg: number; readonly source: string; readonly how: HowRead } | null;
}

const UP_AND_DOWN = /flexion|extension|transverse axis/;
/** The front end goes up; the other way of such a motion, down. */
const UP = /^(extension|dorsiflexion)$/;
/** Below this a joint without a published figure is not worth a line, deg. */
const STAYS = 0.5;

const inwards = (m: Motion): number => {
  const [x, , z] = moveDirection(m, [0, 0, 1]);
  return degrees(Math.atan2(x, z));
};
const innerUp = (m: Motion): number => {
  const [x, y] = moveDirection(m, [1, 0, 0]);
  return degrees(Math.atan2(y, x));
};

const frontDown = (m: Motion): number => {
  const [, y, z] = moveDirection(m, [0, 0, 1]);
  return degrees(Math.atan2(-y, z));
};

/** Every facet of the table that turns or has a published figure. */
export const jointTurns = (shape: Shape, form: FootForm): readonly JointTurn[] => {
  const motions = motionsOf(shape, form, 'standing');
  return shape.joints
    .filter(({ articular }) => articular)
    .map(({ id, first, second }): JointTurn => {
      const relative = after(motions.get(second) ?? STILL, inverse(motions.get(first) ?? STILL));
      const turned = frontDown(relative);
      // Motions are told from standing; a joint that goes down on standing is scanned bent up, and the other way round.
      const scannedUp = turned > 0;
      const found = shape.motions.joints
        .filter(({ joints, motion }) => joints.includes(id) && UP_AND_DOWN.test(motion))
        .map(({ total, ways, source, how }) => ({
          deg: total?.deg ?? ways?.find(({ way }) => UP.test(way) === scannedUp)?.deg ?? 0,
          source,
          how,
        }))
        .sort((a, b) => b.deg - a.deg)[0];
      return {
        joint: id,
        degrees: turned,
        inwardsDeg: inwards(relative),
        innerUpDeg: innerUp(relative),
        published: found ?? null,
      };
    })
    .filter(
      ({ degrees: turned, inwardsDeg, innerUpDeg, published }) =>
        published !== null || Math.max(...[turned, inwardsDeg, innerUpDeg].map(Math.abs)) > STAYS,
    );
};
