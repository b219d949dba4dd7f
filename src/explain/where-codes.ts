/** Codes of a class, for study readers: those of the list of diagnoses, side and visit put in, and its number in another list. */
import type { Facts } from '../cases/schema';
import type { InjuryId } from '../ids';
import { find } from './build';
import type { CodeFacts } from './icd10cm';
import { type Known, knownOf } from './resolve';
import type { Situation } from './situation';
import type { Finding } from './types';
import { alsoNumbered, code } from './where-computes';

const codeFactsOf = (facts: Facts): CodeFacts => ({
  side: knownOf(facts.side)?.value ?? null,
  displaced: knownOf(facts.displacement)?.value.displaced ?? null,
  visit: facts.followUps.length > 0 ? 'later' : 'first',
});

export const codeFindings = (s: Situation, { value: injury, whatIf }: Known<InjuryId>): readonly Finding[] => {
  const { context, facts, injuryRecord, known } = s;
  const bone = known.bone?.value;
  const ofThisBone = (injuryRecord?.codes ?? []).filter((id) => {
    const own = context.content.codes.find((c) => c.id === id)?.bone;
    return own === undefined || bone === undefined || own === bone;
  });
  const codes = ofThisBone.map((id, i) =>
    find(context, 'where', {
      id: i === 0 ? 'code' : `code.${i + 1}`,
      depth: 'more',
      compute: code,
      inputs: { injury, code: id, ...codeFactsOf(facts) },
      evidence: context.content.codes.filter((c) => c.id === id).map((c) => c.evidence),
      whatIf,
      readers: ['study'],
    }),
  );
  const numbered = injuryRecord?.alsoNumbered;
  if (numbered === undefined) return codes;
  return [
    ...codes,
    find(context, 'where', {
      id: 'alsoNumbered',
      depth: 'more',
      compute: alsoNumbered,
      inputs: { injury },
      evidence: [numbered.evidence, numbered.edition],
      whatIf,
      readers: ['study'],
    }),
  ];
};
