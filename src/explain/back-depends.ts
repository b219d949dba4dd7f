/**
 * Question 5 where no one treatment has weeks to tell: treatment beside treatment where their people are alike, class by class where
 * studies counted people of one class, and that sources disagree where they do.
 */
import type { Content, Contradiction } from '../content/schema';
import { ENDPOINTS, type Endpoint, type InjuryId, type OptionId } from '../ids';
import { backClash, rangeFor } from './back-computes';
import type { OptionRange } from './back-messages';
import { compute, find, message } from './build';
import { type CaseClasses, type ClassInputs, caseClasses, classesCollide, countedClasses } from './case-classes';
import type { Context } from './context';
import { ENDPOINT_ORDER } from './endpoint-order';
import { evidenceOf } from './figures';
import { tagOf } from './resolve';
import type { Situation } from './situation';
import type { Finding } from './types';

export interface DependsInputs extends ClassInputs {
  readonly injury: InjuryId;
  readonly endpoint: Endpoint;
}

const injuryOf = ({ injuries }: Content, id: InjuryId) => injuries.find((each) => each.id === id);

/** Of the usual treatments, or of those given: people counted by class may have had one that nobody named. */
const rangesOf = (
  context: Context,
  inputs: DependsInputs,
  options: readonly OptionId[] = injuryOf(context.content, inputs.injury)?.options ?? [],
): readonly OptionRange[] =>
  options.flatMap((option) => {
    const range = rangeFor(context, { ...inputs, option, level: null });
    return range === null ? [] : [{ option, ...range }];
  });

/** Treatments of this injury whose people were counted class by class. */
const countedOptions = ({ studies }: Content, injury: InjuryId): readonly OptionId[] => [
  ...new Set(studies.flatMap((s) => (s.classes && s.time && s.injuries.includes(injury) ? [s.option] : []))),
];
export const isCountedByClass = ({ context }: Situation, injury: InjuryId, option: OptionId): boolean =>
  countedOptions(context.content, injury).includes(option);

/** Two sides of it set people with and without an operation beside each other: it is about which of the two is quicker. */
const disagreementOn = (content: Content, injury: InjuryId): Contradiction | null => {
  const kindOf = (id: string) =>
    content.options.find((o) => o.id === content.studies.find((s) => s.id === id)?.option)?.kind;
  const compares = (side: Contradiction['sides'][number]): boolean => new Set(side.studies.map(kindOf)).size > 1;
  return (
    content.contradictions.find(
      ({ question, injuries, sides }) =>
        question === 'back' && injuries.includes(injury) && sides.filter(compares).length > 1,
    ) ?? null
  );
};

/** Sources disagree on which treatment of it is quicker. */
export const isDisputed = ({ context }: Situation, injury: InjuryId): boolean =>
  disagreementOn(context.content, injury) !== null;

/** Studies of it count their people by class. */
export const isByClass = ({ context, injuryRecord }: Situation): boolean =>
  injuryRecord !== null && countedClasses(context.content, injuryRecord).length > 0;

export const backDepends = compute(
  'back.depends',
  (context, { own, ...inputs }: DependsInputs & { readonly own?: OptionId }) => {
    const ranges = rangesOf(context, inputs);
    const { injury, endpoint } = inputs;
    const counted = ranges.flatMap(({ option, arms }) => [option, ...arms.flatMap((arm) => arm.alsoOptions ?? [])]);
    const without = (injuryOf(context.content, injury)?.options ?? []).filter(
      (option) => !counted.includes(option) && option !== own,
    ).length;
    const disagree = disagreementOn(context.content, injury)?.id ?? null;
    return message('backDepends', { injury, endpoint, ranges, own: own ?? null, without, disagree });
  },
);

export const backClasses = compute('back.classes', (context, inputs: DependsInputs & { readonly inLine?: true }) => {
  const { injury, endpoint, classes: own, inLine = false } = inputs;
  const record = injuryOf(context.content, injury);
  const counted = countedOptions(context.content, injury);
  const classes = (record === undefined ? [] : countedClasses(context.content, record))
    .filter(({ id }) => own?.includes(id) ?? true)
    .map((one) => ({
      index: record?.classification.indexOf(one) ?? -1,
      ranges: rangesOf(context, { injury, endpoint, classes: [one.id] }, counted),
    }));
  return message('backClasses', { injury, endpoint, known: own !== undefined, inLine, counted, classes });
});

