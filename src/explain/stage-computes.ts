/** What is computed of the stages of question 5: which hold for an option, their usual weeks and dates, what may be done in them. */
import type { Injury, Stage } from '../content/schema';
import type { BoneId, InjuryId, OptionId, StageId, StageSheetId, WeightPracticeId } from '../ids';
import type { ShareLoad, ShareWay } from '../mechanics';
import { addWeeks, calendarOf } from '../recovery';
import type { IsoDate, Quantity } from '../units';
import { statedBy } from './agreed';
import { compute, message } from './build';
import type { Context } from './context';
import { hundredths, sizeMayBeTold } from './how-computes';
import { REFERENCE_ACTIVITY } from './loads';
import type { MessageOf } from './messages';
import { type ShareRun, shareLoadsFor } from './stage-loads';
import type { ShareRatio, WeeksElsewhere } from './stage-messages';

/** The stages that hold for an option: its own and those of every option, in the order of the content. */
export const stagesOf = (injury: Injury, option: OptionId | null): Injury['stages'] => {
  const own = injury.stages.filter((s) => s.option === null || s.option === option);
  if (own.length > 0) return own;
  const first = injury.stages[0]?.option ?? null;
  return injury.stages.filter((s) => s.option === first);
};

interface StageInputs {
  readonly injury: InjuryId;
  readonly option: OptionId | null;
  readonly index: number;
  readonly start: IsoDate | null;
  /** Weeks that the clinic of this case set itself. */
  readonly own: { readonly from: number; readonly to: number } | null;
  /** Why the usual weeks are not this person's. */
  readonly elsewhere: WeeksElsewhere | null;
}

const ownWeeks = ({ own, start }: StageInputs): MessageOf<'stageUsual'>['args']['own'] =>
  own === null
    ? null
    : {
        weeks: { value: own.from, unit: 'week', lowHigh: [own.from, own.to] },
        dates: start === null ? null : { from: addWeeks(start, own.from), to: addWeeks(start, own.to) },
      };

type Weeks = Pick<ReturnType<typeof calendarOf>[number], 'fromWeek' | 'toWeek'>;
/** Later than the step before and before its end: two that begin on one day go together (`next-check.ts`). */
const beginsWithin = ({ fromWeek }: Weeks, before: Weeks): boolean =>
  fromWeek !== null &&
  before.fromWeek !== null &&
  before.fromWeek < fromWeek &&
  (before.toWeek === null || fromWeek < before.toWeek);

export const stageUsual = compute('back.stage', ({ content }, inputs: StageInputs) => {
  const injury = content.injuries.find((i) => i.id === inputs.injury);
  if (injury === undefined) throw new RangeError(`no injury ${inputs.injury}`);
  const stages = stagesOf(injury, inputs.option);
  const row = stages[inputs.index];
  const calendar = calendarOf(stages, inputs.start);
  const [before, day] = [calendar[inputs.index - 1], calendar[inputs.index]];
  if (row === undefined || day === undefined) throw new RangeError(`no stage ${inputs.index} for ${inputs.injury}`);
  const { fromWeek, toWeek, fromDate, toDate } = day;
  const weeks: Quantity | null =
    fromWeek === null ? null : { value: fromWeek, unit: 'week', lowHigh: [fromWeek, toWeek ?? fromWeek] };
  const openEnded = toWeek === null;
  const { elsewhere } = inputs;
  const shared = { stage: row.stage, number: inputs.index + 1, of: stages.length, own: ownWeeks(inputs) };
  return elsewhere === null
    ? message('stageUsual', {
        ...shared,
        weeks,
        openEnded,
        dates: fromDate === null ? null : { from: fromDate, to: toDate },
        after: before !== undefined && beginsWithin(day, before) ? inputs.index : null,
        elsewhere: null,
      })
    : message('stageUsual', {
        ...shared,
        weeks: null,
        openEnded: true,
        dates: null,
        after: null,
        elsewhere: { ...elsewhere, weeks, openEnded },
      });
});

const stageIn = ({ content }: Context, id: StageId): Stage => {
  const found = content.stages.find((s) => s.id === id);
  if (found === undefined) throw new RangeError(`no stage ${id}`);
  return found;
};

export type StageWeight = Stage['today']['weights'][number];
/** The weight a stage allows with an option: the row that names it, else the one that names none. */
export const weightOf = (stage: Stage, option: OptionId | null): StageWeight | null =>
  stage.today.weights.find(({ options }) => option !== null && options.includes(option)) ??
  stage.today.weights.find(({ options }) => options.length === 0) ??
  null;

/** Of body weight. */
export interface ShareBand {
  readonly low: number;
  readonly high: number;
}

