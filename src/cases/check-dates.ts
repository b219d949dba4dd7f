/**
 * What had not happened yet cannot be known: no injury, finding or report of a day to come. A treatment may be planned, so its day
 * may lie ahead. Invented cases keep their invented days. Today is given, never read here.
 */
import type { IsoDate } from '../units';
import { type CaseProblem, caseProblem } from './problems';
import type { CaseFile, Claim } from './schema';

interface Dated {
  readonly path: string;
  readonly on: IsoDate;
}

const datesOf = (claim: Claim): readonly Dated[] => {
  const own: readonly Dated[] =
    claim.subject === 'injuryDate'
      ? [{ path: 'value', on: claim.value }]
      : claim.subject === 'followUp'
        ? [{ path: 'value.on', on: claim.value.on }]
        : [];
  const { on } = claim.source;
  return on === undefined ? own : [...own, { path: 'source.on', on }];
};

export const checkDates = (file: Pick<CaseFile, 'claims' | 'demo'>, today: IsoDate): readonly CaseProblem[] =>
  file.demo !== undefined
    ? []
    : file.claims.flatMap((claim, i) =>
        datesOf(claim)
          // Days as YYYY-MM-DD stand in the order of their letters.
          .filter(({ on }) => on > today)
          .map(({ path, on }) => caseProblem('futureDate', `claims[${i}].${path}`, { id: claim.id, on, today })),
      );
