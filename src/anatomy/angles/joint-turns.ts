/** How far each joint turns up and down from the as-scanned to the standing foot, beside how far people's joints were seen to move. */
import type { Shape } from '../shape';
import { turnsOf } from '../stance/stance';
import type { FootForm } from '../types';

export interface JointTurn {
  /** The joint of the table that the turns are made about. */
  readonly joint: string;
  /** About the axis across the foot; front end down is positive. */
  readonly degrees: number;
  /** The widest motion about that axis found for this joint, from one end to the other; null where none was found. */
  readonly publishedDeg: number | null;
  readonly source: string;
}

const UP_AND_DOWN = /flexion|extension|transverse axis/;

/** Every joint that a turn about the axis across the foot is told for, in the order of the turns. */
export const jointTurns = (shape: Shape, form: FootForm): readonly JointTurn[] => {
  const made = new Map(turnsOf(shape, form, 'standing').map(({ id, degrees }) => [id, degrees]));
  const sums = new Map<string, number>();
  for (const turn of shape.pose.standing) {
    if (turn.about === undefined || turn.axis[0] !== 1) continue;
    sums.set(turn.about, (sums.get(turn.about) ?? 0) + (made.get(turn.id) ?? 0));
  }
  return [...sums].map(([joint, degrees]) => {
    const found = shape.motions.joints
      .filter(({ joints, motion }) => joints.includes(joint) && UP_AND_DOWN.test(motion))
      .map(({ total, ways, source, how }) => ({
        deg: total?.deg ?? (ways ?? []).reduce((sum, way) => sum + way.deg, 0),
        source: `${source} (${how})`,
      }))
      .sort((a, b) => b.deg - a.deg)[0];
    return { joint, degrees, publishedDeg: found?.deg ?? null, source: found?.source ?? '' };
  });
};
