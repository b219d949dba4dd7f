/**
 * What would change this at the next review, for every case with a treatment: the criteria of the stage that the person is in, and
 * what a follow-up could find of the point that is asked for first: with the odds that it would leave where odds are given, with its
 * direction alone where none are. Reviews are taken as six weeks apart (common practice). Where it has ended, or the bone broke again
 * after the treatment in force, there is nothing of it left to review.
 */
import type { Injury } from '../content/schema';
import type { CriterionId, Endpoint, InjuryId, OptionId, StageId } from '../ids';
import { compute, find, message } from './build';
import { ENDPOINT_ORDER } from './endpoint-order';
import type { Says } from './follow-up-says';
import { type CaseForecast, eventsFor, evidenceFor, firstForecast } from './forecast';
import { explainedForecast, type ForecastInputs } from './forecast-steps';
import { criteriaOf, nextReview } from './next-review';
import { tagOf } from './resolve';
import type { Situation } from './situation';
import { stagesOf } from './stage-computes';
import { metIn, stageNow } from './stage-now';
import { textAt } from './texts';
import type { Finding } from './types';

const WEEKS_BETWEEN_REVIEWS = 6;

const reviewOf = (inputs: ForecastInputs, context: Situation['context']) => {
  const now = explainedForecast(context, inputs).steps.at(-1)?.forecast ?? null;
  const week = Math.ceil(now?.afterWeek ?? 0) + WEEKS_BETWEEN_REVIEWS;
  return { week, ...nextReview({ endpoint: inputs.endpoint, week, forecast: now }) };
};

export const reviewMove = compute(
  'back.reviewMove',
  (context, { says, ...inputs }: ForecastInputs & { readonly says: Says }) => {
    const { week, moves, now } = reviewOf(inputs, context);
    const move = moves.find((each) => each.says === says);
    if (move === undefined || now === null) throw new RangeError(`nothing a review could find says ${says}`);
    const half = (at: number | null) =>
      at === null ? null : { value: Math.round(10 * at) / 10, unit: 'week' as const };
    return message('reviewMove', {
      endpoint: inputs.endpoint,
      week: { value: week, unit: 'week' },
      says,
      findings: move.findings,
      now: { half: half(now.halfBackWeek), trouble: now.trouble },
      after: move.after === null ? null : { half: half(move.after.halfBackWeek), trouble: move.after.trouble },
    });
  },
);

/** Without a forecast the week of the review plays no part. */
const pointsTo = (endpoint: Endpoint) => nextReview({ endpoint, week: 0, forecast: null }).moves;

export const reviewPoints = compute(
  'back.reviewPoints',
  (_, { endpoint, says }: { readonly endpoint: Endpoint; readonly says: Says }) => {
    const findings = pointsTo(endpoint).find((each) => each.says === says)?.findings;
    if (findings === undefined) throw new RangeError(`nothing a review could find says ${says}`);
    return message('reviewPoints', { endpoint, says, findings });
  },
);

interface StageInputs {
  readonly injury: InjuryId;
  readonly option: OptionId;
  readonly stage: StageId;
  readonly stated: boolean;
  readonly met: readonly CriterionId[];
}
export const stageAtReview = compute('back.stageAtReview', ({ content }, inputs: StageInputs) => {
  const { injury: id, option, stage, stated, met } = inputs;
  const injury = content.injuries.find((each) => each.id === id);
  const record = content.stages.find((each) => each.id === stage);
  if (injury === undefined || record === undefined) throw new RangeError(`no stage ${stage} of ${id}`);
  const rows = stagesOf(injury, option);
  const { opens, sendsBack } = criteriaOf(content, stage, [option], injury.kind);
  return message('stageAtReview', {
    stage,
    next: rows[rows.findIndex((row) => row.stage === stage) + 1]?.stage ?? null,
    stated,
    opens: opens.filter(
      (at) => at.kind !== 'stageOpens' || !met.some((each) => each === record.opensNext[at.index]?.id),
    ),
    sendsBack,
  });
});

const stageFinding = (s: Situation, injury: Injury, option: OptionId): readonly Finding[] => {
  const now = stageNow(s, injury, option);
  if (now === null) return [];
  const { content } = s.context;
  const { opens, sendsBack } = criteriaOf(content, now.stage, [option], injury.kind);
  return [
    find(s.context, 'back', {
      id: 'review.stage',
      depth: 'more',
      compute: stageAtReview,
      inputs: { injury: injury.id, option, ...now, met: metIn(s, now.stage) },
      evidence: [...opens, ...sendsBack].flatMap((at) => textAt(content, at)?.evidence ?? []),
      whatIf: s.injury?.whatIf ?? false,
    }),
  ];
};

const oddsFindings = (s: Situation, first: CaseForecast): readonly Finding[] =>
  reviewOf(first.inputs, s.context).moves.map(({ says }) =>
    find(s.context, 'back', {
      id: `review.${says}`,
      depth: 'more',
      compute: reviewMove,
      inputs: { ...first.inputs, says },
      evidence: evidenceFor(s, first),
      claims: [s.injury, s.known.option].flatMap((known) => (known === null ? [] : [tagOf(known)])),
      models: ['spreadOfStudies', 'forecast'],
      whatIf: s.injury?.whatIf ?? false,
    }),
  );

const pointFindings = (s: Situation, endpoint: Endpoint): readonly Finding[] =>
  pointsTo(endpoint).map(({ says }) =>
    find(s.context, 'back', {
      id: `review.${says}`,
      depth: 'more',
      compute: reviewPoints,
      inputs: { endpoint, says },
      // Our own reading of the words of a follow-up.
      evidence: [{ source: null, mark: 'common practice' }],
      whatIf: s.injury?.whatIf ?? false,
    }),
  );

export const reviewFindings = (s: Situation, forecasts: readonly CaseForecast[]): readonly Finding[] => {
  const { injuryRecord, known } = s;
  if (injuryRecord === null || known.option === null || known.brokenAgain !== null) return [];
  const first = firstForecast(forecasts);
  const asked = first ?? forecasts[0];
  // A point of which no follow-up speaks (work) leaves nothing to look for: then the first one that they do speak of.
  const order = ENDPOINT_ORDER[known.level?.value ?? 'any'];
  const inOrder = asked === undefined ? order : [asked.inputs.endpoint, ...order];
  const endpoint = first?.inputs.endpoint ?? inOrder.find((each) => pointsTo(each).length > 1);
  if (endpoint === undefined) return [];
  const ended = eventsFor(s, endpoint).some(({ says }) => says === 'there' || says === 'givenUp');
  if (ended) return [];
  return [
    ...stageFinding(s, injuryRecord, known.option.value),
    ...(first === null ? pointFindings(s, endpoint) : oddsFindings(s, first)),
  ];
};
