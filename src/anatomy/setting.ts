/**
 * Where a bone of a foot of some shape finds its joints: in its own frame, as it is fitted when the foot stands. Saddles and
 * planes are shared by the two bones midway; a ball or hinge is each bone's own, for it turns on itself.
 */
import type { SkeletonId } from '../ids';
import { subtract } from '../units';
import { jointsAt } from './bone-field';
import type { JointShape, Shape } from './shape';
import { inverse, STILL } from './stance/motion';
import { carriedJoint, joined, lengthened, motionsOf } from './stance/stance';
import type { FootParameters } from './types';

/** Below these a joint counts as where the table has it: mm and deviation of a unit vector. */
const SAME = 1e-6;

const same = (a: JointShape, b: JointShape): boolean =>
  [a.centre, a.normal, a.major].every((p, i) =>
    subtract(p, [b.centre, b.normal, b.major][i] ?? p).every((d) => Math.abs(d) < SAME),
  );

/** True when two settings of one bone fit it alike. */
export const sameJoints = (a: readonly JointShape[], b: readonly JointShape[]): boolean =>
  a.every((j, i) => {
    const other = b[i];
    return other !== undefined && (other === j || same(j, other));
  });

/** The joints of a bone in its own frame (reference foot, as scanned), those that did not move being the table's own objects. */
export const settingOf = (shape: Shape, form: FootParameters, bone: SkeletonId): readonly JointShape[] => {
  const motions = motionsOf(shape, form, 'standing');
  const longer = lengthened(shape, form);
  const home = inverse(motions.get(bone) ?? STILL);
  const placed = (j: JointShape): JointShape => {
    const [first, second] = [motions.get(j.first) ?? STILL, motions.get(j.second) ?? STILL];
    const grown = longer.get(j.first) ? undefined : longer.get(j.second);
    if (j.kind === 'ball' || j.kind === 'hinge') {
      if (j.second === bone) return j;
      return grown ? { ...j, centre: [j.centre[0] + grown[0], j.centre[1] + grown[1], j.centre[2] + grown[2]] } : j;
    }
    const now = carriedJoint(joined(j, first, second, grown), home);
    return same(now, j) ? j : now;
  };
  return jointsAt(shape, bone).map(placed);
};
