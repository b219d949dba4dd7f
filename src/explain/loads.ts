/**
 * The frame of `src/mechanics/foot` fed from content: which figures, which load case, on whose foot. What is told (one run) is cheap;
 * bands and contributors are some thousand runs and made only when asked for. All of it is kept by what it depends on.
 */
import type { Foot } from '../anatomy/types';
import type { Activity, Content, Evidence, Figure } from '../content/schema';
import { type ActivityId, type BoneId, idOf } from '../ids';
import {
  type BandedCase,
  CASE_FIGURES,
  type Contributor,
  type ContributorId,
  contributorsOf,
  drawsSay,
  type FootLoads,
  type FootProblem,
  FRAME_FIGURES,
  type FrameBands,
  type HeldDraws,
  type HeldWithin,
  heldDraws,
  type LoadBands,
  type LoadDraw,
  type LoadedFoot,
  loadBands,
  loadDraws,
  loadedFoot,
  loadsOf,
  type Person,
  RAYS,
  type Ray,
  runCase,
  toldSign,
} from '../mechanics';
import { statedBy } from './agreed';
import { type Context, shapeOf } from './context';
import type { OnFoot } from './place';

/** Every ratio is to this task. */
export const REFERENCE_ACTIVITY = idOf<ActivityId>('walking');
/** For contributors, supports and shares of weight too: among forty a sign is taken for agreed that is not. */
export const DRAWS = 100;
export const SEED = 1;

/** What a person may change of a task; null: as content tells it. */
export interface LoadRun extends OnFoot {
  readonly activity: ActivityId;
  readonly massKg: number;
  readonly carriedKg: number;
  /** Bending stiffness a sole adds at the ball of the foot, N m/rad. */
  readonly soleBending: number;
  readonly speed: number | null;
  readonly tiltDeg: number | null;
}

export const activityIn = (content: Content, id: ActivityId): Activity => {
  const found = content.activities.find((a) => a.id === id);
  if (found === undefined) throw new RangeError(`the content has no activity ${id}`);
  return found;
};

interface Band {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}
const bandOf = ({ value, low, high }: Pick<Figure, 'value' | 'low' | 'high'>): Band => ({
  value,
  low: low ?? value,
  high: high ?? value,
});
const shifted = (band: Band, by: number): Band => ({
  value: band.value + by,
  low: band.low + by,
  high: band.high + by,
});

/** The case with its bands, moved to the speed and the tilt asked for. */
export const bandedCase = (activity: Activity, run: Pick<LoadRun, 'speed' | 'tiltDeg'>): BandedCase => {
  const figures = Object.fromEntries(CASE_FIGURES.map((name) => [name, bandOf(activity.figures[name])])) as Record<
    (typeof CASE_FIGURES)[number],
    Band
  >;
  const { speed } = activity;
  if (speed !== undefined && run.speed !== null)
    figures.total = shifted(figures.total, speed.totalPerMetreASecond * (run.speed - speed.usual));
  if (run.tiltDeg !== null) figures.tilt = shifted(figures.tilt, run.tiltDeg - figures.tilt.value);
  return { id: activity.id, pose: activity.pose, contact: activity.contact, figures };
};

const frames = new WeakMap<Content, FrameBands>();
/** Throws RangeError for a figure that the content lacks. */
export const frameBandsOf = (content: Content): FrameBands => {
  const kept = frames.get(content);
  if (kept !== undefined) return kept;
  const bands = Object.fromEntries(
    FRAME_FIGURES.map((name) => {
      const record = content.frame.find((r) => r.id === name);
      if (record === undefined) throw new RangeError(`the content has no frame figure ${name}`);
      return [name, bandOf(record.figure)];
    }),
  ) as FrameBands;
  frames.set(content, bands);
  return bands;
};

export const toldValues = <K extends string>(bands: Readonly<Record<K, Band>>): Readonly<Record<K, number>> =>
  Object.fromEntries(Object.entries<Band>(bands).map(([name, band]) => [name, band.value])) as Record<K, number>;

interface KeptFoot {
  plain: LoadedFoot | null;
  banded: LoadedFoot | null;
  readonly answers: WeakMap<Content, Map<string, unknown>>;
}
const keptFeet = new WeakMap<Foot, KeptFoot>();

