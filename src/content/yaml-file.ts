/** One YAML file of content/: its plain data, and the line of any place in it. Anchors and aliases are not allowed. */
import { isMap, isNode, isSeq, LineCounter, type Node, parseDocument } from 'yaml';
import { type ContentProblem, shorten } from './problems';

export type Path = readonly (string | number)[];

export interface YamlFile {
  readonly name: string;
  readonly data: Readonly<Record<string, unknown>>;
  /** Line of the deepest part of the path that exists. */
  readonly lineOf: (path: Path) => number;
}

interface Spot {
  readonly node: Node | null;
  readonly at: number;
}

const startOf = (node: unknown, fallback: number): number => (isNode(node) && node.range ? node.range[0] : fallback);

const step = (spot: Spot, key: string | number): Spot | null => {
  if (isMap(spot.node)) {
    const pair = spot.node.items.find((p) => String(isNode(p.key) ? p.key.toJSON() : p.key) === String(key));
    if (!pair) return null;
    return { node: isNode(pair.value) ? pair.value : null, at: startOf(pair.key, spot.at) };
  }
  if (isSeq(spot.node)) {
    const item = spot.node.items[Number(key)];
    return item === undefined ? null : { node: isNode(item) ? item : null, at: startOf(item, spot.at) };
  }
  return null;
};

const isRecord = (value: unknown): value is Record<string, unknown> =>
  value !== null && typeof value === 'object' && !Array.isArray(value);

/** A content file is a mapping; anything else is a problem, with its line. */
export const readYaml = (name: string, text: string): { file: YamlFile | null; problems: ContentProblem[] } => {
  const lines = new LineCounter();
  const doc = parseDocument(text, { lineCounter: lines, stringKeys: true });
  const problem = (line: number, expected: string, got: string): ContentProblem => ({
    file: name,
    line,
    path: '(file)',
    expected,
    got,
  });
  const faults = [...doc.errors, ...doc.warnings];
  if (faults.length > 0) {
    const problems = faults.map((e) =>
      problem(e.linePos?.[0].line ?? 1, 'YAML', shorten(e.message.split('\n')[0] ?? '')),
    );
    return { file: null, problems };
  }
  let data: unknown;
  try {
    data = doc.toJS({ maxAliasCount: 0 });
  } catch (e) {
    return { file: null, problems: [problem(1, 'no anchors or aliases', e instanceof Error ? e.message : String(e))] };
  }
  if (!isRecord(data))
    return { file: null, problems: [problem(1, 'keys and values', data === null ? 'nothing' : typeof data)] };
  const root: Spot = { node: doc.contents, at: startOf(doc.contents, 0) };
  const lineOf = (path: Path): number => {
    let spot = root;
    for (const key of path) {
      const next = step(spot, key);
      if (!next) break;
      spot = next;
    }
    return lines.linePos(spot.at).line;
  };
  return { file: { name, data, lineOf }, problems: [] };
};
