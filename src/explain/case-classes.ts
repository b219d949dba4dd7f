/** Of which class, among those in which studies counted their people, the joint or bone of a case is. */
import type { Content, Injury } from '../content/schema';
import { asConfirmed, gapAgainst, measuredIn, throughAgainst, toldClassesOf } from './classes';
import type { ClaimTag } from './messages';
import { tagOf } from './resolve';
import type { Situation } from './situation';

export interface ClassInputs {
  /** Absent where no study of the injury names a class, and where that of the case is not known. */
  readonly classes?: readonly string[];
}

/** The classes of the schemes that studies of this injury count by, decided by geometry; none where no study names one. */
export const countedClasses = (
  { studies }: Pick<Content, 'studies'>,
  { id, classification }: Pick<Injury, 'id' | 'classification'>,
): readonly Injury['classification'][number][] => {
  const named = studies.flatMap(({ injuries, classes = [] }) => (injuries.includes(id) ? classes : []));
  const schemes = classification.flatMap((one) => (named.includes(one.id) ? [one.scheme] : []));
  return classification.filter(({ scheme, rules }) => rules !== undefined && schemes.includes(scheme));
};

export interface CaseClasses extends ClassInputs {
  /** What says so. */
  readonly tags: readonly ClaimTag[];
}

/** What decides the class of a joint or a break collides. */
export const classesCollide = ({ facts, injuryRecord }: Situation): readonly ClaimTag[] | null => {
  if (injuryRecord === null) return null;
  const measured = asConfirmed(injuryRecord, measuredIn(facts, null));
  const through = throughAgainst(injuryRecord, measured);
  if (through !== null) return [...through.through, ...through.notThrough].map(({ tag }) => tag);
  return gapAgainst(injuryRecord, measured)?.claims ?? null;
};

export const caseClasses = ({ context, facts, region, injuryRecord }: Situation): CaseClasses => {
  if (injuryRecord === null) return { tags: [] };
  const counted = countedClasses(context.content, injuryRecord);
  const place = region === null ? null : { value: region.value, tag: tagOf(region) };
  const found = toldClassesOf(injuryRecord, measuredIn(facts, place)).flatMap(({ index, claim }) => {
    const one = counted.find((each) => each === injuryRecord.classification[index]);
    return one === undefined ? [] : [{ id: one.id, claim }];
  });
  return found.length === 0
    ? { tags: [] }
    : { classes: found.map(({ id }) => id), tags: found.map(({ claim }) => claim) };
};

/** As inputs of a computation carry it. */
export const classInputs = (s: Situation): ClassInputs => {
  const { classes } = caseClasses(s);
  return classes === undefined ? {} : { classes };
};
