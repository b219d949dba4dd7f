/** Figures of the frame and of a load case as bands, and one run of a case with one draw of each. */

import type { Shape } from '../../anatomy';
import type { Foot, FootForm } from '../../anatomy/types';
import { type FootMarks, footMarks } from './landmarks';
import type { LoadCase, LoadCaseFigures } from './load-case';
import type { FrameFigures } from './parameter-names';
import { type Placing, placingOf } from './placing';
import { type RaySections, raySections } from './ray-sections';
import { type FootProblem, type FootSolution, readyFrame, solveFoot } from './solve';

/** A person and what they carry: `carriedKg` adds to the ground's push, not to the body weight that muscles are told in. */
export interface Person {
  readonly massKg: number;
  readonly carriedKg: number;
  /** Bending stiffness that a sole adds at the ball of the foot, N m/rad. */
  readonly soleBending: number;
}

/** What a foot keeps for all its runs. */
export interface LoadedFoot {
  readonly marks: FootMarks;
  readonly sections: RaySections;
  /** How the bones stand in a pose, in this foot's own form or another. */
  readonly placing: (pose: LoadCase['pose'], form?: FootForm) => Placing;
  readonly form: FootForm;
}

/** Marks and sections of a standing right foot; `bands` asks for the ends of the cortex's bands too. */
export const loadedFoot = (shape: Shape, foot: Foot, bands: boolean): LoadedFoot => {
  const kept = new Map<string, Placing>();
  return {
    marks: footMarks(shape, foot),
    sections: raySections(foot, shape, bands),
    form: foot.parameters,
    placing: (pose, form = foot.parameters) => {
      const key = `${pose} ${JSON.stringify(form)}`;
      const placing = kept.get(key) ?? placingOf(shape, foot, form, pose);
      kept.set(key, placing);
      return placing;
    },
  };
};

const withLoad = (g: LoadCaseFigures, person: Person): LoadCaseFigures => {
  const more = (person.massKg + person.carriedKg) / person.massKg;
  return more === 1
    ? g
    : { ...g, total: g.total * more, sideways: g.sideways * more, forwards: g.forwards * more, twist: g.twist * more };
};

/** Frames already factored in one draw, by what makes them differ: pose, form, sole and tilt. Loads alone need no new one. */
export type KeptFrames = Map<string, ReturnType<typeof readyFrame>>;

/** `kept`: frames made with the same `figures` before, to be used again and added to. */
export const runCase = (
  foot: LoadedFoot,
  loadCase: LoadCase,
  figures: FrameFigures,
  person: Person,
  form: FootForm = foot.form,
  kept: KeptFrames = new Map(),
): FootSolution | FootProblem => {
  const { massKg, carriedKg } = person;
  if (!(massKg > 0 && Number.isFinite(massKg))) return { kind: 'badMass', massKg };
  if (!(carriedKg >= 0 && Number.isFinite(carriedKg))) return { kind: 'badMass', massKg: carriedKg };
  const loaded = { ...loadCase, figures: withLoad(loadCase.figures, person) };
  const sole = { ...figures, firstToe: figures.firstToe + person.soleBending };
  const { pose, contact } = loadCase;
  const key = JSON.stringify([pose, contact, loaded.figures.tilt, person.soleBending, form]);
  const ready = kept.get(key) ?? readyFrame({ ...foot, placing: foot.placing(pose, form) }, sole, loaded);
  kept.set(key, ready);
  return 'kind' in ready ? ready : solveFoot(ready, loaded, massKg);
};
