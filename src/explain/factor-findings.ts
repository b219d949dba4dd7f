/**
 * Published sizes of what goes along with slow healing, or with such a break, beside the forecast and not inside it. Those the case
 * names come first; of each, sizes of healing before sizes of getting it. Where a factor's sizes of healing point apart, that is said.
 */
import type { Content, Effect, Evidence, Factor } from '../content/schema';
import type { PrintedWaits, Waits } from '../content/schema-care';
import type { FactorId } from '../ids';
import { compute, find, message } from './build';
import { markOf } from './figures';
import type { ClaimTag } from './messages';
import { tagOf } from './resolve';
import { isUnder12, type Situation } from './situation';
import { textFinding } from './texts';
import type { Finding } from './types';

/** More or less often than without, where the whole interval lies on one side of 1. */
export type EffectSays = 'more' | 'less' | 'unclear';
export const effectSays = ({ low, high }: Pick<Effect, 'low' | 'high'>): EffectSays =>
  low > 1 ? 'more' : high < 1 ? 'less' : 'unclear';

const ordered = (factor: Factor): readonly number[] =>
  factor.effects
    .map((_, index) => index)
    .sort((a, b) => Number(factor.effects[a]?.about !== 'healing') - Number(factor.effects[b]?.about !== 'healing'));

export const factorEffect = compute(
  'back.factorEffect',
  ({ content }, { factor, index }: { readonly factor: FactorId; readonly index: number }) => {
    const effect = content.factors.find(({ id }) => id === factor)?.effects[index];
    if (effect === undefined) throw new RangeError(`no size ${index} of ${factor}`);
    return message('factorEffect', {
      factor,
      index,
      measure: effect.measure,
      about: effect.about,
      bones: effect.bones,
      size: { value: effect.value, unit: 'times', lowHigh: [effect.low, effect.high] },
      n: effect.n,
      says: effectSays(effect),
    });
  },
);

/** Weeks as printed: where they are an arm of a study, the arm's own. */
const printedIn = (
  { studies }: Pick<Content, 'studies'>,
  waits: Waits,
): (Omit<PrintedWaits, 'of'> & { readonly centre: 'mean' | 'median' }) | null => {
  if ('weeks' in waits) return { ...waits, centre: 'mean' };
  const study = studies.find(({ id }) => id === waits.fromStudy);
  if (study === undefined || study.time === null) return null;
  const { endpoint, centre, centreWeeks } = study.time;
  const evidence: Evidence = { source: study.source, mark: markOf(study) };
  return { endpoint, centre, weeks: centreWeeks, withoutWeeks: null, p: null, n: study.n, evidence };
};

export const factorWaits = compute(
  'back.factorWaits',
  ({ content }, { factor, index }: { readonly factor: FactorId; readonly index: number }) => {
    const given = content.factors.find(({ id }) => id === factor)?.waits[index];
    const waits = given === undefined ? null : printedIn(content, given);
    if (waits === null) throw new RangeError(`no weeks ${index} of ${factor}`);
    const { endpoint, centre, weeks, withoutWeeks, p, n } = waits;
    return message('factorWaits', {
      factor,
      index,
      endpoint,
      centre,
      weeks: { value: weeks, unit: 'week' },
      without: withoutWeeks === null ? null : { value: withoutWeeks, unit: 'week' },
      p,
      n,
    });
  },
);

export const factorsDisagree = compute('back.factorsDisagree', (_, { factor }: { readonly factor: FactorId }) =>
  message('factorsDisagree', { factor }),
);

/** Sizes of the same thing that do not say the same, or something published against them. */
const disagrees = ({ effects, against }: Factor): boolean =>
  against.length > 0 || new Set(effects.filter(({ about }) => about === 'healing').map(effectSays)).size > 1;

const findingsOf = (s: Situation, factor: Factor, claims: readonly ClaimTag[]): readonly Finding[] => [
  ...ordered(factor).flatMap((index) => {
    const effect = factor.effects[index];
    return effect === undefined
      ? []
      : [
          find(s.context, 'back', {
            id: `factor.${factor.id}.${index + 1}`,
            depth: 'more',
            compute: factorEffect,
            inputs: { factor: factor.id, index },
            evidence: [effect.evidence],
            claims,
          }),
        ];
  }),
  ...factor.waits.map((waits, index) =>
    find(s.context, 'back', {
      id: `factor.${factor.id}.waits.${index + 1}`,
      depth: 'more',
      compute: factorWaits,
      inputs: { factor: factor.id, index },
      evidence: [printedIn(s.context.content, waits)?.evidence].flatMap((each) => each ?? []),
      claims,
    }),
  ),
  ...factor.against.flatMap((_, index) =>
    textFinding(s.context, 'back', {
      id: `factor.${factor.id}.against.${index + 1}`,
      at: { kind: 'factorAgainst', factor: factor.id, index },
      claims,
    }),
  ),
  ...(disagrees(factor)
    ? [
        find(s.context, 'back', {
          id: `factor.${factor.id}.disagree`,
          depth: 'more',
          compute: factorsDisagree,
          inputs: { factor: factor.id },
          evidence: [...factor.effects, ...factor.against].map(({ evidence }) => evidence),
          claims,
        }),
      ]
    : []),
  ...(factor.limit === null
    ? []
    : textFinding(s.context, 'back', {
        id: `factor.${factor.id}.limit`,
        at: { kind: 'factorLimit', factor: factor.id },
      })),
];

/** What the case says of a factor: as a risk, or by a subject of its own. Only the highest level is what was counted. */
const tagsOf = ({ facts, known }: Situation, factors: readonly Factor[]): ReadonlyMap<FactorId, ClaimTag> => {
  const { level } = known;
  const atLevel = level === null || level.whatIf || level.value !== 'professional' ? [] : [tagOf(level)];
  return new Map([
    ...facts.riskFactors.map(({ value, status, id }) => [value, { status, claims: [id] } satisfies ClaimTag] as const),
    ...factors.flatMap(({ id, saidBy }) => (saidBy === 'level' ? atLevel.map((tag) => [id, tag] as const) : [])),
  ]);
};

export const factorFindings = (s: Situation): readonly Finding[] => {
  const { factors } = s.context.content;
  const tags = tagsOf(s, factors);
  const usual = new Set(s.injuryRecord?.factors ?? []);
  const child = isUnder12(s);
  const shown = factors.filter(
    ({ id, effects, waits, besideForecastOf, adultsOnly }) =>
      effects.length + waits.length > 0 &&
      !(child && adultsOnly && !tags.has(id)) &&
      (tags.has(id) || usual.has(id) || besideForecastOf.some((injury) => injury === s.injury?.value)),
  );
  return [...shown]
    .sort((a, b) => Number(tags.has(b.id)) - Number(tags.has(a.id)))
    .flatMap((factor) => {
      const tag = tags.get(factor.id);
      return findingsOf(s, factor, tag === undefined ? [] : [tag]);
    });
};