export const backClassNotStated = compute('back.classNotStated', (context, inputs: Omit<DependsInputs, 'classes'>) =>
  message('backClassNotStated', { ...inputs, ranges: rangesOf(context, inputs) }),
);

/** The endpoint that most options have a range for, the earliest in people's order when several tie. */
const endpointOf = (s: Situation, rangesTo: (endpoint: Endpoint) => readonly OptionRange[]): Endpoint => {
  const order = ENDPOINT_ORDER[s.known.level?.value ?? 'any'];
  return order.reduce((a, b) => (rangesTo(b).length > rangesTo(a).length ? b : a), order[0] ?? ENDPOINTS[0]);
};

const armsOf = (ranges: readonly OptionRange[]) => ranges.flatMap(({ arms }) => arms);

/** In line is the bones' word; which class that is, the gap alone tells. */
const isInLine = ({ facts: { displacement } }: Situation): boolean =>
  displacement.state === 'stated' && !displacement.value.displaced;

const classFindings = (
  s: Situation,
  injury: InjuryId,
  ids: readonly string[],
  own: CaseClasses,
): readonly Finding[] => {
  const { context } = s;
  const counted = countedOptions(context.content, injury);
  const classed = (endpoint: Endpoint, of: readonly string[]) =>
    of.flatMap((id) => rangesOf(context, { injury, endpoint, classes: [id] }, counted));
  const endpoint = endpointOf(s, (to) => classed(to, ids));
  const shared = { models: ['spreadOfStudies'], whatIf: s.injury?.whatIf ?? false } as const;
  const tags = s.injury === null ? [] : [tagOf(s.injury)];
  const notStated = { injury, endpoint };
  const others = rangesOf(context, notStated);
  return [
    find(context, 'back', {
      id: 'headline',
      depth: 'sentence',
      compute: backClasses,
      inputs: {
        injury,
        endpoint,
        ...(own.classes === undefined ? {} : { classes: own.classes }),
        ...(own.classes === undefined && isInLine(s) ? { inLine: true as const } : {}),
      },
      evidence: evidenceOf(armsOf(classed(endpoint, own.classes ?? ids))),
      claims: [...tags, ...own.tags],
      ...shared,
    }),
    ...(others.length === 0
      ? []
      : [
          find(context, 'back', {
            id: 'classNotStated',
            depth: 'claim',
            compute: backClassNotStated,
            inputs: notStated,
            evidence: evidenceOf(armsOf(others)),
            claims: tags,
            ...shared,
          }),
        ]),
  ];
};

export const dependsFindings = (s: Situation, injury: InjuryId): readonly Finding[] => {
  const { context, injuryRecord } = s;
  const counted = injuryRecord === null ? [] : countedClasses(context.content, injuryRecord);
  const collide = classesCollide(s);
  if (counted.length > 0 && collide !== null)
    return [
      find(context, 'back', {
        id: 'headline',
        depth: 'sentence',
        compute: backClash,
        inputs: {},
        claims: collide,
        unsure: 'contradiction',
        whatIf: s.injury?.whatIf ?? false,
      }),
    ];
  if (counted.length > 0)
    return classFindings(
      s,
      injury,
      counted.map(({ id }) => id),
      caseClasses(s),
    );
  const endpoint = endpointOf(s, (to) => rangesOf(context, { injury, endpoint: to }));
  const ranges = rangesOf(context, { injury, endpoint });
  const disagree = disagreementOn(context.content, injury);
  const own = s.known.option?.value ?? null;
  return [
    find(context, 'back', {
      id: 'headline',
      depth: 'sentence',
      compute: backDepends,
      inputs: { injury, endpoint, ...(own === null || ranges.some(({ option }) => option === own) ? {} : { own }) },
      evidence: [...(disagree?.sides ?? []).map(({ evidence }) => evidence), ...evidenceOf(armsOf(ranges))],
      claims: s.injury === null ? [] : [tagOf(s.injury)],
      ...(ranges.length === 0 ? { unsure: 'notStated' as const } : {}),
      models: ['spreadOfStudies'],
      whatIf: s.injury?.whatIf ?? false,
    }),
  ];
};
