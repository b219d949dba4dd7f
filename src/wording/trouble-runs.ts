/** Sentences about troubles of healing: what was counted in one group, with its people, number and interval; sources that disagree. */
import type { Mark, Rate, Study } from '../content/schema';
import { figuresOf, markOf } from '../explain/figures';
import type { Message, MessageOf } from '../explain/messages';
import { armsRuns } from './arms';
import { TROUBLE_PARTS as P } from './en/trouble-messages';
import { fill, fillRuns, joined } from './fill';
import { namesFor } from './names';
import { list, type Pen, sentence } from './pen';
import { groupOfCount } from './people';
import { formatNumber, hundredOfCount } from './quantities';
import { sourceName } from './sources';
import type { Run } from './types';

const TROUBLE_MESSAGES = ['troubleCount', 'troubleRange', 'troublesNotCounted', 'sourcesDisagree'] as const;
export type TroubleMessage = MessageOf<(typeof TROUBLE_MESSAGES)[number]>;
const IDS: ReadonlySet<string> = new Set(TROUBLE_MESSAGES);
export const isTroubleMessage = (message: Message): message is TroubleMessage => IDS.has(message.id);

/** Below this a person is more than five in a hundred: told as counted, and drawn by nobody. */
export const LEAST_FOR_HUNDRED = 20;

type Count = MessageOf<'troubleCount'>['args'];

/** Few people are told as they were counted; a percentage without its people is told of a hundred, and that they are not known is said. */
export const isTooFew = ({ count, of }: Pick<Count, 'count' | 'of'>): boolean =>
  count !== null && of !== null && of < LEAST_FOR_HUNDRED;

/** A count needs no explanation around it: it is of a group, whatever the case. */
type CountPen = Pick<Pen, 'content' | 'reader'>;

/** Templates stand twice: for people, and for breaks, of which one person can have two. */
const inUnit = <K extends string>(key: K, unit: Count['unit']): K | `${K}Breaks` =>
  unit === 'breaks' ? `${key}Breaks` : key;

const numberOf = ({ count, of, unit }: Count): string => {
  if (count !== null && of !== null) return fill(P[inUnit('number.counted', unit)], { count, of });
  return of === null ? P['number.unknown'] : fill(P[inUnit('number.of', unit)], { of });
};

const typeOf = (pen: CountPen, count: Count): string => {
  const { option } = count;
  const told =
    groupOfCount(pen.content, count, pen.reader).type ??
    (option === null ? null : namesFor(pen.content, pen.reader).option(option));
  if (told === null) return '';
  if (pen.reader === 'study') return fill(P.typed, { type: told });
  return fill(option === null ? P.kind : P.treated, { type: told });
};

const intervalOf = (pen: CountPen, interval: Count['interval'], number: (text: string) => Run): readonly Run[] => {
  if (interval === null) return [];
  const study = pen.reader === 'study';
  return fillRuns(P[study ? 'interval.study' : 'interval.said'], {
    low: number(study ? formatNumber(interval.low) : String(Math.round(interval.low))),
    high: number(study ? formatNumber(interval.high) : String(Math.round(interval.high))),
    by: P[`by.${interval.by}`],
  });
};

const countRuns = (pen: CountPen, args: Count): readonly Run[] => {
  const trouble = pen.content.troubles.find(({ id }) => id === args.trouble);
  const { count, of, unit, percent, span, mark } = args;
  const { group } = groupOfCount(pen.content, args, pen.reader);
  const number = (text: string): Run => ({ text, mark });
  const study = pen.reader === 'study';
  const figure =
    count !== null && of !== null
      ? inUnit('figure.count', unit)
      : of === null
        ? 'figure.percent'
        : inUnit('figure.percentOf', unit);
  return sentence(pen, inUnit(isTooFew(args) ? 'troubleCount.few' : 'troubleCount.hundred', unit), {
    hundred: percent === 0 ? number(P.none) : fillRuns(P.about, { number: number(hundredOfCount(percent)) }),
    count: number(count === 0 ? P.none : String(count ?? '')),
    of: of === null ? '' : number(String(of)),
    plain: trouble?.counted[unit === 'breaks' ? 'breaks' : 'plain'] ?? '',
    study: trouble?.counted.study ?? '',
    figure: number(fill(P[figure], { count: count ?? '', of: of ?? '', percent: formatNumber(percent) })),
    interval: intervalOf(pen, args.interval, number),
    span: span === null ? '' : fill(P[study ? 'span.study' : 'span.said'], { span }),
    number: numberOf(args),
    few: P[inUnit('few', unit)],
    people: fill(P.people, { group, type: typeOf(pen, args) }),
    type: typeOf(pen, args),
    group,
    source: sourceName(pen.content, args.source),
  });
};

/** How many groups, and how large they were as far as that was read. */
const sizesOf = (counts: readonly Count[]): string => {
  const sizes = counts.flatMap(({ of }) => of ?? []).sort((a, b) => a - b);
  const [smallest, largest] = [sizes[0], sizes.at(-1)];
  const groups = fill(P['range.groups'], { groups: counts.length });
  if (smallest === undefined || largest === undefined) return `${groups}${P['number.unknown']}`;
  const units = new Set(counts.filter(({ of }) => of !== null).map(({ unit }) => unit));
  const unit = units.size > 1 ? 'both' : units.has('breaks') ? 'breaks' : 'people';
  const size = smallest === largest ? String(smallest) : fill(P['range.fromTo'], { smallest, largest });
  const key =
    sizes.length === counts.length ? 'range.sizes' : sizes.length === 1 ? 'range.sizeOfOne' : 'range.sizesOfSome';
  return `${groups}${fill(P[key], { size, unit: P[`range.${unit}`], others: P[counts.length === 2 ? 'range.other' : 'range.others'] })}`;
};

