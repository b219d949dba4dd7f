/**
 * What the content has of each injury and each card, part by part, and what is missing or weakly sourced, in plain words for the
 * person who writes it. From the content alone: nothing here is a list that somebody keeps. Pure.
 */
import { regionsOfCard } from './look-up';
import { evidenceIn } from './references';
import type { Card, Content, Evidence, Injury, Mark, Review } from './schema';

/** `none`: missing. `weak`: there, but nothing better than a secondary page or memory stands behind it. */
export type Covered = 'full' | 'weak' | 'none';

export interface Part<T> {
  readonly name: string;
  /** Said after "has no". */
  readonly missing: string;
  readonly of: (record: T, content: Content) => Covered;
}

export interface Row {
  readonly kind: 'injury' | 'card';
  readonly id: string;
  readonly parts: readonly { readonly name: string; readonly covered: Covered }[];
}

const WEAK: ReadonlySet<Mark> = new Set(['weak', 'from memory']);
const some = (is: boolean): Covered => (is ? 'full' : 'none');

/** There, and how surely: one piece of evidence that is better than weak is enough. */
const sourced = (found: readonly Pick<Evidence, 'mark'>[]): Covered => {
  if (found.length === 0) return 'none';
  return found.every(({ mark }) => WEAK.has(mark)) ? 'weak' : 'full';
};
/** What names a source: common practice without one is there, but nothing can be looked up behind it. */
const named = (value: unknown): Covered =>
  sourced(evidenceIn(value).flatMap(({ evidence }) => (evidence.source === null ? [] : [evidence])));
const inRecord = (value: unknown): Covered => sourced(evidenceIn(value).map(({ evidence }) => evidence));

const told = (value: unknown): readonly Readonly<Record<string, unknown>>[] => {
  if (typeof value !== 'object' || value === null) return [];
  const record = value as Readonly<Record<string, unknown>>;
  return 'patient' in record ? [record] : Object.values(record).flatMap(told);
};
const threeReaders = (value: unknown): Covered =>
  some(told(value).every((t) => [t.patient, t.broadcast, t.study].every((text) => text !== '')));

/** The file that a record came from carries its review; a file of one injury bears its id or not, so all files of the folder count. */
const reviewed = (reviews: Readonly<Record<string, Review>>, folder: string): Covered => {
  const states = Object.entries(reviews).filter(([name]) => name.startsWith(folder));
  return some(states.length > 0 && states.every(([, review]) => review.state === 'reviewed'));
};

export const INJURY_PARTS: readonly Part<Injury>[] = [
  { name: 'place', missing: 'place with evidence', of: (r) => inRecord(r.occursAt) },
  { name: 'classification', missing: 'classification', of: (r) => inRecord(r.classification) },
  {
    name: 'rules',
    missing: 'class that geometry decides (rules)',
    of: (r) => some(r.classification.some(({ rules }) => rules !== undefined)),
  },
  {
    name: 'mechanism',
    missing: 'way of breaking that is in mechanisms.yaml',
    of: (r, c) => inRecord(c.mechanisms.filter(({ id }) => r.mechanisms.includes(id))),
  },
  {
    name: 'model',
    missing: 'way of breaking that a model of ours speaks for (it may be that none does)',
    of: (r, c) => some(c.mechanisms.some(({ id, model }) => r.mechanisms.includes(id) && model !== 'not modelled')),
  },
  {
    name: 'blood',
    missing: 'vessel of its bones in vessels.yaml',
    of: (r, c) =>
      inRecord(c.vessels.flatMap(({ ends }) => ends.filter(({ bone }) => [r.bone, ...r.alsoBones].includes(bone)))),
  },
  { name: 'tell apart', missing: 'look-alike and how to tell it (tellApart)', of: (r) => inRecord(r.tellApart) },
  { name: 'first film', missing: 'word on what the first film can miss (notSeen)', of: (r) => inRecord(r.notSeen) },
  {
    name: 'options',
    missing: 'option that is in options.yaml',
    of: (r, c) => inRecord(c.options.filter(({ id }) => r.options.includes(id)).map(({ evidence }) => evidence)),
  },
  { name: 'stages', missing: 'stage of the way back', of: (r) => inRecord(r.stages) },
  {
    name: 'recovery arms',
    missing: 'study arm in studies.yaml',
    of: (r, c) => sourced(c.studies.filter(({ injuries }) => injuries.includes(r.id))),
  },
  {
    name: 'danger signs',
    missing: 'danger sign in cautions.yaml',
    of: (r, c) =>
      inRecord(
        c.cautions
          .filter(({ kind, injuries }) => kind === 'red flag' && (injuries.length === 0 || injuries.includes(r.id)))
          .map(({ evidence }) => evidence),
      ),
  },
  {
    name: 'troubles',
    missing: 'count of a trouble of healing (rates.yaml, or events of study arms)',
    of: (r, c) => {
      const events = new Set<string>(c.troubles.flatMap((t) => t.events));
      const arms = c.studies.filter(
        (s) => s.injuries.includes(r.id) && [s.event, ...s.events].some((e) => e !== null && events.has(e.what)),
      );
      const rates = c.rates.filter(({ injuries }) => injuries.includes(r.id));
      return sourced([...arms, ...rates]);
    },
  },
  {
    name: 'code',
    missing: 'code that is in codes.yaml',
    of: (r, c) => inRecord(c.codes.filter(({ id }) => r.codes.includes(id))),
  },
  { name: 'found by', missing: 'words by which it is looked for (findBy)', of: (r) => some(r.findBy.length > 0) },
  {
    name: 'soft tissue',
    missing: 'ligament, tendon, vessel or nerve beside it (strands)',
    of: (r) => some(r.strands.length > 0),
  },
  { name: 'three readers', missing: 'text in each of the three wordings', of: threeReaders },
  { name: 'sources', missing: 'source', of: inRecord },
  { name: 'review', missing: 'review by a clinician', of: (_, c) => reviewed(c.reviews, 'injuries/') },
];

