/** Study arms as people read them: who, how many, what was counted, each number with its mark. */
import type { Content, Mark } from '../content/schema';
import type { ArmEvent, ArmFigures, Comparison } from '../explain/messages';
import type { Endpoint, OptionId, Reader } from '../ids';
import { byLevelRuns, levelNames } from './by-level';
import { centredWeeks } from './centres';
import { ENDPOINT_WORDS, EVENT_WORDS } from './en/lists';
import { PARTS } from './en/messages';
import { capitalRuns, fill, fillRuns, joined, listRuns } from './fill';
import { namesFor } from './names';
import type { Pen } from './pen';
import { peopleOfStudy } from './people';
import { capital, formatQuantity, formatWeeks, hundredOfCount } from './quantities';
import { sourceName } from './sources';
import type { Run } from './types';

const percent = (value: number): string => formatQuantity({ value: value / 100, unit: 'share' });

/** A printed percentage as part of a hundred people; nobody and everybody are said so. */
const hundredRuns = (value: number, mark: Mark): readonly Run[] => {
  if (value === 0 || value === 100) return [{ text: value === 0 ? PARTS.nobody : PARTS.everybody, mark }];
  return fillRuns(PARTS.hundred, { hundred: { text: hundredOfCount(value), mark } });
};

const OF_PEOPLE: ReadonlySet<ArmEvent['what']> = new Set(['returned', 'not returned']);
const countOf = ({ what, unit }: ArmEvent): string => {
  if (unit === 'people') return PARTS.armEventCount;
  return OF_PEOPLE.has(what) ? PARTS.armEventAfter : PARTS.armEventBreaks;
};

const eventRuns = (event: ArmEvent, { mark }: ArmFigures, reader: Reader): readonly Run[] => {
  const what = EVENT_WORDS[event.what];
  if (event.count !== null && event.of !== null)
    return fillRuns(countOf(event), {
      count: { text: String(event.count), mark },
      of: { text: String(event.of), mark },
      what,
    });
  if (event.percent === null) return [];
  if (reader !== 'study') return fillRuns(PARTS.armEventHundred, { hundred: hundredRuns(event.percent, mark), what });
  return fillRuns(PARTS.armEventPercent, { percent: { text: percent(event.percent), mark }, what });
};

/** What was counted, the harm with the good: the first for which the study stands, then the others. */
const countedRuns = (arm: ArmFigures, reader: Reader): readonly (readonly Run[])[] =>
  [...(arm.event === null ? [] : [arm.event]), ...arm.events]
    .map((event) => eventRuns(event, arm, reader))
    .filter((runs) => runs.length > 0);

/** To what the weeks count and, where they run on another clock, from what. */
export const countedTo = ({ endpoint, since }: Pick<NonNullable<ArmFigures['time']>, 'endpoint' | 'since'>): string =>
  since === undefined
    ? ENDPOINT_WORDS[endpoint]
    : fill(since === 'diagnosis' ? PARTS.fromDiagnosis : PARTS.fromSecond, { endpoint: ENDPOINT_WORDS[endpoint] });

export const timeRuns = (arm: ArmFigures, reader: Reader): readonly Run[] => {
  if (arm.time === null) return [];
  const weeks: Run = { text: formatQuantity(arm.time.weeks), mark: arm.mark };
  const endpoint = countedTo(arm.time);
  return reader === 'study'
    ? fillRuns(PARTS.armTime, { weeks, endpoint, centre: arm.time.centre })
    : fillRuns(PARTS.weeksTo, { weeks: centredWeeks(reader, arm.time.centre, weeks), endpoint });
};

/** "it took about 8 weeks on average until ...": of one arm, in words. */
export const plainTimeRuns = ({ time, mark }: ArmFigures): readonly Run[] =>
  time === null
    ? []
    : fillRuns(PARTS[`plainTime.${time.centre}`], {
        weeks: { text: formatWeeks({ value: time.weeks.value, unit: 'week' }), mark },
        endpoint: countedTo(time),
      });

const armRuns = (content: Content, arm: ArmFigures, reader: Reader): readonly Run[] => {
  const parts = [...countedRuns(arm, reader), timeRuns(arm, reader)].filter((runs) => runs.length > 0);
  const figures = joined(parts.flatMap((runs, i) => (i === 0 ? runs : [{ text: ', ' }, ...runs])));
  return fillRuns(PARTS.armAsked, {
    option: namesFor(content, reader).option(arm.option),
    figures,
    population: peopleOfStudy(content, arm.study, reader),
    n: arm.n === null ? '' : fill(arm.nUnit === 'people' ? PARTS.people : PARTS.breaks, { n: arm.n }),
  });
};

interface Group {
  readonly option: OptionId;
  readonly who: string;
  readonly rows: readonly ArmFigures[];
}

/** Other people had another time: only rows of the same people are told in one breath. */
const groupsOf = (content: Content, arms: readonly ArmFigures[], reader: Reader): readonly Group[] => {
  const options = [...new Set(arms.map((arm) => arm.option))];
  const peopleOf = (arm: ArmFigures): string => peopleOfStudy(content, arm.study, reader);
  return options.flatMap((option) => {
    const own = arms.filter((arm) => arm.option === option);
    return [...new Set(own.map(peopleOf))].map((who) => ({
      option,
      who,
      rows: own.filter((arm) => peopleOf(arm) === who),
    }));
  });
};

