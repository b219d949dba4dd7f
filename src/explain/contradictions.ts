/** Sources that say different things of the injury in question, told as such where the question is. */
import type { ContradictionId, QuestionId } from '../ids';
import { compute, find, message } from './build';
import type { Situation } from './situation';
import type { Finding } from './types';

export const sourcesDisagree = compute(
  'content.contradiction',
  ({ content }, inputs: { readonly contradiction: ContradictionId }) => {
    if (!content.contradictions.some(({ id }) => id === inputs.contradiction))
      throw new RangeError(`no contradiction ${inputs.contradiction}`);
    return message('sourcesDisagree', inputs);
  },
);

export const contradictionFindings = (s: Situation, question: QuestionId): readonly Finding[] => {
  const { context, injury } = s;
  if (injury === null) return [];
  return context.content.contradictions
    .filter((c) => c.question === question && c.injuries.includes(injury.value))
    .map((c) =>
      find(context, question, {
        id: `sourcesDisagree.${c.id}`,
        depth: 'more',
        compute: sourcesDisagree,
        inputs: { contradiction: c.id },
        evidence: c.sides.map(({ evidence }) => evidence),
        whatIf: injury.whatIf,
      }),
    );
};