export const CARD_PARTS: readonly Part<Card>[] = [
  // Its form has no card without one: parts of its bones, or its bones, said to be meant whole. What is counted is that they are there.
  {
    name: 'place',
    missing: 'part of its bones that is in regions.yaml, nor its bones whole',
    of: (r, c) => {
      const regions = regionsOfCard(r);
      return some(r.place.is === 'bones' || regions.every((id) => c.regions.some((region) => region.id === id)));
    },
  },
  { name: 'what it is', missing: 'source for what it is', of: (r) => sourced([r.evidence]) },
  { name: 'danger sign', missing: 'danger sign', of: (r) => inRecord(r.danger) },
  {
    name: 'danger sourced',
    missing: 'source for its danger sign (common practice, and marked so)',
    of: (r) => named(r.danger),
  },
  { name: 'tell apart', missing: 'look-alike and how to tell it (tellApart)', of: (r) => inRecord(r.tellApart) },
  {
    name: 'troubles',
    missing: 'count of a trouble of healing (rates.yaml)',
    of: (r, c) => sourced(c.rates.filter(({ cards }) => cards.includes(r.id))),
  },
  {
    name: 'code',
    missing: 'code that is in codes.yaml',
    of: (r, c) => inRecord(c.codes.filter(({ id }) => r.codes.includes(id))),
  },
  { name: 'found by', missing: 'words by which it is looked for (findBy)', of: (r) => some(r.findBy.length > 0) },
  { name: 'three readers', missing: 'text in each of the three wordings', of: threeReaders },
  { name: 'sources', missing: 'source at all (common practice, and marked so)', of: named },
  { name: 'review', missing: 'review by a clinician', of: (_, c) => reviewed(c.reviews, 'cards/') },
];

const rowsOf = <T extends { readonly id: string }>(
  kind: Row['kind'],
  records: readonly T[],
  parts: readonly Part<T>[],
  content: Content,
): readonly Row[] =>
  records.map((record) => ({
    kind,
    id: record.id,
    parts: parts.map(({ name, of }) => ({ name, covered: of(record, content) })),
  }));

/** Injuries first, each with the parts of its kind. */
export const coverageRows = (content: Content): readonly Row[] => [
  ...rowsOf('injury', content.injuries, INJURY_PARTS, content),
  ...rowsOf('card', content.cards, CARD_PARTS, content),
];

/** One plain sentence for each gap of a row. */
export const gapsOf = ({ kind, id, parts }: Row): readonly string[] => {
  const known: readonly { readonly name: string; readonly missing: string }[] =
    kind === 'injury' ? INJURY_PARTS : CARD_PARTS;
  return parts.flatMap(({ name, covered }) => {
    const missing = known.find((part) => part.name === name)?.missing ?? name;
    if (covered === 'none') return [`${id} has no ${missing}.`];
    return covered === 'weak' ? [`${id}: nothing better than a secondary page or memory stands behind "${name}".`] : [];
  });
};

/** Statements of which a reader may see a figure that nobody read: by record, the weakest first. */
export const weakStatements = (content: Content): readonly string[] => {
  const { words: _, shape: __, reviews: ___, sources: ____, ...kinds } = content;
  return Object.entries(kinds).flatMap(([kind, records]) =>
    records.flatMap((record: { readonly id: string }) => {
      const found = evidenceIn(record);
      const memory = found.filter(({ evidence }) => evidence.mark === 'from memory').length;
      const weak = found.filter(({ evidence }) => evidence.mark === 'weak').length;
      if (memory + weak === 0) return [];
      const parts = [
        ...(memory === 0 ? [] : [`${memory} from memory`]),
        ...(weak === 0 ? [] : [`${weak} from a secondary or unreviewed page`]),
      ];
      return [`${kind} ${record.id}: ${parts.join(', ')}.`];
    }),
  );
};
