/** What goes along with such breaks under question 2, what goes along with slow healing under question 3: the case's own come first. */
import type { FactorTold } from '../content/schema';
import { READERS } from '../ids';
import { isUnder12, type Situation } from './situation';
import { textFinding } from './texts';
import type { Finding } from './types';

export const factorTexts = (s: Situation, question: FactorTold): readonly Finding[] => {
  const { factors } = s.context.content;
  const named = new Set(s.facts.riskFactors.map((c) => c.value));
  const usual = s.injuryRecord?.factors ?? [];
  const byId = new Map(factors.map((factor) => [factor.id, factor]));
  const told = [
    // What stands beside a forecast alone is told there.
    ...[...named].filter((id) => byId.get(id)?.besideForecastOf.length === 0),
    ...usual.filter((id) => !named.has(id) && !(isUnder12(s) && byId.get(id)?.adultsOnly === true)),
  ].filter((id) => byId.get(id)?.told === question);
  return told.flatMap((factor, i) =>
    textFinding(s.context, question, {
      id: `factor.${i + 1}`,
      at: { kind: 'factor', factor },
      ...(named.has(factor) ? { readers: READERS } : {}),
    }),
  );
};
