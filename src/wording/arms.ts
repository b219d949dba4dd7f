/** Study arms as people read them: who, how many, what was counted, each number with its mark. */
import type { Content } from '../content/schema';
import type { ArmFigures, Comparison } from '../explain/messages';
import type { Reader } from '../ids';
import { ENDPOINT_WORDS, EVENT_WORDS } from './en/lists';
import { PARTS } from './en/messages';
import { fill, fillRuns, joined } from './fill';
import { namesFor } from './names';
import { formatQuantity } from './quantities';
import { sourceName } from './sources';
import type { Run } from './types';

const percent = (value: number): string => formatQuantity({ value: value / 100, unit: 'share' });

const eventRuns = (arm: ArmFigures): readonly Run[] => {
  const { event } = arm;
  if (event === null) return [];
  const what = EVENT_WORDS[event.what];
  if (event.count !== null && event.of !== null)
    return fillRuns(PARTS.armEventCount, {
      count: { text: String(event.count), mark: arm.mark },
      of: { text: String(event.of), mark: arm.mark },
      what,
    });
  if (event.percent === null) return [];
  return fillRuns(PARTS.armEventPercent, { percent: { text: percent(event.percent), mark: arm.mark }, what });
};

export const timeRuns = (arm: ArmFigures): readonly Run[] =>
  arm.time === null
    ? []
    : fillRuns(PARTS.armTime, {
        weeks: { text: formatQuantity(arm.time.weeks), mark: arm.mark },
        endpoint: ENDPOINT_WORDS[arm.time.endpoint],
        centre: arm.time.centre,
      });

export const armRuns = (content: Content, arm: ArmFigures, reader: Reader): readonly Run[] => {
  const parts = [eventRuns(arm), timeRuns(arm)].filter((runs) => runs.length > 0);
  const figures = joined(parts.flatMap((runs, i) => (i === 0 ? runs : [{ text: ', ' }, ...runs])));
  return fillRuns(PARTS.armAsked, {
    option: namesFor(content, reader).option(arm.option),
    figures,
    population: arm.population,
    n: arm.n === null ? '' : fill(PARTS.people, { n: arm.n }),
  });
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
