/**
 * The forecast for one endpoint, or why there is none. Three ways it can go: back as planned, back after a healing problem, not
 * back. Their rates and their times come from different studies and are taken as independent of each other.
 */
import { type Endpoint, LEVELS } from '../ids';
import { type ArmFilter, armsFor, type OneEndpoint, type StudyLike } from './arms';
import { type Counted, countingRows, notReturnedCounts, problemCounts } from './counts';
import { fitArm } from './fits';
import { LEAST_ARMS, personOf, poolOf } from './pooling';
import { LEAST_TRIALS, rateOf } from './rates';
import type { FittedArm, ForecastOutcome, Rate, TimedArm, TimeFit } from './types';

const fitted = <E extends Endpoint>(arms: readonly TimedArm<E>[]): FittedArm<E>[] =>
  arms.flatMap((arm) => fitArm(arm) ?? []);

/** Arms a curve can be made of: first-hand, with a spread, of people who were not picked because healing failed. */
export const curveArms = <E extends Endpoint>(arms: readonly TimedArm<E>[]): FittedArm<E>[] =>
  fitted(arms.filter((a) => a.design !== 'pooled' && a.branch !== 'problem'));

type Level = ArmFilter<Endpoint>['level'];

const atLevel = (rows: readonly StudyLike[], level: NonNullable<Level>): StudyLike[] =>
  rows.filter((s) => s.level === level || s.alsoLevels?.includes(level));

/** Counts of the level asked for where enough trials have it, else of every level; null when nobody counted. */
const rateFrom = (
  rows: readonly StudyLike[],
  level: Level,
  counts: (rows: readonly StudyLike[]) => Counted[],
): Rate | null => {
  const own = level === undefined ? [] : counts(atLevel(rows, level));
  if (own.length >= LEAST_TRIALS) return rateOf(own, 'own');
  const all = counts(rows);
  return all.length === 0 ? null : rateOf(all, 'mixed');
};

/**
 * Time after a healing problem. It has the spread of the uneventful branch, so that the longer somebody is not back, the more
 * likely a problem becomes, never less; a middle that is not later than the uneventful one is not believed.
 */
const problemTime = (arms: readonly FittedArm[], uneventful: TimeFit): TimeFit | null => {
  const people = arms.reduce((all, a) => all + a.n, 0);
  if (people === 0) return null;
  const mu = arms.reduce((all, a) => all + a.n * a.fit.mu, 0) / people;
  return mu > uneventful.mu ? { mu, sigma: uneventful.sigma } : null;
};

/** Groups of one study stand for one: what lies between studies can't be seen in them. */
const studiesOf = (arms: readonly TimedArm[]): number => new Set(arms.map(({ source }) => source)).size;

/**
 * The level of which a curve may speak: the one asked for or, where nobody asked for one, the one that all arms studied; null where
 * they studied several. Levels are kept apart: after the same screw college players who went back as pain let them played at 3.6
 * weeks and professionals at 9 to 15, which is another rule of going back and not chance between studies. A curve over both would be
 * the forecast of a person whose level nobody knows, told to one whose level is known. Counts of healing problems and of who came
 * back are fewer: where three trials of the level have none, those of every level speak, and that is said beside them.
 */
const levelOf = (arms: readonly TimedArm[], rows: readonly StudyLike[], asked: Level): NonNullable<Level> | null => {
  if (asked !== undefined) return asked;
  const ids = new Set<string>(arms.map(({ id }) => id));
  const studied = rows.filter(({ id }) => ids.has(id));
  return LEVELS.find((level) => atLevel(studied, level).length === studied.length) ?? null;
};

export const forecastFor = <E extends Endpoint>(
  studies: readonly StudyLike[],
  filter: ArmFilter<E> & ([OneEndpoint<E>] extends [never] ? never : unknown),
): ForecastOutcome<E> => {
  const { option, endpoint, level: asked, ...people }: ArmFilter<E> = filter;
  const comparable = armsFor(studies, { ...people, option, endpoint });
  if (comparable.length === 0) return { kind: 'none' };
  const all = curveArms(comparable);
  const level = levelOf(all, studies, asked);
  const own = level === null ? [] : armsFor(studies, { ...people, option, endpoint, level });
  const arms = curveArms(own);
  const apart = (why: 'tooFew' | 'levels' | 'noRate') =>
    ({ kind: 'sideBySide', arms: comparable, fitted: all, why }) as const;
  if (studiesOf(arms) < LEAST_ARMS) return apart(studiesOf(all) < LEAST_ARMS ? 'tooFew' : 'levels');

  const rows = countingRows(studies, { ...people, option });
  const rateLevel = level ?? undefined;
  const problem = rateFrom(rows, rateLevel, problemCounts);
  const notReturned = rateFrom(rows, rateLevel, notReturnedCounts);
  if (problem === null || notReturned === null) return apart('noRate');

  const pool = poolOf<Endpoint>(arms);
  const uneventful = personOf(pool);
  const slow = fitted(own.filter((a) => a.branch === 'problem' && a.design !== 'pooled'));
  const after = problemTime(slow, uneventful);
  const problemArms = after === null ? [] : slow;
  const used = new Set([...arms, ...problemArms].map((a) => a.id));
  const back = 1 - notReturned.share;
  return {
    kind: 'pooled',
    forecast: {
      endpoint,
      option,
      branches: [
        { name: 'uneventful', chance: back * (1 - problem.share), time: uneventful },
        { name: 'problem', chance: back * problem.share, time: after },
        { name: 'notReturned', chance: notReturned.share, time: null },
      ],
      afterWeek: 0,
    },
    arms,
    problemArms,
    aside: comparable.filter((a) => !used.has(a.id)),
    within: pool.within,
    between: pool.between,
    problem,
    notReturned,
  };
};
