/**
 * How much the arch lengthens in the press of `arch-test.ts`, heel pad cut away, with its fascia and with it cut: the two numbers on
 * which the figures were calibrated, as quickly as some hundred draws ask for them. One factor serves both, for ties are no part of
 * it, and no displacement is made: by reciprocity the lengthening is what a unit pull along it would do where the forces act. N, mm.
 */
import type { Vec3 } from '../../units';
import { BARE_HEEL, inPress, PRESS_N } from './arch-test';
import { addForce } from './assemble';
import type { LoadedFoot } from './case-draw';
import { type Settled, solveComplementarity } from './complementarity';
import { complianceWith, halvesOf, reachOf } from './compliance';
import type { OnBone } from './landmarks';
import type { FrameFigures } from './parameter-names';
import type { ReadyFrame } from './solve';
import type { WeakHold } from './weak-holds';

export interface Lengthenings {
  readonly wholeMm: number;
  readonly cutMm: number;
}

const addAt = ({ assembled, nodes, placing }: ReadyFrame, pushes: readonly (readonly [OnBone, Vec3])[]) => {
  const vector = new Float64Array(assembled.n);
  for (const [place, force] of pushes) addForce(vector, nodes, nodes.nodeOf(place), placing.point(place), force);
  return vector;
};

/** What the weak springs would carry is put on against them, as in solve.ts; each pass leaves a thousandth of what is missing. */
const PASSES = 20;
const SETTLED = 1e-10;

/** Null where the press has no answer. */
export const pressLengthenings = (foot: LoadedFoot, figures: FrameFigures): Lengthenings | null => {
  const pressed = inPress(foot, { ...figures, heelPad: BARE_HEEL });
  if ('kind' in pressed) return null;
  const { ready } = pressed;
  const { ties, pads, factor, halves, matrix, weak } = ready;
  const { rays, pads: heel, ankle } = foot.marks;
  const gauge = addAt(ready, [
    [rays[1].head, [0, 0, 0.5]],
    [rays[2].head, [0, 0, 0.5]],
    [heel.heelMedial, [0, 0, -1]],
  ]);
  const load = addAt(ready, [[ankle, [0, -PRESS_N, 0]]]);
  const reach = reachOf(factor, halves, load);
  const gauged = halvesOf(factor, [gauge]);
  const product = (a: Float64Array, b: Float64Array): number => a.reduce((sum, x, k) => sum + x * (b[k] as number), 0);
  /** What the load, and what one unit against each weak spring, moves along each of these springs; and along the gauge. */
  const own = weak.map(({ moved }) => product(moved, load));
  const each = weak.map(({ moved }) => weak.map(({ unit }) => product(moved, unit)));
  const gaugeOf = weak.map(({ moved }) => product(moved, gauge));
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
    let put = weak.map(() => 0);
    let settled: Settled | undefined;
    for (let passes = 0; passes < PASSES; passes++) {
      const solved = solveComplementarity(
        {
          m: at.length,
          matrix: part,
          reach: Float64Array.from(at, (i) =>
            weak.reduce(
              (sum, hold, w) => sum + (put[w] as number) * (hold.reach[i] as number),
              (reach[i] as number) - (gaps[i] as number),
            ),
          ),
        },
        settled,
      );
      if (!solved.ok) return null;
      settled = solved.settled;
      const carried = weak.map((hold, w) => {
        const byPut = put.reduce((sum, p, v) => sum + p * (each[v]?.[w] as number), own[w] as number);
        return (
          hold.stiffness *
          at.reduce((way, i, r) => way - (solved.force[r] as number) * (hold.reach[i] as number), byPut)
        );
      });
      const change = carried.reduce(
        (most, x, w) => Math.max(most, Math.abs(x - (put[w] as number)) / (weak[w] as WeakHold).leverMm),
        0,
      );
      put = carried;
      if (change < SETTLED * PRESS_N)
        return at.reduce(
          (mm, i, r) => mm - (solved.force[r] as number) * (given[i] as number),
          put.reduce((sum, p, w) => sum + p * (gaugeOf[w] as number), free),
        );
    }
    return null;
  };
  const all = gaps.map((_, i) => i);
  const wholeMm = lengthening(all);
  const cutMm = lengthening(all.filter((i) => !ties[i]?.id.startsWith('fascia')));
  return wholeMm === null || cutMm === null ? null : { wholeMm, cutMm };
};
