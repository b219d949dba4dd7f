/**
 * How often a trouble of healing was counted: rates of the content, and what arms of its studies counted under the same name. A figure of
 * a group, told with its people, number and interval; nothing here is of one person.
 */
import type { Content, Rate, Study, Trouble } from '../content/schema';
import type { CardId, InjuryId } from '../ids';
import { markOf } from './figures';
import { wilson } from './shares';
import type { TroubleCount } from './trouble-messages';

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
