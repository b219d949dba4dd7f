/**
 * What a patient asks of the way back after the weight of today: which step this is, what the next check decides, and when it usually
 * comes. A check stands where a stage usually ends (common practice); its day is for the clinic to give.
 */
import type { Injury } from '../content/schema';
import type { InjuryId, OptionId, StageId } from '../ids';
import { calendarOf } from '../recovery';
import type { IsoDate } from '../units';
import { compute, find, message } from './build';
import { tagOf } from './resolve';
import type { Situation } from './situation';
import { stagesOf } from './stage-computes';
import { isStagePassed, stageNow } from './stage-now';
import type { Finding } from './types';
import { weeksElsewhere } from './weeks-hold';

/** By then a wound has been looked at and its stitches are out (common practice). */
const WOUND_WEEKS = 3;

interface CheckInputs {
  readonly injury: InjuryId;
  readonly option: OptionId;
  readonly stage: StageId;
  readonly stated: boolean;
  readonly start: IsoDate | null;
  /** Week in which this stage ends by the clinic of this case. */
  readonly ownWeek: number | null;
  /** Whether the usual weeks are this person's. */
  readonly hold: boolean;
}

export const nextCheck = compute('back.nextCheck', ({ content }, inputs: CheckInputs) => {
  const injury = content.injuries.find(({ id }) => id === inputs.injury);
  if (injury === undefined) throw new RangeError(`no injury ${inputs.injury}`);
  const { stage, stated, start, ownWeek, hold } = inputs;
  const rows = stagesOf(injury, inputs.option);
  const at = rows.findIndex((row) => row.stage === stage);
  if (at < 0) throw new RangeError(`no stage ${stage} of ${inputs.injury}`);
  const calendar = calendarOf(rows, start);
  // Where weight is allowed from the first day two stages begin together, and no check stands between them.
  const begun = calendar[at]?.fromWeek ?? null;
  const together = hold && begun !== null && calendar[at + 1]?.fromWeek === begun;
  const until = together ? at + 1 : at;
  const usual = calendar[until];
  const week = ownWeek ?? (hold ? (usual?.toWeek ?? null) : null);
  const operated = content.options.some(({ id, kind }) => id === inputs.option && kind === 'operative');
  return message('nextCheck', {
    wound: at === 0 && operated && (week === null || week > WOUND_WEEKS),
    stage,
    also: together ? (rows[until]?.stage ?? null) : null,
    next: rows[until + 1]?.stage ?? null,
    stated,
    own: ownWeek !== null,
    ask: ownWeek === null && !hold,
    week: week === null ? null : { value: week, unit: 'week' },
    date: ownWeek === null && hold ? (usual?.toDate ?? null) : null,
  });
});

export const stepNotKnown = compute('back.stepNotKnown', () => message('stepNotKnown', {}));

export const nextCheckFinding = (s: Situation, injury: Injury): readonly Finding[] => {
  const { option, start, brokenAgain } = s.known;
  // Without a treatment, or once the bone broke again, there is no way back to be on.
  if (option === null || brokenAgain !== null) return [];
  const now = stageNow(s, injury, option.value);
  if (now === null) return [];
  const shared = { id: 'nextCheck', depth: 'claim', readers: ['patient'], whatIf: s.injury?.whatIf ?? false } as const;
  if (isStagePassed(s, injury, option.value))
    return [find(s.context, 'back', { ...shared, compute: stepNotKnown, inputs: {}, unsure: 'notStated' })];
  const hold = weeksElsewhere(s) === null;
  const row = stagesOf(injury, option.value).find(({ stage }) => stage === now.stage);
  const own = Object.hasOwn(s.facts.clinic.stages, now.stage) ? s.facts.clinic.stages[now.stage]?.weeks : null;
  return [
    find(s.context, 'back', {
      ...shared,
      compute: nextCheck,
      inputs: {
        injury: injury.id,
        option: option.value,
        ...now,
        start: start?.value ?? null,
        ownWeek: own?.to ?? null,
        hold,
      },
      evidence: row === undefined || !hold ? [] : [row.evidence],
      claims: [option, start].flatMap((known) => (known === null || known.whatIf ? [] : [tagOf(known)])),
    }),
  ];
};
