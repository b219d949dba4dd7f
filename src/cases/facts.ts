/**
 * Claims -> current facts. A superseded claim drops out, even when the claim that replaced it was replaced in turn. Equal values
 * become one fact with the strongest status anybody gave them; values that differ stay side by side. Nothing here raises a
 * status. The order of claims in the file does not matter.
 */
import { clinicOf } from './edit-clinic';
import {
  type CaseFile,
  type Claim,
  type ClaimStatus,
  type Fact,
  type Facts,
  MANY,
  type SingleSubject,
  SUBJECTS,
  type Subject,
  type SubjectValue,
} from './schema';

type StatedStatus = Exclude<ClaimStatus, 'ruledOut'>;

const STRENGTH: Readonly<Record<StatedStatus, number>> = { inferred: 0, reported: 1, confirmed: 2 };

/** Only one value of it can hold. */
export const isSingle = (subject: Subject): subject is SingleSubject => !MANY.has(subject);
export const SINGLE_SUBJECTS: readonly SingleSubject[] = SUBJECTS.filter(isSingle);

/** `c2` before `c10`. */
const byId = (a: Pick<Claim, 'id'>, b: Pick<Claim, 'id'>): number =>
  a.id.length - b.id.length || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);

/** The same text for the same value, whatever the order of its keys. */
const keyOf = (value: unknown): string =>
  JSON.stringify(value, (_, part: unknown) =>
    typeof part === 'object' && part !== null && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).sort(([a], [b]) => (a < b ? -1 : 1)))
      : part,
  );

/** Claims that nothing replaces, in order of id. */
export const currentClaims = (file: Pick<CaseFile, 'claims'>): readonly Claim[] => {
  const replaced = new Set(file.claims.map((claim) => claim.supersedes));
  return file.claims.filter((claim) => !replaced.has(claim.id)).sort(byId);
};

const factOf = <S extends SingleSubject>(current: readonly Claim[], subject: S): Fact<S> => {
  const about = current.filter((claim) => claim.subject === subject);
  const ruledOut = about.filter((claim) => claim.status === 'ruledOut');
  const groups = new Map<string, { value: SubjectValue<S>; status: StatedStatus; claims: Claim['id'][] }>();
  for (const claim of about) {
    const { status } = claim;
    if (status === 'ruledOut') continue;
    const key = keyOf(claim.value);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { value: claim.value as SubjectValue<S>, status, claims: [claim.id] });
    else {
      group.claims.push(claim.id);
      if (STRENGTH[status] > STRENGTH[group.status]) group.status = status;
    }
  }

  const values = [...groups.values()].sort((a, b) => STRENGTH[b.status] - STRENGTH[a.status]);
  const [only] = values;
  if (only === undefined) return { state: 'notStated', ruledOut };
  const denied = ruledOut.some((claim) => groups.has(keyOf(claim.value)));
  if (values.length > 1 || denied) return { state: 'contradiction', values, ruledOut };
  return { state: 'stated', ...only, ruledOut };
};

const isAbout =
  <S extends Subject>(subject: S) =>
  (claim: Claim): claim is Extract<Claim, { subject: S }> =>
    claim.subject === subject && claim.status !== 'ruledOut';

/** Undated first, so that the last one is the latest known. The sort is stable: same day, order of id. */
const byDate = (a: string | undefined, b: string | undefined): number => {
  const [x, y] = [a ?? '', b ?? ''];
  return x < y ? -1 : x > y ? 1 : 0;
};

export const factsOf = (file: CaseFile): Facts => {
  const current = currentClaims(file);
  const single = Object.fromEntries(SINGLE_SUBJECTS.map((subject) => [subject, factOf(current, subject)]));
  return {
    ...(single as { readonly [S in SingleSubject]: Fact<S> }),
    caseId: file.id,
    demo: file.demo !== undefined,
    saidBy: Object.fromEntries(current.map((claim) => [claim.id, claim.source.kind])),
    treatments: current.filter(isAbout('treatment')).sort((a, b) => byDate(a.value.on, b.value.on)),
    followUps: current.filter(isAbout('followUp')).sort((a, b) => byDate(a.value.on, b.value.on)),
    outcomes: current.filter(isAbout('outcome')).sort((a, b) => byDate(a.value.on, b.value.on)),
    measures: current.filter(isAbout('measure')),
    timetables: current.filter(isAbout('timetable')),
    clinic: clinicOf(file),
    riskFactors: current.filter(isAbout('riskFactor')),
    keptForecasts: file.forecasts,
    ruledOut: current.filter((claim) => MANY.has(claim.subject) && claim.status === 'ruledOut'),
  };
};
