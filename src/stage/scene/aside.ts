/** What a person asked to see on the foot besides the injury: something that can be taken for a fracture. */
import { type LookAlike, lookAlike } from '../../anatomy/look-alikes';
import type { Foot } from '../../anatomy/types';
import type { Vec3 } from '../../units';
import type { Stroke } from '../draw/strokes';

export const besideOn = (foot: Foot, id: string | null): LookAlike | null => {
  const rule = foot.reference.lookAlikes.find((each) => each.id === id);
  return rule === undefined ? null : lookAlike(foot, rule.id);
};

const closed = (loop: readonly Vec3[]): readonly Vec3[] => (loop[0] === undefined ? loop : [...loop, loop[0]]);

/** A cleft lies on its bone as two quiet lines: never the sawtooth of a break. */
export const besideStrokes = (beside: LookAlike | null): Stroke[] =>
  beside?.is === 'line'
    ? [
        { lines: beside.loops.map(closed), colour: 'ivory', widthPx: 5, dashMm: 0, liftMm: 0.9 },
        { lines: beside.loops.map(closed), colour: 'ink', widthPx: 1.8, dashMm: 0, liftMm: 1 },
      ]
    : [];
