/**
 * What can go wrong with healing, and how often it was counted: rates of the content, and what arms of its studies counted under
 * the same name. A figure of a group, told with its people, number and interval; nothing here is of one person.
 */
import type { Content, Rate, Study, Trouble } from '../content/schema';
import type { CardId, InjuryId } from '../ids';
import { compute, find, message } from './build';
import { markOf } from './figures';
import { wilson } from './shares';
import type { Situation } from './situation';
import { textFinding } from './texts';
import type { TroubleCount } from './trouble-messages';
import type { Finding } from './types';

/** The injury or the card whose people were counted; null: everybody's. */
export type Whose = { readonly injury: InjuryId } | { readonly card: CardId } | null;

const tenth = (value: number): number => Math.round(value * 10) / 10;
const inPercent = ({ low, high }: { readonly low: number; readonly high: number }, by: 'print' | 'Wilson') => ({
  low: tenth(low),
  high: tenth(high),
  by,
});

/** As printed where an interval was; from the count else. A pooled percentage is no count, and has only what was printed. */
const intervalOf = (
  count: number | null,
  of: number | null,
  printed: readonly number[] | null,
): TroubleCount['interval'] => {
  const [low, high] = printed ?? [];
  if (low !== undefined && high !== undefined) return inPercent({ low, high }, 'print');
  if (count === null || of === null) return null;
  const share = wilson(count, of);
  return inPercent({ low: 100 * share.low, high: 100 * share.high }, 'Wilson');
};

const ofRate = (r: Rate): TroubleCount => ({
  trouble: r.trouble,
  from: { rate: r.id },
  source: r.source,
  mark: markOf(r),
  type: r.type,
  option: null,
  options: r.options ?? null,
  group: r.group,
  span: r.span,
  count: r.count,
  of: r.of,
  unit: r.unit,
  percent: r.count !== null && r.of !== null ? tenth((100 * r.count) / r.of) : (r.percent ?? 0),
  interval: intervalOf(r.count, r.of, r.lowHighPercent),
});

/** People who were picked because their bone had not healed, or were counted from a second treatment, tell no rate of the first. */
const isOfFirst = ({ time }: Study): boolean => time?.branch !== 'problem' && time?.since !== 'second treatment';

const ofStudy = (trouble: Trouble, s: Study): readonly TroubleCount[] =>
  (s.event === null ? s.events : [s.event, ...s.events])
    .filter(({ what }) => trouble.events.includes(what))
    .map(({ count, of, unit, percent, lowHighPercent }) => ({
      trouble: trouble.id,
      from: { study: s.id },
      source: s.source,
      mark: markOf(s),
      type: null,
      option: s.option,
      options: null,
      group: s.population,
      span: null,
      count,
      unit,
      of: of ?? (s.design === 'pooled' ? null : s.n),
      percent: count !== null && of !== null ? tenth((100 * count) / of) : (percent ?? 0),
      interval: intervalOf(
        count ?? (percent !== null && of !== null ? (percent / 100) * of : null),
        of,
        lowHighPercent,
      ),
    }));

/** Better read before worse read, then larger groups before smaller. */
const inOrder = (a: TroubleCount, b: TroubleCount): number =>
  Number(a.mark !== 'seen') - Number(b.mark !== 'seen') || (b.of ?? 0) - (a.of ?? 0);

const isOf = (r: Pick<Rate, 'injuries' | 'cards'>, whose: Whose): boolean =>
  whose === null || ('injury' in whose ? r.injuries.includes(whose.injury) : r.cards.includes(whose.card));

/** Everything that was counted of one trouble, of people with one injury or of all. */
export const troubleCounts = (
  content: Pick<Content, 'rates' | 'studies'>,
  trouble: Trouble,
  whose: Whose,
): readonly TroubleCount[] => {
  const arms = content.studies.filter(
    (s) => isOfFirst(s) && (whose === null || ('injury' in whose && s.injuries.includes(whose.injury))),
  );
  return [
    ...content.rates.filter((r) => r.trouble === trouble.id && isOf(r, whose)).map(ofRate),
    ...arms.flatMap((s) => ofStudy(trouble, s)),
  ].sort(inOrder);
};

/** The id of the record that a count stands in. */
export const recordOf = ({ from }: Pick<TroubleCount, 'from'>): string => ('rate' in from ? from.rate : from.study);

export const troubleCount = compute(
  'trouble.count',
  ({ content }, inputs: { readonly injury: InjuryId; readonly trouble: Trouble['id']; readonly record: string }) => {
    const trouble = content.troubles.find(({ id }) => id === inputs.trouble);
    const found =
      trouble === undefined
        ? undefined
        : troubleCounts(content, trouble, { injury: inputs.injury }).find((c) => recordOf(c) === inputs.record);
    if (found === undefined) throw new RangeError(`no count of ${inputs.trouble} in ${inputs.record}`);
    return message('troubleCount', found);
  },
);

export const troublesNotCounted = compute(
  'trouble.notCounted',
  (_, inputs: { readonly injury: InjuryId; readonly troubles: readonly Trouble['id'][] }) =>
    message('troublesNotCounted', inputs),
);

/** So many counts of one trouble are told to everybody; whoever learns is told all. */
const FOR_ALL = 3;
/** Each treatment once, types after them: of two groups with one treatment the better read or larger one. */
const forAll = (counts: readonly TroubleCount[]): readonly TroubleCount[] => {
  const seen = new Set<string>();
  return [...counts]
    .sort((a, b) => Number(a.option === null) - Number(b.option === null))
    .filter(({ option, type }) => {
      const key = option ?? type ?? '';
      return !seen.has(key) && seen.add(key);
    })
    .slice(0, FOR_ALL);
};

/** The troubles of one question: each explained, then what was counted of it; last, what nobody counted. */
export const troubleFindings = (s: Situation, question: Trouble['question']): readonly Finding[] => {
  const { context, injury } = s;
  if (injury === null) return [];
  const { whatIf, value } = injury;
  const toldOf = s.ofJoint ? 'joints' : 'breaks';
  const told = context.content.troubles
    .filter((t) => t.question === question)
    .map((trouble) => ({ trouble, counts: troubleCounts(context.content, trouble, { injury: value }) }))
    // Union is of bone, wear of a joint: that nobody counted it is said only where it can come.
    .filter(({ trouble, counts }) => trouble.always === toldOf || counts.length > 0);
  const silent = told.filter(({ counts }) => counts.length === 0).map(({ trouble }) => trouble);
  const found = told.flatMap(({ trouble, counts }) => [
    ...textFinding(context, question, {
      id: `trouble.${trouble.id}`,
      at: { kind: 'trouble', trouble: trouble.id },
      whatIf,
    }),
    ...counts.map((count) =>
      find(context, question, {
        ...(forAll(counts).includes(count) ? {} : { readers: ['study'] as const }),
        id: `trouble.${trouble.id}.${recordOf(count)}`,
        depth: 'more',
        compute: troubleCount,
        inputs: { injury: value, trouble: trouble.id, record: recordOf(count) },
        evidence: [{ source: count.source, mark: count.mark }],
        whatIf,
      }),
    ),
  ]);
  if (silent.length === 0) return found;
  return [
    ...found,
    find(context, question, {
      id: 'trouble.notCounted',
      depth: 'more',
      compute: troublesNotCounted,
      inputs: { injury: value, troubles: silent.map(({ id }) => id) },
      whatIf,
    }),
  ];
};
