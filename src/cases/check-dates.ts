/**
 * What had not happened yet cannot be known: no injury, finding, outcome or report of a day to come, no forecast made
 * and no criterion met then. A
 * treatment may be planned, so its day may lie ahead; so may the day from which weeks are counted, and every fixture. Invented
 * cases keep their invented days. Today is given, never read here.
 */
import type { IsoDate } from '../units';
import { type CaseProblem, caseProblem } from './problems';
import type { CaseFile, Claim } from './schema';

interface Dated {
  readonly path: string;
  readonly on: IsoDate;
}

const ownDates = (claim: Claim): readonly Dated[] => {
  switch (claim.subject) {
    case 'injuryDate':
      return [{ path: 'value', on: claim.value }];
    case 'followUp':
    case 'outcome':
      return [{ path: 'value.on', on: claim.value.on }];
    default:
      return [];
  }
};

const datesOf = (claim: Claim): readonly Dated[] => {
  const { on } = claim.source;
  return on === undefined ? ownDates(claim) : [...ownDates(claim), { path: 'source.on', on }];
};

export const checkDates = (
  file: Pick<CaseFile, 'claims' | 'clinic' | 'demo' | 'forecasts'>,
  today: IsoDate,
): readonly CaseProblem[] => {
  if (file.demo !== undefined) return [];
  // Days as YYYY-MM-DD stand in the order of their letters.
  const claimed = file.claims.flatMap((claim, i) =>
    datesOf(claim)
      .filter(({ on }) => on > today)
      .map(({ path, on }) => caseProblem('futureDate', `claims[${i}].${path}`, { id: claim.id, on, today })),
  );
  const made = file.forecasts.flatMap(({ madeOn: on }, i) =>
    on !== null && on > today
      ? [caseProblem('futureForecast', `forecasts[${i}].madeOn`, { nth: i + 1, on, today })]
      : [],
  );
  const met = Object.entries(file.clinic?.stages ?? {}).flatMap(([stage, notes]) =>
    (notes?.met ?? []).flatMap(({ criterion, on }, i) =>
      on !== null && on > today
        ? [caseProblem('futureCriterion', `clinic.stages.${stage}.met[${i}].on`, { criterion, on, today })]
        : [],
    ),
  );
  return [...claimed, ...made, ...met];
};
