/** What moves the load on a bone: each contributor changed alone, in every draw, against the same draw without it. */
import type { FootForm } from '../../anatomy/types';
import { type BandedCase, caseOf, type LoadDraw } from './bands';
import type { KeptFrames, LoadedFoot, Person } from './case-draw';
import type { Ray } from './landmarks';
import { type LoadCaseFigures, TENDONS } from './load-case';
import { type FrameRun, type PulledAt, pullChangeOf, pullOf, shiftOf } from './pull';
import { enoughSay } from './spread';
import { CONTRIBUTORS, type Contributor, type ContributorId } from './types';

/** One step of each contributor. Chosen as a step a person would name; the wording says it. */
export const STEPS = {
  massKg: 10,
  carriedKg: 10,
  /** Of body weight. */
  sideways: 0.3,
  /** Free moment, mm of body weight. */
  twistMm: 10,
  tiltDeg: 5,
  /** What is left of the muscles' pull, the calf apart. */
  tired: 0.5,
  soleBending: 20,
  adductusDeg: 10,
  arch: 1,
  hindfootDeg: 5,
} as const;

const changed = (id: ContributorId, from: FrameRun): FrameRun => {
  const { loadCase, person, form } = from;
  const figures = (change: Partial<LoadCaseFigures>): FrameRun => ({
    ...from,
    loadCase: { ...loadCase, figures: { ...loadCase.figures, ...change } },
  });
  const g = loadCase.figures;
  switch (id) {
    case 'bodyMass':
      return { ...from, person: { ...person, massKg: person.massKg + STEPS.massKg } };
    case 'load':
      return { ...from, person: { ...person, carriedKg: person.carriedKg + STEPS.carriedKg } };
    case 'sideways':
      return figures({ sideways: g.sideways + STEPS.sideways });
    case 'twistIn':
      return figures({ twist: g.twist + STEPS.twistMm });
    case 'twistOut':
      return figures({ twist: g.twist - STEPS.twistMm });
    case 'tilt':
      return figures({ tilt: g.tilt + STEPS.tiltDeg });
    case 'tiredMuscles':
      return figures(Object.fromEntries(TENDONS.map((tendon) => [tendon, g[tendon] * STEPS.tired])));
    case 'stiffSole':
      return { ...from, person: { ...person, soleBending: person.soleBending + STEPS.soleBending } };
    case 'adductus':
      return { ...from, form: { ...form, adductusDeg: form.adductusDeg + STEPS.adductusDeg } };
    case 'highArch':
      return { ...from, form: { ...form, arch: Math.min(1, form.arch + STEPS.arch) } };
    case 'lowArch':
      return { ...from, form: { ...form, arch: Math.max(-1, form.arch - STEPS.arch) } };
    case 'varus':
      return { ...from, form: { ...form, hindfootDeg: form.hindfootDeg + STEPS.hindfootDeg } };
  }
};

/** A foot that already lies at the end of a shape takes no further step there; a sole bends at the first toe's joint alone. */
const speaks = (id: ContributorId, form: FootForm, ray: Ray): boolean =>
  !(id === 'highArch' && form.arch >= 1) &&
  !(id === 'lowArch' && form.arch <= -1) &&
  !(id === 'stiffSole' && ray !== 1);

/** Every contributor's ratio over the draws. One whose told values find no answer is left out. */
export const contributorsOf = (
  foot: LoadedFoot,
  draws: readonly LoadDraw[],
  loadCase: BandedCase,
  person: Person,
  ray: Ray,
): readonly Contributor[] => {
  const bases = draws.map((draw): FrameRun => ({ loadCase: caseOf(draw, loadCase, 'case'), person, form: foot.form }));
  const kept = draws.map((): KeptFrames => new Map());
  const pull = (run: FrameRun, i: number): PulledAt | null =>
    pullOf(foot, run, draws[i] as LoadDraw, ray, kept[i] as KeptFrames);
  const pulls = bases.map(pull);
  return CONTRIBUTORS.filter((id) => speaks(id, foot.form, ray)).flatMap((id): Contributor[] => {
    const after = bases.map((base, i) => pull(changed(id, base), i));
    const [change, shift] = [pullChangeOf(pulls, after), shiftOf(pulls, after)];
    return change === null || shift === null ? [] : [{ id, ...change, shift }];
  });
};

/** A task with its draws, the told values first. */
export interface DrawnTask {
  readonly loadCase: BandedCase;
  readonly draws: readonly LoadDraw[];
}

/** Whether a contributor raises the pull in one draw of a task; null where the frame finds no answer. */
const raisesIn = (
  foot: LoadedFoot,
  { loadCase }: DrawnTask,
  draw: LoadDraw,
  person: Person,
  ray: Ray,
  id: ContributorId,
): boolean | null => {
  const base: FrameRun = { loadCase: caseOf(draw, loadCase, 'case'), person, form: foot.form };
  const kept: KeptFrames = new Map();
  const [without, changedPull] = [base, changed(id, base)].map((run) => pullOf(foot, run, draw, ray, kept));
  return without == null || changedPull == null ? null : changedPull.mpa > without.mpa;
};

/** What one run with the told values says: whether a contributor raises the pull. Null: it finds no answer. */
export const toldSign = (
  foot: LoadedFoot,
  task: DrawnTask,
  person: Person,
  ray: Ray,
  id: ContributorId,
): boolean | null => {
  const [told] = task.draws;
  return told === undefined ? null : raisesIn(foot, task, told, person, ray, id);
};

/** Whether enough draws say `raises` of a contributor. Stops once they cannot any more, or do. A draw without an answer says nothing. */
export const drawsSay = (
  foot: LoadedFoot,
  task: DrawnTask,
  person: Person,
  ray: Ray,
  id: ContributorId,
  raises: boolean,
): boolean => {
  const [, ...draws] = task.draws;
  return enoughSay(draws, (draw) => raisesIn(foot, task, draw, person, ray, id) === raises);
};