const band = ({ low, high }: ShareBand, unit: 'share' | 'kg', of = 1): Quantity => {
  const ends = unit === 'kg' ? [Math.round(low * of), Math.round(high * of)] : [low * of, high * of];
  const [from, to] = ends as [number, number];
  return { value: (from + to) / 2, unit, lowHigh: [from, to] };
};

/** `massKg`: as the case states it; `own`: a share that the clinic of this case set itself. */
export const stageToday = compute(
  'back.stageToday',
  (
    context,
    inputs: {
      readonly stage: StageId;
      readonly option: OptionId | null;
      readonly own: ShareBand | null;
      readonly massKg: number | null;
    },
  ) => {
    const { stage, option, own, massKg } = inputs;
    const share = own ?? weightOf(stageIn(context, stage), option)?.share ?? null;
    return message('stageToday', {
      stage,
      own: own !== null,
      treated: option !== null,
      share: share === null ? null : band(share, 'share'),
      kilograms: share === null || massKg === null ? null : band(share, 'kg', massKg),
    });
  },
);

export const weightNotKnown = compute('back.weightNotKnown', () => message('weightNotKnown', {}));

export const stageOvershoot = compute(
  'back.stageOvershoot',
  ({ content }, inputs: { readonly stage: StageId; readonly practice: WeightPracticeId; readonly massKg: number }) => {
    const found = content.weightPractice.find((p) => p.id === inputs.practice)?.overshoot;
    if (found === undefined) throw new RangeError(`${inputs.practice} states no overshoot`);
    const kg = (share: number): Quantity => ({ value: Math.round(share * inputs.massKg), unit: 'kg' });
    const { stage, practice } = inputs;
    return message('stageOvershoot', { stage, practice, told: kg(found.told), reached: kg(found.reached) });
  },
);

export interface SheetInputs {
  readonly sheet: StageSheetId;
  readonly of: readonly OptionId[];
}
export const stageSheet = compute('back.stageSheet', ({ content }, inputs: SheetInputs) => {
  const sheet = content.stageSheets.find((s) => s.id === inputs.sheet);
  if (sheet === undefined) throw new RangeError(`no sheet ${inputs.sheet}`);
  const { weeksFrom, weeksTo } = sheet;
  return message('stageSheet', {
    sheet: inputs.sheet,
    weeks: weeksFrom === null ? null : { value: weeksFrom, unit: 'week', lowHigh: [weeksFrom, weeksTo ?? weeksFrom] },
    openEnded: weeksTo === null,
    of: inputs.of,
  });
});

/** The frame's one joint of a toe is the first. */
const FIRST_RAY: BoneId = 'metatarsal1';

/** `shares`: of all stages of the case, run in one go; `band`: of this one, its ends among them. */
export interface StageLoadInputs extends ShareRun {
  readonly stage: StageId;
  readonly way: ShareWay;
  readonly band: ShareBand;
  readonly own: boolean;
}
/** The two ends of a band, once each; nothing for an end of none. */
export const sharesOf = ({ low, high }: ShareBand): readonly number[] =>
  [...new Set([low, high])].filter((share) => share > 0);

const atShare = (found: ShareLoad): ShareRatio => ({
  share: { value: found.share, unit: 'share' },
  ratio: hundredths(found.ratio),
});

export const loadsOfWay = (context: Context, inputs: Omit<StageLoadInputs, 'stage' | 'own'>): readonly ShareLoad[] => {
  const { foot, bone, massKg, sMm, shares, way } = inputs;
  const ends = sharesOf(inputs.band);
  return shareLoadsFor(context, { foot, bone, massKg, sMm, shares }).filter(
    ({ id, share }) => id === way && ends.includes(share),
  );
};

export const stageLoad = compute('back.stageLoad', (context, inputs: StageLoadInputs) => {
  const found = loadsOfWay(context, inputs);
  const [low, high] = [found[0], found.at(-1)];
  if (low === undefined || high === undefined) throw new RangeError(`${inputs.way} finds no answer`);
  const { stage, own, bone, way } = inputs;
  const less = statedBy(high.less);
  return message('stageLoad', {
    stage,
    own,
    bone,
    way,
    at: high.at,
    reference: REFERENCE_ACTIVITY,
    speaks: way !== 'stiffSole' || bone === FIRST_RAY,
    low: atShare(low),
    high: atShare(high),
    ranking: !sizeMayBeTold(low) || !sizeMayBeTold(high) || less.agreed.contrary === true,
    less: less.holds,
    agreed: less.agreed,
  });
});
export const stageLoadPending = compute('back.stageLoadPending', (_, inputs: { readonly stage: StageId }) =>
  message('stageLoadPending', inputs),
);
export const stageNoLoad = compute(
  'back.stageNoLoad',
  (_, inputs: { readonly stage: StageId; readonly own: boolean }) => message('stageNoLoad', inputs),
);
