/** What can go wrong with healing, each with what was counted of it, and what nobody counted. */
import type { Trouble } from '../content/schema';
import type { InjuryId } from '../ids';
import { compute, find, message } from './build';
import { confirmed, isApart, ownCounts, troubleRange } from './own-counts';
import type { Situation } from './situation';
import { textFinding } from './texts';
import { recordOf, troubleCounts } from './trouble-counts';
import type { TroubleCount } from './trouble-messages';
import type { Finding } from './types';

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

/** What groups treated like this person counted of one trouble, from the lowest to the highest: for patients, in place of each alone. */
const rangeFinding = (s: Situation, trouble: Trouble): readonly Finding[] => {
  const { context, injury, known } = s;
  if (injury === null || known.option === null || !confirmed(known.option)) return [];
  const inputs = { injury: injury.value, option: known.option.value, trouble: trouble.id };
  const counts = ownCounts(context.content, trouble, inputs.injury, inputs.option);
  if (!isApart(counts)) return [];
  return [
    find(context, trouble.question, {
      id: `trouble.${trouble.id}.range`,
      depth: 'more',
      compute: troubleRange,
      inputs,
      evidence: counts.map(({ source, mark }) => ({ source, mark })),
      readers: ['patient'],
      whatIf: injury.whatIf,
    }),
  ];
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
    ...rangeFinding(s, trouble),
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
