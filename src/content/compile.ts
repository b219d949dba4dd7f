/**
 * content/*.yaml -> Content, or every problem found. Pure and deterministic: the same files give the same content, whatever the
 * order they come in. Runs when the app is built and in commands, never in the browser.
 */
import * as v from 'valibot';
import { hashOfData } from './hash';
import { problemAt, problemsOf } from './issues';
import { KIND_NAMES, KINDS, type Kind, kindOf, nameOf } from './kinds';
import { byPlace, type ContentProblem } from './problems';
import { quotableOf, quotedIn } from './quoted';
import { referencesOf } from './references';
import { breachesOf } from './rules';
import { lostClasses } from './rules-classes';
import { edgesOf, entriesOf, lostEdges } from './rules-vessels';
import { type Content, type Injury, type Review, review, type Study, screenWords, type Vessel } from './schema';
import { readYaml, type YamlFile } from './yaml-file';

export type Compiled =
  | { readonly ok: true; readonly content: Content }
  | { readonly ok: false; readonly problems: readonly ContentProblem[] };

interface Loaded {
  readonly kind: Kind;
  readonly file: YamlFile;
  readonly index: number;
  readonly record: object;
  readonly id: string;
}

const schemaOf = (kind: Kind) =>
  v.strictObject({ review, records: v.array(KINDS[kind].schema as v.GenericSchema<object>) });
const wordsSchema = v.strictObject({ review, words: screenWords });
const shapeReview = v.looseObject({ review: v.optional(review, { state: 'not reviewed' }) });

/** A review counts only for the text it saw. */
const staleReview = (file: YamlFile, state: Review): ContentProblem[] => {
  const now = hashOfData(file.data);
  if (state.state === 'not reviewed' || state.hash === now) return [];
  return [
    problemAt(
      file,
      ['review', 'hash'],
      `the hash of what is written now, ${now}: the file changed after its review, so have it reviewed again or set "state: not reviewed"`,
      state.hash,
    ),
  ];
};

class Reader {
  readonly problems: ContentProblem[] = [];
  readonly loaded: Loaded[] = [];
  readonly reviews: Record<string, Review> = {};
  readonly shape: Record<string, unknown> = {};
  words: Record<string, string> = {};

  read(path: string, text: string): void {
    const name = nameOf(path);
    if (!/\.ya?ml$/.test(name)) return;
    const kind = kindOf(name);
    if (kind === null) {
      const expected = `one of ${KIND_NAMES.map((k) => KINDS[k].file).join(', ')}, words.yaml, anatomy/`;
      this.problems.push({ file: name, line: 1, path: '(file)', expected, got: name });
      return;
    }
    const { file, problems } = readYaml(name, text);
    this.problems.push(...problems);
    if (!file) return;
    if (kind === 'words') this.readWords(file);
    else if (kind === 'shape') this.readShape(file);
    else this.readRecords(kind, file);
  }

  private keepReview(file: YamlFile, state: Review): void {
    this.reviews[file.name] = state;
    this.problems.push(...staleReview(file, state));
  }

  private readWords(file: YamlFile): void {
    const parsed = v.safeParse(wordsSchema, file.data);
    if (!parsed.success) {
      this.problems.push(...problemsOf(file, parsed.issues));
      return;
    }
    this.words = parsed.output.words;
    this.keepReview(file, parsed.output.review);
  }

  /** Shape parameters are held to the schema of `src/anatomy` by `src/checks`; here they are only put together. */
  private readShape(file: YamlFile): void {
    const parsed = v.safeParse(shapeReview, file.data);
    if (!parsed.success) {
      this.problems.push(...problemsOf(file, parsed.issues));
      return;
    }
    for (const [key, value] of Object.entries(file.data)) {
      if (key === 'review') continue;
      if (Object.hasOwn(this.shape, key)) {
        this.problems.push(problemAt(file, [key], 'a key that no other file of anatomy/ has', key));
      }
      this.shape[key] = value;
    }
    this.keepReview(file, parsed.output.review);
  }

  private readRecords(kind: Kind, file: YamlFile): void {
    const parsed = v.safeParse(schemaOf(kind), file.data);
    if (!parsed.success) {
      this.problems.push(...problemsOf(file, parsed.issues));
      return;
    }
    const { key } = KINDS[kind];
    parsed.output.records.forEach((record, index) => {
      this.loaded.push({ kind, file, index, record, id: String((record as Record<string, unknown>)[key]) });
    });
    this.keepReview(file, parsed.output.review);
  }
}

