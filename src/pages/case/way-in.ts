/**
 * From the four choices to claims. One answer to "how do you know?" covers them, within the limits of the case file: how it
 * happened is always kept as told, because no film and no examination shows it.
 */
import { type CaseFile, currentClaims, newClaim, type Said, type Subject, withClaim } from '../../cases';
import type { Injury } from '../../content/schema';
import type { ClaimValue } from '../../explain/messages';

export const HEARD = ['told', 'team', 'media', 'examined', 'film'] as const;
export type Heard = (typeof HEARD)[number];

const SAID: Readonly<Record<Heard, Said>> = {
  told: { status: 'reported', source: { kind: 'person' } },
  team: { status: 'reported', source: { kind: 'team' } },
  media: { status: 'reported', source: { kind: 'media' } },
  examined: { status: 'confirmed', source: { kind: 'examination' } },
  film: { status: 'confirmed', source: { kind: 'imaging' } },
};

/** Subjects that stay reported whatever the choice. */
const ALWAYS_TOLD: ReadonlySet<Subject> = new Set<Subject>(['mechanism', 'injuryDate']);
/** What this form writes; other claims of a case are left alone. */
const OWN: ReadonlySet<Subject> = new Set<Subject>([
  'side',
  'bone',
  'place',
  'injury',
  'mechanism',
  'injuryDate',
  'treatment',
]);

const saidFor = (subject: Subject, heard: Heard): Said =>
  ALWAYS_TOLD.has(subject) ? (heard === 'team' || heard === 'media' ? SAID[heard] : SAID.told) : SAID[heard];

/** What an injury says of where it is. */
export const injuryValues = ({ id, bone, region }: Pick<Injury, 'id' | 'bone' | 'region'>): readonly ClaimValue[] => [
  { subject: 'bone', value: bone },
  { subject: 'place', value: { by: 'region', region } },
  { subject: 'injury', value: id },
];

/** The case with its claims on `subjects` replaced by `values`; all other claims stay as they are. */
export const withValues = (
  file: CaseFile,
  subjects: readonly Subject[],
  values: readonly ClaimValue[],
  heard: Heard,
): CaseFile => {
  const kept = file.claims.filter((claim) => !subjects.includes(claim.subject));
  return values.reduce<CaseFile>(
    (before, of) => withClaim(before, newClaim(before, of.subject, of.value, saidFor(of.subject, heard))),
    { ...file, claims: kept },
  );
};

/** The case with every claim of this form said to be known in this way. */
export const withHeard = (file: CaseFile, heard: Heard): CaseFile => ({
  ...file,
  claims: file.claims.map((claim) => (OWN.has(claim.subject) ? { ...claim, ...saidFor(claim.subject, heard) } : claim)),
});

/** What the form shows as chosen for a case it opens. */
export const heardFrom = (file: CaseFile): Heard => {
  const place = currentClaims(file).find((claim) => claim.subject === 'place' || claim.subject === 'bone');
  const kind = place?.source.kind;
  if (kind === 'imaging' || kind === 'operation') return 'film';
  if (kind === 'examination') return 'examined';
  return kind === 'team' || kind === 'media' ? kind : 'told';
};
