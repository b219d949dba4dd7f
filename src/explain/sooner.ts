/**
 * What keeps a short time from being read as leave: people of a study who were back at sport before the week in which running usually
 * begins here, and what went wrong with the very people whose time is told.
 */
import { type Endpoint, idOf, type OptionId, type StageId, type StudyId } from '../ids';
import { type RangeInputs, rangeFor } from './back-computes';
import { backClasses, type DependsInputs } from './back-depends';
import { compute, find, message } from './build';
import type { Context } from './context';
import { evidenceOf } from './figures';
import type { ArmEvent } from './messages';
import type { Situation } from './situation';
import { stagesOf } from './stage-computes';
import type { Finding } from './types';

/** These ask for a foot that runs. */
const RUNNING: readonly Endpoint[] = ['sport', 'match play', 'performance'];
const RUN = idOf<StageId>('run');

const weeksOf = (context: Context, inputs: RangeInputs): { readonly low: number; readonly run: number } | null => {
  const injury = context.content.injuries.find(({ id }) => id === inputs.injury);
  const run = injury && stagesOf(injury, inputs.option).find(({ stage }) => stage === RUN)?.weeksFrom;
  const low = rangeFor(context, inputs)?.weeks.lowHigh?.[0];
  return run == null || low === undefined ? null : { low, run };
};

export const backSooner = compute('back.sooner', (context, inputs: RangeInputs) => {
  const found = weeksOf(context, inputs);
  if (found === null) throw new RangeError(`no weeks of ${inputs.endpoint}, or of running, for ${inputs.injury}`);
  return message('backSooner', {
    stage: RUN,
    endpoint: inputs.endpoint,
    weeks: { value: found.low, unit: 'week' },
    from: { value: found.run, unit: 'week' },
  });
});

export const soonerFindings = (s: Situation, ranges: readonly RangeInputs[]): readonly Finding[] =>
  ranges
    .filter(({ endpoint }) => RUNNING.includes(endpoint))
    .flatMap((inputs) => {
      const found = weeksOf(s.context, inputs);
      if (found === null || found.low >= found.run) return [];
      return [
        find(s.context, 'back', {
          id: `sooner.${inputs.endpoint.replace(' ', '-')}`,
          depth: 'more',
          compute: backSooner,
          inputs,
          evidence: evidenceOf(rangeFor(s.context, inputs)?.arms ?? []),
          models: ['spreadOfStudies'],
          whatIf: s.injury?.whatIf ?? false,
        }),
      ];
    });

interface ClassSoonerInputs extends DependsInputs {
  /** Whose running begins later: the treatment of the case. */
  readonly option: OptionId;
}

const classWeeksOf = (
  context: Context,
  { option, ...of }: ClassSoonerInputs,
): { readonly low: number; readonly run: number } | null => {
  const told = backClasses.run(context, of);
  if (told.id !== 'backClasses') return null;
  const weeks = told.args.classes.flatMap(({ ranges }) =>
    ranges.map((each) => each.weeks.lowHigh?.[0] ?? each.weeks.value),
  );
  const injury = context.content.injuries.find(({ id }) => id === of.injury);
  const run = injury && stagesOf(injury, option).find(({ stage }) => stage === RUN)?.weeksFrom;
  return run == null || weeks.length === 0 ? null : { low: Math.min(...weeks), run };
};

export const backClassSooner = compute('back.classSooner', (context, inputs: ClassSoonerInputs) => {
  const found = classWeeksOf(context, inputs);
  if (found === null) throw new RangeError(`no weeks of classes, or of running, for ${inputs.injury}`);
  return message('backSooner', {
    stage: RUN,
    endpoint: inputs.endpoint,
    weeks: { value: found.low, unit: 'week' },
    from: { value: found.run, unit: 'week' },
  });
});

/** Weeks told class by class stand beside the steps of the treatment: four weeks to sport are no leave to run before week twelve. */
export const classSoonerFindings = (s: Situation, told: readonly Finding[], option: OptionId): readonly Finding[] =>
  told.flatMap(({ message: { id, args }, basis, whatIf }) => {
    if (id !== 'backClasses' || !RUNNING.includes(args.endpoint)) return [];
    const inputs: ClassSoonerInputs = { ...(basis.inputs as unknown as DependsInputs), option };
    const found = classWeeksOf(s.context, inputs);
    if (found === null || found.low >= found.run) return [];
    return [
      find(s.context, 'back', {
        id: 'classSooner',
        depth: 'claim',
        compute: backClassSooner,
        inputs,
        evidence: evidenceOf(args.classes.flatMap(({ ranges }) => ranges.flatMap(({ arms }) => arms))),
        models: ['spreadOfStudies'],
        whatIf,
      }),
    ];
  });

const HARMS: readonly ArmEvent['what'][] = ['failure', 'nonunion', 'refracture'];
/** Told from one in ten on: rarer ones stand with the options and the troubles. */
const OFTEN = 0.1;

interface Harm {
  readonly study: StudyId;
  readonly what: ArmEvent['what'];
  readonly count: number;
  readonly of: number;
  readonly unit: ArmEvent['unit'];
}

/** The commonest harm of each study of a range. */
const harmsOf = (context: Context, inputs: RangeInputs): readonly Harm[] =>
  (rangeFor(context, inputs)?.arms ?? []).flatMap(({ study, event, events }): readonly Harm[] => {
    const found = [...(event === null ? [] : [event]), ...events].flatMap(({ what, count, of, unit }) =>
      HARMS.includes(what) && count !== null && of !== null && count / of >= OFTEN
        ? [{ study, what, count, of, unit }]
        : [],
    );
    return found.length === 0 ? [] : [found.reduce((a, b) => (b.count / b.of > a.count / a.of ? b : a))];
  });

export const backHarm = compute(
  'back.harm',
  (context, { study, ...inputs }: RangeInputs & { readonly study: StudyId }) => {
    const found = harmsOf(context, inputs).find((harm) => harm.study === study);
    if (found === undefined) throw new RangeError(`nothing went wrong in ${study}`);
    return message('backHarm', { endpoint: inputs.endpoint, ...found });
  },
);

/** Once a study, with the first of its times that is told. */
export const harmFindings = (s: Situation, ranges: readonly RangeInputs[]): readonly Finding[] => {
  const told = new Set<StudyId>();
  return ranges.flatMap((inputs) =>
    harmsOf(s.context, inputs)
      .filter(({ study }) => !told.has(study))
      .map(({ study }) => {
        told.add(study);
        const arm = rangeFor(s.context, inputs)?.arms.find((each) => each.study === study);
        return find(s.context, 'back', {
          id: `harm.${study}`,
          depth: 'more',
          compute: backHarm,
          inputs: { ...inputs, study },
          evidence: evidenceOf(arm === undefined ? [] : [arm]),
          whatIf: s.injury?.whatIf ?? false,
        });
      }),
  );
};
