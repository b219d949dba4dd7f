/** The stage that the person is in, by what the clinic said or ticked. */
import type { Injury } from '../content/schema';
import type { CriterionId, OptionId, StageId } from '../ids';
import { criteriaIn } from './in-question';
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
