/** Study arms as people read them: who, how many, what was counted, each number with its mark. */
import type { Content } from '../content/schema';
import type { ArmEvent, ArmFigures, Comparison } from '../explain/messages';
import type { OptionId, Reader } from '../ids';
import { ENDPOINT_WORDS, EVENT_WORDS } from './en/lists';
import { PARTS } from './en/messages';
import { capitalRuns, fill, fillRuns, joined } from './fill';
import { namesFor } from './names';
import { peopleOfStudy } from './people';
import { capital, formatQuantity, formatWeeks } from './quantities';
import { sourceName } from './sources';
import type { Run } from './types';

const percent = (value: number): string => formatQuantity({ value: value / 100, unit: 'share' });

const eventRuns = (event: ArmEvent, { mark }: ArmFigures): readonly Run[] => {
  const what = EVENT_WORDS[event.what];
  if (event.count !== null && event.of !== null)
    return fillRuns(PARTS.armEventCount, {
      count: { text: String(event.count), mark },
      of: { text: String(event.of), mark },
      what,
    });
  if (event.percent === null) return [];
  return fillRuns(PARTS.armEventPercent, { percent: { text: percent(event.percent), mark }, what });
};

/** What was counted, the harm with the good: the first for which the study stands, then the others. */
const countedRuns = (arm: ArmFigures): readonly (readonly Run[])[] =>
  [...(arm.event === null ? [] : [arm.event]), ...arm.events]
    .map((event) => eventRuns(event, arm))
    .filter((runs) => runs.length > 0);

/** To what the weeks count and, where they run on another clock, from what. */
const countedTo = ({ endpoint, since }: NonNullable<ArmFigures['time']>): string =>
  since === undefined ? ENDPOINT_WORDS[endpoint] : fill(PARTS.fromSecond, { endpoint: ENDPOINT_WORDS[endpoint] });

export const timeRuns = (arm: ArmFigures): readonly Run[] =>
  arm.time === null
    ? []
    : fillRuns(PARTS.armTime, {
        weeks: { text: formatQuantity(arm.time.weeks), mark: arm.mark },
        endpoint: countedTo(arm.time),
        centre: arm.time.centre,
      });

const armRuns = (content: Content, arm: ArmFigures, reader: Reader): readonly Run[] => {
  const parts = [...countedRuns(arm), timeRuns(arm)].filter((runs) => runs.length > 0);
  const figures = joined(parts.flatMap((runs, i) => (i === 0 ? runs : [{ text: ', ' }, ...runs])));
  return fillRuns(PARTS.armAsked, {
    option: namesFor(content, reader).option(arm.option),
    figures,
    population: peopleOfStudy(content, arm.study, reader),
    n: arm.n === null ? '' : fill(PARTS.people, { n: arm.n }),
  });
};

/** Rows of one treatment together, in short sentences: what was counted (once), then how long each step took. */
const plainOption = (
  content: Content,
  option: OptionId,
  rows: readonly ArmFigures[],
  reader: Reader,
): readonly Run[] => {
  const counted = [
    ...new Map(rows.flatMap(countedRuns).map((runs) => [runs.map(({ text }) => text).join(''), runs])).values(),
  ];
  const times = rows.flatMap((arm) =>
    arm.time === null
      ? []
      : [
          fillRuns(PARTS.plainTime, {
            weeks: { text: formatWeeks({ value: arm.time.weeks.value, unit: 'week' }), mark: arm.mark },
            endpoint: countedTo(arm.time),
          }),
        ],
  );
  const facts = [...counted, ...times].map((runs) => joined([...capitalRuns(runs), { text: '.' }]));
  if (facts.length === 0) return [];
  return fillRuns(PARTS.plainArm, {
    option: capital(namesFor(content, reader).option(option)),
    who: fill(PARTS.who, {
      who: [...new Set(rows.map((arm) => peopleOfStudy(content, arm.study, reader)))].join('; '),
    }),
    facts: joined(facts.flatMap((runs, i) => [{ text: i === 0 ? '' : ' ' }, ...runs])),
  });
};

/** Study: every row with its people as printed. Others: a treatment at a time. */
export const armsRuns = (content: Content, arms: readonly ArmFigures[], reader: Reader): readonly Run[] => {
  if (reader === 'study')
    return joined(arms.flatMap((arm, i) => [{ text: i === 0 ? '' : '; ' }, ...armRuns(content, arm, reader)]));
  const options = [...new Set(arms.map((arm) => arm.option))];
  return joined(
    options.flatMap((option, i) => [
      { text: i === 0 ? '' : ' ' },
      ...plainOption(
        content,
        option,
        arms.filter((arm) => arm.option === option),
        reader,
      ),
    ]),
  );
};

const shareRuns = (arm: ArmFigures): readonly Run[] => {
  const { event } = arm;
  if (event?.count != null && event.of !== null)
    return [{ text: fill(PARTS.of, { count: event.count, of: event.of }), mark: arm.mark }];
  return event?.percent == null ? [] : [{ text: percent(event.percent), mark: arm.mark }];
};

export const comparisonRuns = (content: Content, comparison: Comparison): readonly Run[] => {
  const [first, second] = comparison.arms;
  return fillRuns(PARTS.comparison, {
    what: EVENT_WORDS[comparison.what],
    first: shareRuns(first),
    second: shareRuns(second),
    source: sourceName(content, first.source),
  });
};