const keptFor = (foot: Foot): KeptFoot => {
  const kept = keptFeet.get(foot) ?? {
    plain: null,
    banded: null,
    answers: new WeakMap<Content, Map<string, unknown>>(),
  };
  keptFeet.set(foot, kept);
  return kept;
};

/** The foot with its sections; `bands` with the ends of the cortex too. */
export const loaded = (context: Context, foot: Foot, bands: boolean): LoadedFoot => {
  const kept = keptFor(foot);
  if (bands || kept.banded !== null) {
    kept.banded ??= loadedFoot(shapeOf(context.content), foot, true);
    return kept.banded;
  }
  kept.plain ??= loadedFoot(shapeOf(context.content), foot, false);
  return kept.plain;
};

/** Kept by foot, content, run and what is asked: a pure function of these. */
export const remembered = <T>(context: Context, run: LoadRun, what: string, make: (foot: Foot) => T): T => {
  const foot = context.footFor(run.foot);
  const { answers } = keptFor(foot);
  const kept = answers.get(context.content) ?? new Map<string, unknown>();
  answers.set(context.content, kept);
  const { activity, massKg, carriedKg, soleBending, speed, tiltDeg } = run;
  const key = JSON.stringify([what, activity, massKg, carriedKg, soleBending, speed, tiltDeg]);
  if (!kept.has(key)) kept.set(key, make(foot));
  return kept.get(key) as T;
};

export const personOf = ({ massKg, carriedKg, soleBending }: LoadRun): Person => ({ massKg, carriedKg, soleBending });

/** The foot with what its frame needs, without the bands' ends unless they are there already. */
export const loadedFor = (context: Context, foot: Foot): LoadedFoot => loaded(context, foot, false);

export type Told = { readonly loads: FootLoads } | { readonly problem: FootProblem };

/** One run with every figure as told. */
export const toldLoads = (context: Context, run: LoadRun): Told =>
  remembered(context, run, 'told', (foot): Told => {
    const on = loaded(context, foot, false);
    const banded = bandedCase(activityIn(context.content, run.activity), run);
    const loadCase = { ...banded, figures: toldValues(banded.figures) };
    const solved = runCase(on, loadCase, toldValues(frameBandsOf(context.content)), personOf(run));
    if ('kind' in solved) return { problem: solved };
    return { loads: loadsOf({ ...on, placing: on.placing(loadCase.pose) }, solved, loadCase) };
  });

/** The same person and foot in the reference task, unloaded and in bare feet. */
export const referenceRun = (run: LoadRun): LoadRun => ({
  ...run,
  activity: REFERENCE_ACTIVITY,
  carriedKg: 0,
  soleBending: 0,
  speed: null,
  tiltDeg: null,
});

export const rayOf = (bone: BoneId): Ray | null => RAYS.find((ray) => bone === `metatarsal${ray}`) ?? null;

/** Throws RangeError for a content without the two lengthenings that the figures were calibrated on. */
export const heldWithinOf = (content: Content): HeldWithin => {
  const of = (id: 'lengtheningWhole' | 'lengtheningCut'): number => {
    const within = content.loadChecks.find((check) => check.id === id)?.heldWithin;
    if (within === undefined) throw new RangeError(`the content does not say how far feet may differ in ${id}`);
    return within;
  };
  return { whole: of('lengtheningWhole'), cut: of('lengtheningCut') };
};

const heldFeet = new WeakMap<LoadedFoot, WeakMap<Content, HeldDraws>>();
/** Sets of figures that the press allows, the told ones first: the same for every task, person and bone, so kept with the foot. */
export const framesFor = (content: Content, on: LoadedFoot): HeldDraws => {
  const known = heldFeet.get(on) ?? new WeakMap<Content, HeldDraws>();
  heldFeet.set(on, known);
  const before = known.get(content);
  if (before !== undefined) return before;
  const made = heldDraws(on, frameBandsOf(content), heldWithinOf(content), DRAWS, SEED);
  known.set(content, made);
  return made;
};

/** Draws of a task and of the reference; `count` of them, the told values apart. */
export const drawsFor = (
  content: Content,
  on: LoadedFoot,
  loadCase: BandedCase,
  reference: BandedCase,
  count: number,
): readonly LoadDraw[] => loadDraws(framesFor(content, on).draws.slice(0, count + 1), loadCase, reference, SEED);

