/** A joint said to be in line while a gap was measured: the clash is told, as other clashes are. */
import type { InjuryId } from '../ids';
import { find } from './build';
import { gapAgainst, type Measured } from './classes';
import type { Known } from './resolve';
import type { Situation } from './situation';
import type { Finding } from './types';
import { gapAgainstWord } from './where-computes';

export const gapFindings = (s: Situation, injury: Known<InjuryId>, measured: Measured): readonly Finding[] => {
  const against = s.injuryRecord === null ? null : gapAgainst(s.injuryRecord, measured);
  if (against === null) return [];
  return [
    find(s.context, 'where', {
      id: 'gapAgainstWord',
      depth: 'claim',
      compute: gapAgainstWord,
      inputs: { injury: injury.value, measured },
      claims: against.claims,
      unsure: 'contradiction',
      whatIf: injury.whatIf,
    }),
  ];
};
