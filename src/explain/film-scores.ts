/**
 * What a follow-up film would have on a score of bone healing. The scores we know were made for the tibia: here they are borrowed, are
 * said to be, and condition no odds, for nobody has counted what becomes of a metatarsal by them.
 */
import type { FilmScore } from '../content/schema';
import type { FilmScoreId } from '../ids';
import { compute, find, message } from './build';
import type { FollowUpFinding } from './follow-up-says';
import type { ClaimTag } from './messages';
import type { Situation } from './situation';
import { textFinding } from './texts';
import type { Finding } from './types';

const bridgedIn = ({ counts }: FilmScore, finding: FollowUpFinding): number | null =>
  counts.find((each) => each.finding === finding)?.bridged ?? null;

interface ScoreInputs {
  readonly claim: ClaimTag;
  readonly score: FilmScoreId;
  readonly finding: FollowUpFinding;
}

/** Sides of which the finding says nothing have no callus or callus with a line: were they grown over, it would count them. */
export const borrowedScore = compute('back.borrowedScore', ({ content }, inputs: ScoreInputs) => {
  const record = content.filmScores.find(({ id }) => id === inputs.score);
  const bridged = record === undefined ? null : bridgedIn(record, inputs.finding);
  if (record === undefined || bridged === null) throw new RangeError(`no score ${inputs.score} of ${inputs.finding}`);
  const { points, sides } = record;
  const others = sides - bridged;
  const [low, high] = [points.bare, points.callus].map((each) => bridged * points.bridged + others * each) as [
    number,
    number,
  ];
  return message('borrowedScore', {
    ...inputs,
    points: { value: (low + high) / 2, unit: 'count', lowHigh: [low, high] },
    ofPoints: [sides * points.bare, sides * points.bridged],
  });
});

/** Beside each follow-up that counts bridged sides; what was published of the score stands once, under them. */
export const scoreFindings = (s: Situation): readonly Finding[] =>
  s.context.content.filmScores.flatMap((record) => {
    const scored = s.facts.followUps.filter(({ value }) => bridgedIn(record, value.finding) !== null);
    if (scored.length === 0) return [];
    return [
      ...scored.map(({ id, status, value }, i) => {
        const claim: ClaimTag = { status, claims: [id] };
        return find(s.context, 'back', {
          id: `borrowedScore.${record.id}.${i + 1}`,
          depth: 'claim',
          compute: borrowedScore,
          inputs: { claim, score: record.id, finding: value.finding },
          evidence: [record.evidence],
          claims: [claim],
          models: ['borrowedScore'],
        });
      }),
      ...record.says.flatMap((_, index) =>
        textFinding(s.context, 'back', {
          id: `borrowedScore.${record.id}.says.${index + 1}`,
          at: { kind: 'filmScore', score: record.id, index },
          models: ['borrowedScore'],
        }),
      ),
    ];
  });