const casesOf = ({ content }: Context, run: LoadRun) => ({
  loadCase: bandedCase(activityIn(content, run.activity), run),
  reference: bandedCase(activityIn(content, REFERENCE_ACTIVITY), { speed: null, tiltDeg: null }),
});

/** Over all that is assumed. Null where the told figures find no answer. */
export const bandsFor = (context: Context, run: LoadRun, ray: Ray): LoadBands | null =>
  remembered(context, run, `bands ${ray}`, (foot) => {
    const { loadCase, reference } = casesOf(context, run);
    const on = loaded(context, foot, true);
    const draws = drawsFor(context.content, on, loadCase, reference, DRAWS);
    const { tried } = framesFor(context.content, on);
    return loadBands(on, draws, loadCase, reference, personOf(run), ray, { seed: SEED, tried });
  });

export const contributorsFor = (context: Context, run: LoadRun, ray: Ray): readonly Contributor[] =>
  remembered(context, run, `contributors ${ray}`, (foot) => {
    const { loadCase, reference } = casesOf(context, run);
    const on = loaded(context, foot, true);
    const draws = drawsFor(context.content, on, loadCase, reference, DRAWS);
    return contributorsOf(on, draws, loadCase, personOf(run), ray);
  });

/** A shape of the whole foot shifts every lever at once: in some tasks it raises the pull, in others it lowers it. */
const SHAPES: readonly ContributorId[] = ['highArch', 'lowArch'];

/** Whether enough draws of another task, with nothing tried in it, say `raises`. Kept by task: the next task asks the same. */
const drawsOfTaskSay = (context: Context, run: LoadRun, ray: Ray, id: ContributorId, raises: boolean): boolean =>
  remembered(context, { ...run, speed: null, tiltDeg: null }, `sign ${ray} ${id} ${raises}`, (foot) => {
    const { loadCase, reference } = casesOf(context, run);
    const on = loaded(context, foot, true);
    const draws = drawsFor(context.content, on, loadCase, reference, DRAWS);
    return drawsSay(on, { loadCase, draws }, personOf(run), ray, id, raises);
  });

/** What the told run of another task says; asking the draws of all of them would take many seconds. */
const toldOfTask = (context: Context, run: LoadRun, ray: Ray, id: ContributorId): boolean | null =>
  remembered(context, { ...run, speed: null, tiltDeg: null }, `told sign ${ray} ${id}`, (foot) => {
    const { loadCase, reference } = casesOf(context, run);
    const on = loaded(context, foot, true);
    const draws = drawsFor(context.content, on, loadCase, reference, 0);
    return toldSign(on, { loadCase, draws }, personOf(run), ray, id);
  });

/**
 * Contributors whose sign the draws of this task agree on, and the draws of another task on the contrary: none is stated for them. Of a
 * task whose draws do not agree nothing is said. Only tasks whose told run says the contrary are asked for their draws.
 */
export const taskBoundFor = (context: Context, run: LoadRun, ray: Ray): readonly ContributorId[] =>
  remembered(context, run, `taskBound ${ray}`, () => {
    const others = context.content.activities
      .filter(({ id }) => id !== run.activity)
      .map(({ id }): LoadRun => ({ ...run, activity: id, speed: null, tiltDeg: null }));
    return SHAPES.filter((id) => {
      const here = contributorsFor(context, run, ray).find((each) => each.id === id);
      if (here === undefined) return false;
      const { holds, agreed } = statedBy(here.raises);
      return (
        agreed.enough &&
        others.some(
          (other) => toldOfTask(context, other, ray, id) === !holds && drawsOfTaskSay(context, other, ray, id, !holds),
        )
      );
    });
  });

/** Everything a run rests on: the weakest of it is said first. */
export const evidenceOfLoads = (content: Content, run: LoadRun): readonly Evidence[] => {
  const activity = activityIn(content, run.activity);
  return [
    ...content.frame.map((record) => record.figure.evidence),
    ...CASE_FIGURES.map((name) => activity.figures[name].evidence),
    ...(activity.speed !== undefined && run.speed !== null ? [activity.speed.evidence] : []),
  ];
};
