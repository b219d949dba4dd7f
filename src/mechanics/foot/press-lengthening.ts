/**
 * How much the arch lengthens in the press of `arch-test.ts`, heel pad cut away, with its fascia and with it cut: the two numbers on
 * which the figures were calibrated, as quickly as some hundred draws ask for them. One factor serves both, for ties are no part of
 * it, and no displacement is made: by reciprocity the lengthening is what a unit pull along it would do where the forces act. N, mm.
 */
import type { Vec3 } from '../../units';
import { BARE_HEEL, inPress, PRESS_N } from './arch-test';
import { addForce } from './assemble';
import type { LoadedFoot } from './case-draw';
import { solveComplementarity } from './complementarity';
import { complianceWith, halvesOf, reachOf } from './compliance';
import type { OnBone } from './landmarks';
import type { FrameFigures } from './parameter-names';
import type { ReadyFrame } from './solve';

export interface Lengthenings {
  readonly wholeMm: number;
  readonly cutMm: number;
}

const addAt = ({ assembled, nodes, placing }: ReadyFrame, pushes: readonly (readonly [OnBone, Vec3])[]) => {
  const vector = new Float64Array(assembled.n);
  for (const [place, force] of pushes) addForce(vector, nodes, nodes.nodeOf(place), placing.point(place), force);
  return vector;
};

/** Null where the press has no answer. */
export const pressLengthenings = (foot: LoadedFoot, figures: FrameFigures): Lengthenings | null => {
  const pressed = inPress(foot, { ...figures, heelPad: BARE_HEEL });
  if ('kind' in pressed) return null;
  const { ready } = pressed;
  const { ties, pads, factor, halves, matrix } = ready;
  const { rays, pads: heel, ankle } = foot.marks;
  const gauge = addAt(ready, [
    [rays[1].head, [0, 0, 0.5]],
    [rays[2].head, [0, 0, 0.5]],
    [heel.heelMedial, [0, 0, -1]],
  ]);
  const load = addAt(ready, [[ankle, [0, -PRESS_N, 0]]]);
  const reach = reachOf(factor, halves, load);
  const gauged = halvesOf(factor, [gauge]);
  const free = reachOf(factor, gauged, load)[0] as number;
  const given = complianceWith(halves, gauged, ready.assembled.n);
  const gaps = [...ties.map((tie) => tie.slackMm), ...pads.map((pad) => pad.gapMm)];
  const m = gaps.length;

  /** With these of the ties and pads alone. */
  const lengthening = (at: readonly number[]): number | null => {
    const part = new Float64Array(at.length * at.length);
    at.forEach((i, r) => {
      at.forEach((j, c) => {
        part[r * at.length + c] = matrix[i * m + j] as number;
      });
    });
    const solved = solveComplementarity({
      m: at.length,
      matrix: part,
      reach: Float64Array.from(at, (i) => (reach[i] as number) - (gaps[i] as number)),
    });
    if (!solved.ok) return null;
    return at.reduce((mm, i, r) => mm - (solved.force[r] as number) * (given[i] as number), free);
  };
  const all = gaps.map((_, i) => i);
  const wholeMm = lengthening(all);
  const cutMm = lengthening(all.filter((i) => !ties[i]?.id.startsWith('fascia')));
  return wholeMm === null || cutMm === null ? null : { wholeMm, cutMm };
};
