/**
 * What keeps a short time from being read as leave: people of a study who were back at sport no later than the week in which running
 * usually begins here, or while a step before it still goes on, and what went wrong with the very people whose time is told.
 */
import type { Injury } from '../content/schema';
import { type Endpoint, type InjuryId, idOf, type OptionId, type StageId, type StudyId } from '../ids';
import { type RangeInputs, rangeFor } from './back-computes';
import { backClasses, type DependsInputs } from './back-depends';
import { compute, find, message } from './build';
import type { Context } from './context';
import { evidenceOf } from './figures';
import type { ArmEvent } from './messages';
import { tagOf } from './resolve';
import type { Situation } from './situation';
import { stagesOf } from './stage-computes';
import type { Finding } from './types';
import { weeksElsewhere } from './weeks-hold';

/** These ask for a foot that runs. */
export const RUNNING: readonly Endpoint[] = ['sport', 'match play', 'performance'];
const RUN = idOf<StageId>('run');

interface Early {
  /** The step that begins in that week, or is not over before it. */
  readonly stage: StageId;
  readonly week: number;
}

/** What the steps say of running: the week in which it begins; without one, the last step before it that has an end. */
const runningIn = (context: Context, id: InjuryId, option: OptionId): Early | null => {
  const injury = context.content.injuries.find((each) => each.id === id);
  if (injury === undefined) return null;
  const rows = stagesOf(injury, option);
  const at = rows.findIndex(({ stage }) => stage === RUN);
  const run = rows[at];
  if (run === undefined) return null;
  if (run.weeksFrom !== null) return { stage: RUN, week: run.weeksFrom };
  const before = rows.slice(0, at).findLast(({ weeksTo }) => weeksTo !== null);
  return before?.weeksTo == null ? null : { stage: before.stage, week: before.weeksTo };
};

/** Sport is not reached in the week in which running begins. */
const earlyIn = (
  context: Context,
  of: { readonly injury: InjuryId; readonly option: OptionId },
  weeks: readonly number[],
): (Early & { readonly low: number; readonly high: number }) | null => {
  const run = runningIn(context, of.injury, of.option);
  const early = run === null ? [] : weeks.filter((each) => each <= run.week);
  return run === null || early.length === 0 ? null : { ...run, low: Math.min(...early), high: Math.max(...early) };
};

const soonerMessage = (
  endpoint: Endpoint,
  { stage, week, low, high }: Early & { readonly low: number; readonly high: number },
) =>
  message('backSooner', {
    stage,
    begins: stage === RUN,
    endpoint,
    weeks: { value: low, unit: 'week', lowHigh: [low, high] },
    from: { value: week, unit: 'week' },
  });

const weeksOf = (context: Context, inputs: RangeInputs) =>
  earlyIn(context, inputs, rangeFor(context, inputs)?.weeks.lowHigh ?? []);

export const backSooner = compute('back.sooner', (context, inputs: RangeInputs) => {
  const found = weeksOf(context, inputs);
  if (found === null) throw new RangeError(`no weeks of ${inputs.endpoint}, or of running, for ${inputs.injury}`);
  return soonerMessage(inputs.endpoint, found);
});

/** Held against steps that are this person's own: another's say nothing of what is early here. */
export const soonerFindings = (s: Situation, ranges: readonly RangeInputs[]): readonly Finding[] =>
  (weeksElsewhere(s) === null ? ranges : [])
    .filter(({ endpoint }) => RUNNING.includes(endpoint))
    .flatMap((inputs) => {
      const found = weeksOf(s.context, inputs);
      if (found === null) return [];
      return [
        find(s.context, 'back', {
          id: `sooner.${inputs.endpoint.replace(' ', '-')}`,
          // Beside the weeks that lead it stands where these do.
          depth: inputs === ranges[0] ? 'claim' : 'more',
          compute: backSooner,
          inputs,
          evidence: evidenceOf(rangeFor(s.context, inputs)?.arms ?? []),
          models: ['spreadOfStudies'],
          whatIf: s.injury?.whatIf ?? false,
        }),
      ];
    });

export const backRunning = compute(
  'back.running',
  (context, { injury, option }: { readonly injury: InjuryId; readonly option: OptionId }) => {
    const run = runningIn(context, injury, option);
    return message('backRunning', { week: run?.stage === RUN ? { value: run.week, unit: 'week' } : null });
  },
);

/** A patient asks when they may run: beside the weeks, where nothing there says it and the steps are their own. */
export const runningFindings = (s: Situation, injury: Injury): readonly Finding[] => {
  const { option } = s.known;
  if (option === null || weeksElsewhere(s) !== null) return [];
  const row = stagesOf(injury, option.value).find(({ stage }) => stage === RUN);
  if (row === undefined) return [];
  return [
    find(s.context, 'back', {
      id: 'running',
      depth: 'claim',
      compute: backRunning,
      inputs: { injury: injury.id, option: option.value },
      evidence: [row.evidence],
      claims: option.whatIf ? [] : [tagOf(option)],
      readers: ['patient'],
      whatIf: s.injury?.whatIf ?? false,
    }),
  ];
};

interface ClassSoonerInputs extends DependsInputs {
  /** Whose running begins later: the treatment of the case. */
  readonly option: OptionId;
}

const classWeeksOf = (context: Context, { option, ...of }: ClassSoonerInputs) => {
  const told = backClasses.run(context, of);
  if (told.id !== 'backClasses') return null;
  const weeks = told.args.classes.flatMap(({ ranges }) =>
    ranges.map((each) => each.weeks.lowHigh?.[0] ?? each.weeks.value),
  );
  return earlyIn(context, { injury: of.injury, option }, weeks);
};

export const backClassSooner = compute('back.classSooner', (context, inputs: ClassSoonerInputs) => {
  const found = classWeeksOf(context, inputs);
  if (found === null) throw new RangeError(`no weeks of classes, or of running, for ${inputs.injury}`);
  return soonerMessage(inputs.endpoint, found);
});

/** Weeks told class by class stand beside the steps of the treatment: four weeks to sport are no leave to run before week twelve. */
export const classSoonerFindings = (s: Situation, told: readonly Finding[], option: OptionId): readonly Finding[] =>
  (weeksElsewhere(s) === null ? told : []).flatMap(({ message: { id, args }, basis, whatIf }) => {
    if (id !== 'backClasses' || !RUNNING.includes(args.endpoint)) return [];
    const inputs: ClassSoonerInputs = { ...(basis.inputs as unknown as DependsInputs), option };
    const found = classWeeksOf(s.context, inputs);
    if (found === null) return [];
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
