/**
 * What would change this at the next review, made by rule: the criteria that open the next stage and that send back, from the
 * content, and what a follow-up can find, by the way it moves the forecast of one point. A forecast knows only whether the point is
 * reached, so that all findings that fall short of it move it alike: later, with more odds of a healing problem.
 */
import { FOLLOW_UP_FINDINGS } from '../cases/schema';
import type { Content, Injury } from '../content/schema';
import type { Endpoint, OptionId, StageId } from '../ids';
import { type Forecast, healingAt, hundredOf, knownProblem, notThereAt, weekOf } from '../recovery';
import { type FollowUpFinding, followUpSays, type Says } from './follow-up-says';
import { criteriaIn } from './in-question';
import type { TextAddress } from './messages';

/** Of a forecast: week by which half of all are back, null when fewer ever are, and people of 100 with trouble. */
export interface Standing {
  readonly halfBackWeek: number | null;
  readonly trouble: number;
}

export interface ReviewMove {
  readonly says: Says;
  /** What a follow-up can find that says so. */
  readonly findings: readonly FollowUpFinding[];
  /** What the forecast would say then; null where the point is reached, and without a forecast. */
  readonly after: Standing | null;
}

export interface NextReview {
  /** Reached, not there yet, a problem: those of them that something can be found for. */
  readonly moves: readonly ReviewMove[];
  /** Findings that say nothing of this point. */
  readonly silent: readonly FollowUpFinding[];
  /** What the forecast says now. */
  readonly now: Standing | null;
}

export interface ReviewAsked {
  readonly endpoint: Endpoint;
  /** Of the review. */
  readonly week: number;
  /** As it stands now; null where none can be made. */
  readonly forecast: Forecast | null;
}

const ORDER: readonly Says[] = ['there', 'healing', 'notThere', 'problem'];

const standingOf = (forecast: Forecast): Standing => ({
  halfBackWeek: weekOf(forecast, 0.5),
  trouble: hundredOf(forecast).trouble,
});

const afterOf = (forecast: Forecast, week: number, says: Says): Standing | null => {
  if (says === 'there') return null;
  if (says === 'healing') return standingOf(healingAt(forecast, week));
  const still = notThereAt(forecast, week);
  return standingOf(says === 'problem' ? knownProblem(still) : still);
};

/** Criteria of a stage as addresses of texts, in the order of the content. */
export interface Criteria {
  readonly opens: readonly TextAddress[];
  readonly sendsBack: readonly TextAddress[];
}

export const criteriaOf = (
  { stages }: Pick<Content, 'stages'>,
  stage: StageId,
  inQuestion: readonly OptionId[],
  kind: Injury['kind'] | null,
): Criteria => {
  const record = stages.find((each) => each.id === stage);
  return {
    opens:
      record === undefined
        ? []
        : criteriaIn(record, inQuestion, kind).map((index) => ({ kind: 'stageOpens', stage, index })),
    sendsBack: record?.sendsBack.map((_, index) => ({ kind: 'stageSendsBack', stage, index })) ?? [],
  };
};

export const nextReview = ({ endpoint, week, forecast }: ReviewAsked): NextReview => {
  const saying = (says: Says | null) => FOLLOW_UP_FINDINGS.filter((each) => followUpSays(each, endpoint) === says);
  return {
    moves: ORDER.map((says) => ({
      says,
      findings: saying(says),
      after: forecast === null ? null : afterOf(forecast, week, says),
    })).filter(({ findings }) => findings.length > 0),
    silent: saying(null),
    now: forecast === null ? null : standingOf(forecast),
  };
};