/** Duplicates, references that lead nowhere, figures that can't be true. */
const crossChecks = (loaded: readonly Loaded[]): ContentProblem[] => {
  const known = new Map<Kind, Set<string>>(KIND_NAMES.map((k) => [k, new Set()]));
  const problems: ContentProblem[] = [];
  for (const { kind, file, index, id } of loaded) {
    const ids = known.get(kind);
    if (ids?.has(id)) {
      problems.push(problemAt(file, ['records', index, KINDS[kind].key], `an id not used before in ${kind}`, id));
    }
    // What somebody looks for is an injury or a card: one address must lead to one of them.
    const twin = kind === 'injuries' ? 'cards' : kind === 'cards' ? 'injuries' : null;
    if (twin !== null && known.get(twin)?.has(id))
      problems.push(problemAt(file, ['records', index, 'id'], `an id that is not used in ${twin}`, id));
    ids?.add(id);
  }
  const vessels = loaded.flatMap(({ kind, record }) => (kind === 'vessels' ? [record as Vessel] : []));
  const injuries = loaded.flatMap(({ kind, record }) => (kind === 'injuries' ? [record as Injury] : []));
  const edges = new Set(vessels.flatMap(edgesOf));
  const entries = new Set(vessels.flatMap(entriesOf));
  for (const { kind, file, index, record } of loaded) {
    for (const r of referencesOf(kind, record)) {
      if (known.get(r.to)?.has(r.id)) continue;
      problems.push(
        problemAt(file, ['records', index, ...r.path], `an id found in ${KINDS[r.to].file} (${r.to})`, r.id),
      );
    }
    const lost =
      kind === 'options'
        ? lostEdges(record, entries, 'a way into a bone found in vessels.yaml')
        : lostEdges(record, edges, 'an edge found in vessels.yaml');
    const unclassed = kind === 'studies' ? lostClasses(record as Study, injuries) : [];
    for (const b of [...breachesOf(kind, record), ...lost, ...unclassed]) {
      problems.push(problemAt(file, ['records', index, ...b.path], b.expected, b.got));
    }
  }
  return problems;
};

/** Records with the figures that their texts quote, and every quote that leads nowhere. */
const quoted = (
  loaded: readonly Loaded[],
): { readonly loaded: readonly Loaded[]; readonly problems: readonly ContentProblem[] } => {
  const of = <T extends object>(kind: Kind): readonly T[] =>
    loaded.filter((l) => l.kind === kind).map(({ record }) => record as T);
  const from = quotableOf({
    studies: of('studies'),
    rates: of('rates'),
    counts: of('counts'),
    vesselPatterns: of('vesselPatterns'),
    factors: of('factors'),
  });
  const problems: ContentProblem[] = [];
  const filled = loaded.map((l) => {
    const { record, lost } = quotedIn(l.record, from);
    for (const { path, place } of lost)
      problems.push(
        problemAt(
          l.file,
          ['records', l.index, ...path],
          'a figure found in studies.yaml (studies/id/what was counted), rates.yaml (rates/id), vessel-patterns.yaml (vesselPatterns/id/choice), factors.yaml (factors/id/effects/index) or counts.yaml (counts/id)',
          place,
        ),
      );
    return { ...l, record };
  });
  return { loaded: filled, problems };
};

/** files: path -> text. Everything that is not YAML is passed over. */
export const compileContent = (files: ReadonlyMap<string, string>): Compiled => {
  const reader = new Reader();
  for (const [path, text] of [...files].sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0))) reader.read(path, text);
  // A file that could not be read would make every reference to it a false alarm.
  if (reader.problems.length === 0) reader.problems.push(...crossChecks(reader.loaded));
  const { loaded, problems } = quoted(reader.loaded);
  if (reader.problems.length === 0) reader.problems.push(...problems);
  if (reader.problems.length > 0) return { ok: false, problems: reader.problems.toSorted(byPlace) };
  const records = Object.fromEntries(
    KIND_NAMES.map((kind) => [kind, loaded.filter((l) => l.kind === kind).map((l) => l.record)]),
  );
  const content = { ...records, words: reader.words, shape: reader.shape, reviews: reader.reviews };
  return { ok: true, content: content as unknown as Content };
};

/** Hash of the records of a file's text, for the person who reviews it. Null when the text is not a content file. */
export const reviewHash = (text: string): string | null => {
  const { file } = readYaml('content', text);
  return file ? hashOfData(file.data) : null;
};
