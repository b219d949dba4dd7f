/**
 * What a check of the frame is computed from: one foot, one set of figures, the load cases, and runs of them with something changed,
 * each made once. Forces of a person of 75 kg, told in body weights wherever the source does.
 */
import type { FootForm } from '../../anatomy/types';
import { STANDARD_GRAVITY } from '../../units';
import { type ArchAnswer, inPress, type PressedFoot, pressArch } from './arch-test';
import { type LoadedFoot, type Person, runCase } from './case-draw';
import type { Ray } from './landmarks';
import type { LoadCase, LoadCaseFigures } from './load-case';
import type { FrameFigures } from './parameter-names';
import { type RayStation, rayStations } from './recover';
import type { FootProblem, FootSolution } from './solve';

/** Activities of content/activities.yaml that checks ask for. */
export const CHECK_CASES = [
  'standing',
  'midstance',
  'walking',
  'running',
  'side-step-cut',
  'landing-outer-edge',
] as const;
export type CheckCase = (typeof CHECK_CASES)[number];

/** What of a run is not as told: every field only what changes. */
export interface Change {
  readonly load?: Partial<LoadCaseFigures>;
  readonly frame?: Partial<FrameFigures>;
  readonly form?: Partial<FootForm>;
  readonly person?: Partial<Person>;
}

export interface Trial {
  readonly foot: LoadedFoot;
  readonly frame: FrameFigures;
  readonly cases: Readonly<Record<CheckCase, LoadCase>>;
  /** Throws NoAnswer where the frame finds none. */
  readonly run: (id: CheckCase, change?: Change) => FootSolution;
  readonly press: (loadN: number, frame?: Partial<FrameFigures>, form?: Partial<FootForm>) => ArchAnswer;
  readonly stations: (solution: FootSolution, ray: Ray) => readonly RayStation[];
}

/** The frame found no answer: the check is neither hit nor made easier, but unsolved. */
export class NoAnswer extends Error {
  override readonly name = 'NoAnswer';
}

export const CHECK_MASS_KG = 75;
export const CHECK_WEIGHT_N = CHECK_MASS_KG * STANDARD_GRAVITY;
const PERSON: Person = { massKg: CHECK_MASS_KG, carriedKg: 0, soleBending: 0 };

const once = <T extends object>(kept: Map<string, T>, key: string, make: () => T | FootProblem): T => {
  const known = kept.get(key);
  if (known) return known;
  const made = make();
  if ('kind' in made) throw new NoAnswer(`${key}: ${made.kind}`);
  kept.set(key, made);
  return made;
};

export const trialOf = (foot: LoadedFoot, frame: FrameFigures, cases: Trial['cases']): Trial => {
  const runs = new Map<string, FootSolution>();
  const inThePress = new Map<string, PressedFoot>();
  const presses = new Map<string, ArchAnswer>();
  const stationsOf = new WeakMap<FootSolution, Map<Ray, readonly RayStation[]>>();
  return {
    foot,
    frame,
    cases,
    run: (id, change = {}) =>
      once(runs, `${id} ${JSON.stringify(change)}`, () => {
        const loadCase = { ...cases[id], figures: { ...cases[id].figures, ...change.load } };
        const figures = { ...frame, ...change.frame };
        return runCase(foot, loadCase, figures, { ...PERSON, ...change.person }, { ...foot.form, ...change.form });
      }),
    press: (loadN, changed = {}, form = {}) => {
      const key = `press ${JSON.stringify([changed, form])}`;
      const pressed = once(inThePress, key, () => inPress(foot, { ...frame, ...changed }, { ...foot.form, ...form }));
      return once(presses, `${key} ${loadN}`, () => pressArch(pressed, loadN));
    },
    stations: (solution, ray) => {
      const rays = stationsOf.get(solution) ?? new Map<Ray, readonly RayStation[]>();
      stationsOf.set(solution, rays);
      const known = rays.get(ray) ?? rayStations(solution, foot.sections, ray, frame.wall);
      rays.set(ray, known);
      return known;
    },
  };
};

/** The numbers that a check's statement is about, in the order of its labels. */
export type CheckOf = (trial: Trial) => readonly number[];