/** Rows of one treatment and one group of people, in short sentences: what was counted (once), then how long each step took. */
const plainOption = (content: Content, { option, who, rows }: Group, reader: Reader): readonly Run[] => {
  const counted = [
    ...new Map(
      rows.flatMap((arm) => countedRuns(arm, reader)).map((runs) => [runs.map(({ text }) => text).join(''), runs]),
    ).values(),
  ];
  const times = rows.map(plainTimeRuns).filter((runs) => runs.length > 0);
  const facts = [...counted, ...times].map((runs) => joined([...capitalRuns(runs), { text: '.' }]));
  if (facts.length === 0) return [];
  return fillRuns(PARTS.plainArm, {
    option: capital(namesFor(content, reader).option(option)),
    who: fill(PARTS.who, { who }),
    facts: joined(facts.flatMap((runs, i) => [{ text: i === 0 ? '' : ' ' }, ...runs])),
  });
};

/** Study: every row with its people as printed. Others: a treatment and its people at a time. */
export const armsRuns = (content: Content, arms: readonly ArmFigures[], reader: Reader): readonly Run[] => {
  if (reader === 'study')
    return joined(arms.flatMap((arm, i) => [{ text: i === 0 ? '' : '; ' }, ...armRuns(content, arm, reader)]));
  return joined(
    groupsOf(content, arms, reader).flatMap((group, i) => [
      { text: i === 0 ? '' : ' ' },
      ...plainOption(content, group, reader),
    ]),
  );
};

const shareRuns = (arm: ArmFigures, reader: Reader): readonly Run[] => {
  const { event } = arm;
  if (event?.count != null && event.of !== null)
    return [
      {
        text: fill(event.unit === 'breaks' ? PARTS.ofBreaks : PARTS.of, { count: event.count, of: event.of }),
        mark: arm.mark,
      },
    ];
  if (event?.percent == null) return [];
  const { percent: of100 } = event;
  return reader === 'study' ? [{ text: percent(of100), mark: arm.mark }] : hundredRuns(of100, arm.mark);
};

/** For a patient a sentence each, in one row with the others else. */
export const comparisonsRuns = (
  content: Content,
  comparisons: readonly Comparison[],
  reader: Reader,
): readonly Run[] => {
  const alone = reader === 'patient';
  const told = comparisons.map(({ what, arms: [first, second] }) =>
    fillRuns(alone ? PARTS.comparisonAlone : PARTS.comparison, {
      what: alone ? capital(EVENT_WORDS[what]) : EVENT_WORDS[what],
      first: shareRuns(first, reader),
      second: shareRuns(second, reader),
      source: sourceName(content, first.source),
    }),
  );
  return alone
    ? joined(told.flatMap((runs, i) => [{ text: i === 0 ? '' : ' ' }, ...runs]))
    : listRuns(told, PARTS.and, PARTS.nothing);
};

/** What all of them counted to; that it is from the diagnosis on where all say so. */
export const countedIn = (endpoint: Endpoint, arms: readonly ArmFigures[]): string => {
  const [since, ...others] = [...new Set(arms.map(({ time }) => time?.since))];
  return countedTo({ endpoint, ...(since === undefined || others.length > 0 ? {} : { since }) });
};

/** The row that speaks alone; null where several do. */
export const onlyPeople = ({ studies }: Pick<Content, 'studies'>, arms: readonly ArmFigures[]) =>
  arms.length === 1 ? (studies.find(({ id }) => id === arms[0]?.study) ?? null) : null;

/**
 * Whose weeks these are: of one row its people, of several their levels of sport, unless each level has weeks of its own beside it.
 * Nobody should take one clinic's patients for everybody, or professionals for anybody. To a patient who the people of one row were is
 * a sentence of its own.
 */
export const groupsOfPeople = (
  content: Content,
  arms: readonly ArmFigures[],
  byLevel: boolean,
  reader: Reader,
): readonly Run[] => {
  const row = onlyPeople(content, arms);
  if (row === null) return byLevel ? [{ text: PARTS.groups }] : fillRuns(PARTS.groupsWho, { who: levelNames(arms) });
  const pooled = row.design === 'pooled';
  if (reader === 'patient') return [{ text: pooled ? PARTS.groups : PARTS.oneGroupOnly }];
  return fillRuns(pooled ? PARTS.groupsWho : PARTS.oneGroup, { who: row.plain });
};

/** For study: each level where it has weeks of its own; else whose the weeks are, of one row as it was printed. */
export const weeksOfWhom = (pen: Pen, arms: readonly ArmFigures[]): readonly Run[] => {
  const apart = byLevelRuns(pen, arms);
  if (apart.length > 0) return apart;
  const row = onlyPeople(pen.content, arms);
  return row === null
    ? fillRuns(PARTS.inLevels, { people: levelNames(arms) })
    : fillRuns(PARTS.ofPopulation, { people: row.population });
};

/** Who the people of one group were, as a sentence; nothing where there were several. */
export const whoTheyWere = (content: Content, arms: readonly ArmFigures[]): string => {
  const row = onlyPeople(content, arms);
  return row === null ? '' : fill(PARTS.countedPeople, { who: row.plain });
};
