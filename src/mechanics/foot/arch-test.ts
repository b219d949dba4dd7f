/**
 * The press test of an arch: a foot without muscles under a load on its ankle, the ground's push centred right below the axis, so
 * that the calf has nothing to do. Cadaver feet and plain models of the arch were loaded this way. N, mm.
 */
import type { FootForm } from '../../anatomy/types';
import { STANDARD_GRAVITY, type Vec3 } from '../../units';
import type { LoadedFoot } from './case-draw';
import type { OnBone } from './landmarks';
import { CASE_FIGURES, type LoadCase, type LoadCaseFigures } from './load-case';
import type { FrameFigures } from './parameter-names';
import type { Placing } from './placing';
import { movementAt } from './recover';
import { type FootProblem, type FootSolution, type ReadyFrame, readyFrame, solveFoot } from './solve';

export const NO_LOADS = Object.fromEntries(CASE_FIGURES.map((name) => [name, 0])) as unknown as LoadCaseFigures;

/** A heel whose pad is cut away, as in the tests of Ker 1987: as stiff as the machine. N/mm. Drawn; tenfold changes 0.01 %. */
export const BARE_HEEL = 1e5;

/** The load of Arangio's models, N, at which the figures of the frame were fixed. */
export const PRESS_N = 683;

/** A tie that is cut, N/mm or as a share of all slips: it is not there. */
export const CUT_TIE = 0;

/** The standing foot with nothing on it but its ankle: `total` is the whole load. */
export const pressCase = (foot: LoadedFoot, placing: Placing): LoadCase => {
  const span = placing.point(foot.marks.rays[2].head)[2];
  return {
    id: 'press',
    pose: 'standing',
    contact: 'whole sole',
    figures: { ...NO_LOADS, total: 1, centre: placing.point(foot.marks.ankle)[2] / span },
  };
};

export interface ArchAnswer {
  readonly solution: FootSolution;
  /** Heel to the middle of the first two heads, longer by. */
  readonly lengtheningMm: number;
  /** The ankle's axis, and the navicular's middle, below the line from heel to heads: the arch alone, without the pads. */
  readonly ankleDropMm: number;
  readonly navicularDropMm: number;
}

const pushed = (foot: LoadedFoot, solution: FootSolution) => {
  const { nodes, placing } = solution.ready;
  const seen = (place: OnBone): readonly [at: Vec3, move: Vec3] => {
    const at = placing.point(place);
    return [at, movementAt(solution, nodes.nodeOf(place), at)];
  };
  const { pads, rays, ankle, middles } = foot.marks;
  const [heel, heads] = [seen(pads.heelMedial), [seen(rays[1].head), seen(rays[2].head)]];
  const mean = (pick: (s: readonly [Vec3, Vec3]) => number): number => heads.reduce((sum, s) => sum + pick(s), 0) / 2;
  const headsZ = mean(([at]) => at[2]);
  const below = (place: OnBone): number => {
    const [at, move] = seen(place);
    const t = (at[2] - heel[0][2]) / (headsZ - heel[0][2]);
    return (1 - t) * heel[1][1] + t * mean(([, m]) => m[1]) - move[1];
  };
  return {
    lengtheningMm: mean(([, m]) => m[2]) - heel[1][2],
    ankleDropMm: below(ankle),
    navicularDropMm: below({ bone: 'navicular', at: middles.navicular }),
  };
};

/** A foot in the press, without its load yet. */
export interface PressedFoot {
  readonly foot: LoadedFoot;
  readonly loadCase: LoadCase;
  readonly ready: ReadyFrame;
}

/** `form`: how the bones stand, that of the foot when left out. */
export const inPress = (foot: LoadedFoot, f: FrameFigures, form: FootForm = foot.form): PressedFoot | FootProblem => {
  const placing = foot.placing('standing', form);
  const loadCase = pressCase(foot, placing);
  const ready = readyFrame({ ...foot, placing }, f, loadCase);
  return 'kind' in ready ? ready : { foot, loadCase, ready };
};

export const pressArch = ({ foot, loadCase, ready }: PressedFoot, loadN: number): ArchAnswer | FootProblem => {
  const solution = solveFoot(ready, loadCase, loadN / STANDARD_GRAVITY);
  return 'kind' in solution ? solution : { solution, ...pushed(foot, solution) };
};