/** Several groups in one sentence, and who stands at either end: often they were looked at after another time. */
const rangeRuns = (pen: Pen, { trouble: id, counts }: MessageOf<'troubleRange'>['args']): readonly Run[] => {
  const [lowest, highest] = [counts[0], counts.at(-1)];
  if (lowest === undefined || highest === undefined) return [];
  const trouble = pen.content.troubles.find((each) => each.id === id);
  const number = ({ percent, mark }: Count): Run => ({ text: hundredOfCount(percent), mark });
  const end = (key: 'range.lowest' | 'range.highest', count: Count): string =>
    fill(P[key], {
      span: count.span === null ? '' : fill(P['range.span'], { span: count.span }),
      group: groupOfCount(pen.content, count, pen.reader).group,
    });
  const breaks = counts.every(({ unit }) => unit === 'breaks');
  return sentence(pen, breaks ? 'troubleRange.breaks' : 'troubleRange', {
    low: number(lowest),
    high: number(highest),
    plain: trouble?.counted[breaks ? 'breaks' : 'plain'] ?? '',
    study: trouble?.counted.study ?? '',
    sizes: sizesOf(counts),
    few: counts.some(({ of }) => of !== null && of < LEAST_FOR_HUNDRED) ? P['range.few'] : '',
    beyond: P['range.beyond'],
    lowest: end('range.lowest', lowest),
    highest: end('range.highest', highest),
  });
};

/** A count in one reader's words, for a list of them that belongs to no case. */
export const wordTroubleCount = (content: Pen['content'], count: Count, reader: Pen['reader']): readonly Run[] =>
  countRuns({ content, reader }, count);

const ofRate = (rate: Rate): Run => {
  const [low, high] = rate.lowHighPercent ?? [];
  const printed = low === undefined || high === undefined ? '' : ` (${low}–${high})`;
  const text =
    rate.count !== null && rate.of !== null
      ? fill(P[inUnit('figure.count', rate.unit)], {
          count: rate.count,
          of: rate.of,
          percent: formatNumber((100 * rate.count) / rate.of),
        })
      : `${fill(P['figure.percent'], { percent: formatNumber(rate.percent ?? 0) })}${printed}`;
  return { text, mark: markOf(rate) };
};

export interface ToldSide {
  readonly says: string;
  readonly source: string;
  readonly mark: Mark;
  /** Figures that stand elsewhere in the content. */
  readonly figures: readonly Run[];
}

/** The sides of a contradiction, each with the figures of the records that it points at. In study wording. */
export const contradictionSides = (
  content: Pen['content'],
  contradiction: Pen['content']['contradictions'][number],
): readonly ToldSide[] =>
  contradiction.sides.map((side) => {
    const arms = side.studies.flatMap((id): readonly Study[] => content.studies.filter((s) => s.id === id));
    const rates = side.rates.flatMap((id) => content.rates.filter((r) => r.id === id)).map(ofRate);
    const told = arms.length === 0 ? [] : armsRuns(content, arms.map(figuresOf), 'study');
    return {
      says: side.says,
      source: side.evidence.source === null ? '' : sourceName(content, side.evidence.source),
      mark: side.evidence.mark,
      figures: joined([...told, ...rates]),
    };
  });

const disagreeRuns = (pen: Pen, { contradiction: id }: MessageOf<'sourcesDisagree'>['args']): readonly Run[] => {
  const contradiction = pen.content.contradictions.find((c) => c.id === id);
  if (contradiction === undefined) return [];
  const sides = contradictionSides(pen.content, contradiction).flatMap((side, i) => [
    { text: i === 0 ? '' : ' ' },
    ...fillRuns(P.side, {
      says: { text: side.says.replace(/\.$/, ''), mark: side.mark },
      source: side.source,
      figures: side.figures.length === 0 ? '' : fillRuns(P.figures, { figures: side.figures }),
    }),
  ]);
  return sentence(pen, 'sourcesDisagree', {
    topic: contradiction.topic.charAt(0).toLowerCase() + contradiction.topic.slice(1),
    sides,
    weDo: contradiction.weDo[pen.reader],
  });
};

export const troubleRuns = (pen: Pen, message: TroubleMessage): readonly Run[] => {
  switch (message.id) {
    case 'troubleCount':
      return countRuns(pen, message.args);
    case 'troubleRange':
      return rangeRuns(pen, message.args);
    case 'troublesNotCounted':
      return sentence(pen, 'troublesNotCounted', {
        troubles: list(
          message.args.troubles.map((id) => {
            const trouble = pen.content.troubles.find((t) => t.id === id);
            return (pen.reader === 'study' ? trouble?.term : trouble?.plain) ?? id;
          }),
        ),
      });
    case 'sourcesDisagree':
      return disagreeRuns(pen, message.args);
  }
};
