/**
 * What each source is used for: every statement of the content that cites it, with its mark. Found by walking the records, so that
 * nothing has to be listed twice. Pure.
 */
import type { Reader, SourceId } from '../ids';
import type { Kind } from './kinds';
import { type Content, MARKS, type Mark } from './schema';

/** What a statement is about; the order in which sources are grouped. */
export const TOPICS = ['injuries', 'healing', 'treatment', 'wayBack', 'loads', 'anatomy', 'blood', 'cautions'] as const;
export type Topic = (typeof TOPICS)[number];

const TOPIC_OF: Readonly<Record<Kind, Topic>> = {
  bones: 'anatomy',
  joints: 'anatomy',
  regions: 'anatomy',
  attachments: 'anatomy',
  strands: 'anatomy',
  walk: 'anatomy',
  findWords: 'anatomy',
  vessels: 'blood',
  vesselPatterns: 'blood',
  boneSupplies: 'blood',
  mechanisms: 'loads',
  activities: 'loads',
  loadFactors: 'loads',
  strains: 'loads',
  measuredLoads: 'loads',
  frame: 'loads',
  repetitions: 'loads',
  loadChecks: 'loads',
  fixations: 'loads',
  injuries: 'injuries',
  cards: 'injuries',
  codes: 'injuries',
  decisionRules: 'injuries',
  contradictions: 'injuries',
  counts: 'injuries',
  troubles: 'healing',
  rates: 'healing',
  factors: 'healing',
  filmScores: 'healing',
  options: 'treatment',
  studies: 'treatment',
  weightPractice: 'wayBack',
  stages: 'wayBack',
  stageSheets: 'wayBack',
  dailyLife: 'wayBack',
  returnTests: 'wayBack',
  cautions: 'cautions',
  sources: 'anatomy',
};

/** The list of kinds itself would bring every schema into the browser. */
const KINDS = Object.keys(TOPIC_OF) as readonly Kind[];

export interface SourceUse {
  readonly kind: Kind | 'shape';
  /** The record's id. */
  readonly record: string;
  readonly statement: string;
  /** Null where a text names it and another source carries the mark. */
  readonly mark: Mark | null;
}

type Node = Readonly<Record<string, unknown>>;
const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null && !Array.isArray(value);

const isTold = (value: unknown): value is Readonly<Record<Reader, string>> =>
  isNode(value) && typeof value.patient === 'string' && typeof value.study === 'string';

/** The sentence of one record part, in the words of the reader; null where it has none of its own. */
const sentenceIn = (node: Node, reader: Reader): string | null => {
  for (const key of ['asPrinted', 'says']) if (typeof node[key] === 'string') return node[key];
  const told = Object.values(node).find(isTold);
  if (told !== undefined) return told[reader];
  for (const key of ['published', 'definition', 'title', 'what', 'structure', 'term', 'task', 'name'])
    if (typeof node[key] === 'string') return node[key];
  return null;
};

const figureIn = (node: Node): string | null => {
  const { value, unit } = node;
  return typeof value === 'number' && typeof unit === 'string' ? `${value} ${unit}` : null;
};

/** The nearest sentence on the way down to the evidence, with the figure that stands right beside it. */
const statementOn = (path: readonly Node[], keys: readonly string[], reader: Reader): string => {
  const figure = path.map(figureIn).findLast((each) => each !== null) ?? null;
  const sentence = path.map((node) => sentenceIn(node, reader)).findLast((each) => each !== null) ?? null;
  const of = figure === null ? null : keys.findLast((key) => !/^\d+$|^figure$|^evidence$/.test(key));
  const topic = path[0]?.topic;
  const parts = [typeof topic === 'string' ? topic : null, sentence, of == null ? null : `${of} ${figure}`];
  return parts.filter((each) => each !== null).join(': ');
};

const isMark = (value: unknown): value is Mark => MARKS.some((mark) => mark === value);

interface Cited extends SourceUse {
  readonly source: SourceId;
}

const citedIn = (
  kind: SourceUse['kind'],
  record: string,
  node: unknown,
  reader: Reader,
  path: readonly Node[] = [],
  keys: readonly string[] = [],
): readonly Cited[] => {
  if (Array.isArray(node))
    return node.flatMap((each, i) => citedIn(kind, record, each, reader, path, [...keys, `${i}`]));
  if (!isNode(node)) return [];
  const way = [...path, node];
  const { source, mark } = node;
  const here =
    typeof source === 'string' && isMark(mark)
      ? [{ kind, record, source: source as SourceId, mark, statement: statementOn(way, keys, reader) }]
      : [];
  return [
    ...here,
    ...Object.entries(node).flatMap(([key, value]) => citedIn(kind, record, value, reader, way, [...keys, key])),
  ];
};

const idOfRecord = (record: object): string => String((record as Node).id ?? '');

/** Texts in study wording that name a source by author and year. */
const namingIn = (kind: Kind, record: string, node: unknown, name: string, reader: Reader): readonly SourceUse[] => {
  if (isTold(node)) return node.study.includes(name) ? [{ kind, record, statement: node[reader], mark: null }] : [];
  if (typeof node !== 'object' || node === null) return [];
  return Object.values(node).flatMap((each) => namingIn(kind, record, each, name, reader));
};

/** By source, in the order of the content; a statement that two parts of a record share stands once. */
export const usesOfSources = (content: Content, reader: Reader): ReadonlyMap<SourceId, readonly SourceUse[]> => {
  const all = [
    ...KINDS.flatMap((kind) =>
      content[kind].flatMap((record: object) => citedIn(kind, idOfRecord(record), record, reader)),
    ),
    ...(isNode(content.shape)
      ? Object.entries(content.shape).flatMap(([key, value]) => citedIn('shape', key, value, reader))
      : []),
  ];
  const uses = new Map<SourceId, SourceUse[]>();
  for (const { source, ...use } of all) {
    const listed = uses.get(source) ?? [];
    if (!listed.some((u) => u.record === use.record && u.statement === use.statement && u.mark === use.mark))
      listed.push(use);
    uses.set(source, listed);
  }
  // A source that no evidence cites is named in a text, or it would not be in the list (a test of the content).
  for (const { id, author, issued } of content.sources) {
    const [family, year] = [author?.[0]?.family, issued?.['date-parts'][0]?.[0]];
    if (uses.has(id) || family === undefined || year === undefined) continue;
    const naming = KINDS.flatMap((kind) =>
      content[kind].flatMap((r: object) => namingIn(kind, idOfRecord(r), r, `${family} ${year}`, reader)),
    );
    if (naming.length > 0) uses.set(id, naming);
  }
  return uses;
};

/** What most of its statements are about; of equals the first. */
export const topicOf = (uses: readonly SourceUse[]): Topic => {
  const count = (topic: Topic): number =>
    uses.filter(({ kind }) => (kind === 'shape' ? 'anatomy' : TOPIC_OF[kind]) === topic).length;
  return TOPICS.reduce((a, b) => (count(b) > count(a) ? b : a), TOPICS[0]);
};
