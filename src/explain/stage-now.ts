/** The stage that the person is in, by what the clinic said or ticked. */
import type { Facts } from '../cases/schema';
import type { Injury } from '../content/schema';
import type { CriterionId, FollowUpFinding, OptionId, StageId } from '../ids';
import { weeksBetween } from '../recovery';
import { criteriaIn } from './in-question';
import { isAnew, isSecond } from './second-treatment';
import type { Situation } from './situation';
import { stagesOf } from './stage-computes';

export const metIn = ({ facts }: Situation, stage: StageId): readonly CriterionId[] =>
  Object.hasOwn(facts.clinic.stages, stage)
    ? (facts.clinic.stages[stage]?.met ?? []).map(({ criterion }) => criterion)
    : [];

/** Where the clinic says that the person is; else the first stage that has a criterion which is not ticked. Never by the calendar. */
export const stageNow = (
  s: Situation,
  injury: Injury,
  option: OptionId | null,
): { readonly stage: StageId; readonly stated: boolean } | null => {
  const stages = stagesOf(injury, option).map(({ stage }) => stage);
  const said = s.facts.clinic.stage;
  if (said !== null && stages.includes(said)) return { stage: said, stated: true };
  const open = stages.find((stage) => {
    const record = s.context.content.stages.find(({ id }) => id === stage);
    if (record === undefined) return false;
    const met = metIn(s, stage);
    return criteriaIn(record, option === null ? [] : [option], injury.kind).some(
      (index) => !met.some((each) => each === record.opensNext[index]?.id),
    );
  });
  const stage = open ?? stages.at(-1);
  return stage === undefined ? null : { stage, stated: false };
};

/** The clinic ticked what was met: it keeps the steps itself. */
const isTicked = ({ clinic }: Facts): boolean =>
  Object.values(clinic.stages).some((notes) => (notes?.met.length ?? 0) > 0);

/** What nobody finds in the first step any more. */
const BEYOND: ReadonlySet<FollowUpFinding> = new Set<FollowUpFinding>(['walking without pain', 'training', 'united']);

/**
 * Nobody said or ticked a stage, and a follow-up came after the weeks in which the first one usually ends, or found what belongs to a
 * later one: to go on as if the person were still in it would forbid or allow what the clinic has long decided. So the stage is not known.
 */
export const isStagePassed = (s: Situation, injury: Injury, option: OptionId | null): boolean => {
  const { facts, known } = s;
  const now = stageNow(s, injury, option);
  if (now === null || now.stated || known.brokenAgain !== null) return false;
  if (isTicked(facts)) return false;
  // Changed on the way: the first step of the new one is not where the person begins.
  if (isSecond(s) && !isAnew(s)) return true;
  const { start } = known;
  const since = facts.followUps.filter(({ value }) => start === null || weeksBetween(start.value, value.on) >= 0);
  if (since.some(({ value }) => BEYOND.has(value.finding))) return true;
  if (facts.outcomes.some(({ value }) => value.result === 'reached')) return true;
  const ends = stagesOf(injury, option).find(({ stage }) => stage === now.stage)?.weeksTo ?? null;
  return start !== null && ends !== null && since.some(({ value }) => weeksBetween(start.value, value.on) > ends);
};

/** A confirmed follow-up found what belongs to a later step, and nothing since speaks against the bone: no order of the first step holds. */
export const isFoundBeyond = ({ facts, known }: Situation): boolean =>
  !isTicked(facts) &&
  known.brokenAgain === null &&
  known.healsBadly === null &&
  facts.followUps.some(
    ({ status, value }) =>
      status === 'confirmed' &&
      BEYOND.has(value.finding) &&
      (known.start === null || weeksBetween(known.start.value, value.on) >= 0),
  );
