/** What the bones of the leg hold at the ankle besides what presses on it: sideways and forwards, and against turning in or out. */
import { add, scale, type Vec3 } from '../../units';
import type { FootSolution } from './solve';

export interface LegHold {
  /** N, level: whatever ground, muscles and calf leave over, muscles that cross the ankle being apart from its bones. */
  readonly alongN: number;
  /** N mm on the foot about the way it points: positive lifts its inner edge, and so keeps it from turning out. */
  readonly frontalNmm: number;
}

export const legHoldOf = ({ ready, applied, padN, displacement }: FootSolution): LegHold => {
  const { hold, nodes, ground } = ready;
  const pressed = padN.reduce((sum, n) => sum + n, 0);
  const pushed = applied.reduce<Vec3>((sum, { force }) => add(sum, force), scale(ground, pressed));
  const turnedRad = displacement[6 * nodes.rigid.talus + 5] as number;
  return { alongN: Math.hypot(pushed[0], pushed[2]), frontalNmm: -hold.turn[2] * turnedRad };
};
