/**
 * Finds a figure that stands in two places of the content with the same source. A figure is a count (`5 of 18`, `5 in 18`, `5/18`), a
 * percentage, a ratio with its interval or weeks that were worked out, in any text but patients' and listeners', which tell the fact of
 * the study text beside them in words; or the count of a study, a rate or a pattern of vessels, or the size of a factor. Read from the files as written, where a quote (`quoted.ts`) is no count. Told by `npm run -s content` and held
 * by the unit tests. Pure.
 */
import { KINDS, kindOf, nameOf } from './kinds';
import type { Source } from './schema';
import { readYaml } from './yaml-file';

interface Found {
  /** `5/18` or `28 %`. */
  readonly figure: string;
  /** Ids of the sources that may stand behind it: the nearest one, and those that the text names. */
  readonly sources: ReadonlySet<string>;
  /** A count as data, of which arms of one trial may hold the same. */
  readonly data: boolean;
  /** One text; or one record, of those that hold counts as data and beside them the print they were read from. */
  readonly place: string;
}

/** Figures of one source that stand in two places and are no count of people or feet there. */
export const NO_COUNTS: readonly { readonly source: string; readonly figure: string; readonly why: string }[] = [
  { source: 'answers-page', figure: '30 %', why: 'a limit at which a page refers and at which two classes meet' },
  {
    source: 'looney-2020',
    figure: '12.5 weeks',
    why: 'the time after which one study calls healing late, and no mean',
  },
  {
    source: 'conference abstract on normal calcaneal angles (authors not shown)',
    figure: '105/87',
    why: 'the films and people of one group in which two angles were measured',
  },
];

type Node = Readonly<Record<string, unknown>>;
const isNode = (value: unknown): value is Node => value !== null && typeof value === 'object' && !Array.isArray(value);

const COUNT =
  /(?<![\w.,])(\d[\d,]*)(?=(?: (?!of\b|in\b)[a-z]+){0,2}(?: (?:of|in) (?:the |these |those |all )?|\/)(\d[\d,]*\b(?!\.\d)))/g;
/** The first of two percentages has its sign with the second: `25 and 33 %`, `86 to 99 %`. */
const PERCENT = /\b(\d+(?:\.\d+)?)(?:(?: and | to )(\d+(?:\.\d+)?))? ?%/g;
const plain = (n: string): string => n.replaceAll(',', '');

/** A ratio with its interval: `2.4 (1.2 to 4.8)`. */
const RATIO = /(?<![\d.])(\d+(?:\.\d+)?) \((?:95 % )?(\d+(?:\.\d+)?)(?: to |–|-)(\d+(?:\.\d+)?)\)/g;
/** Weeks that somebody worked out, with a decimal or said to be a mean: whole weeks alone are plans, and stand in many places. */
const WEEKS = /(?<![\d.])(?:(\d+\.\d+)|(?<=\b(?:mean|average|median)(?: \w+){0,3} )(\d+)) weeks\b/g;
const ratioOf = (value: number, low: number, high: number): string => `${value} (${low} to ${high})`;

/** Zone 1/2 is a border, and a DOI is none at all. */
const NOT_COUNTED = /zone \d\/\d|border \d\/\d|doi:\S+|\d\/10 pain|\bpain (at most )?\d of 10|at rest \d of 10/gi;

export const figuresIn = (text: string): readonly string[] => {
  const counted = text.replaceAll(NOT_COUNTED, '');
  return [
    ...[...counted.matchAll(COUNT)].map(([, count = '', of = '']) => `${plain(count)}/${plain(of)}`),
    ...[...counted.matchAll(PERCENT)].flatMap(([, first, second]) =>
      [first, second].flatMap((n) => (n === undefined ? [] : [`${Number(n)} %`])),
    ),
    ...[...counted.matchAll(RATIO)].map(([, value, low, high]) => ratioOf(Number(value), Number(low), Number(high))),
    ...[...counted.matchAll(WEEKS)].map(([, worked, mean]) => `${Number(worked ?? mean)} weeks`),
  ];
};

/** The count as data, and its percentage as it may be written: as printed, whole, or with one decimal. */
const figuresOf = ({ count, of, percent }: Node): readonly string[] => {
  const share = typeof count === 'number' && typeof of === 'number' ? (count / of) * 100 : null;
  const percents = [percent, share, share === null ? null : Math.round(share)].flatMap((p) =>
    typeof p === 'number' ? [`${Number(p.toFixed(1))} %`] : [],
  );
  return [...new Set([...(share === null ? [] : [`${count}/${of}`]), ...percents])];
};

/** A size with its interval, or weeks, of a factor or of a study. */
const sizesOf = ({ value, low, high, weeks, withoutWeeks, centreWeeks, sdWeeks }: Node): readonly string[] => [
  ...(typeof value === 'number' && typeof low === 'number' && typeof high === 'number'
    ? [ratioOf(value, low, high)]
    : []),
  ...[weeks, withoutWeeks, centreWeeks, sdWeeks].flatMap((each) => (typeof each === 'number' ? [`${each} weeks`] : [])),
];

const SIZED = /^(factors|studies) /;

const DATA_KINDS: ReadonlySet<string> = new Set(['studies', 'rates', 'vesselPatterns']);
/** Tellings for those who get words; ids, and words to be searched by. */
const NOT_READ: ReadonlySet<string> = new Set(['patient', 'broadcast', 'id', 'findBy', 'review']);

const nearest = (node: Node, near: string | null): string | null => {
  const { source, evidence } = node;
  const own = typeof source === 'string' ? source : isNode(evidence) ? evidence.source : null;
  return typeof own === 'string' ? own : near;
};

type Namers = readonly { readonly id: string; readonly name: string }[];

const namersOf = (sources: readonly Source[]): Namers =>
  sources.flatMap(({ id, author }) => {
    const [first] = author ?? [];
    const name = first?.family ?? first?.literal;
    return name === undefined ? [] : [{ id, name }];
  });

const foundIn = (
  value: unknown,
  place: string,
  near: string | null,
  data: boolean,
  names: Namers,
): readonly Found[] => {
  if (typeof value === 'string') {
    const sources = new Set([
      ...(near === null ? [] : [near]),
      ...names.filter(({ name }) => value.includes(name)).map(({ id }) => id),
    ]);
    return figuresIn(value).map((figure) => ({ figure, sources, data: false, place }));
  }
  if (Array.isArray(value))
    return value.flatMap((inner, i) => foundIn(inner, data ? place : `${place}.${i}`, near, data, names));
  if (!isNode(value)) return [];
  const source = nearest(value, near);
  const here =
    data && ('count' in value || 'percent' in value)
      ? figuresOf(value).map((figure) => ({ figure, sources: new Set(source === null ? [] : [source]), data, place }))
      : [];
  const sizes = SIZED.test(place)
    ? sizesOf(value).map((figure) => ({ figure, sources: new Set(source === null ? [] : [source]), data: true, place }))
    : [];
  const inside = Object.entries(value).filter(([key]) => !NOT_READ.has(key));
  return [
    ...here,
    ...sizes,
    ...inside.flatMap(([key, inner]) => foundIn(inner, data ? place : `${place}.${key}`, source, data, names)),
  ];
};

const foundInFile = (path: string, text: string, names: Namers): readonly Found[] => {
  const name = nameOf(path);
  const kind = kindOf(name);
  const { file } = readYaml(name, text);
  if (!file || kind === null || kind === 'words' || kind === 'sources') return [];
  const { records } = file.data;
  if (kind === 'shape' || !Array.isArray(records)) return foundIn(file.data, name, null, false, names);
  return records.flatMap((record: unknown) => {
    if (!isNode(record)) return [];
    const found = foundIn(record, `${kind} ${String(record[KINDS[kind].key])}`, null, DATA_KINDS.has(kind), names);
    // The print beside a count is where it was read from.
    const held = new Set(found.filter(({ data }) => data).map(({ figure }) => figure));
    return found.filter(({ data, figure }) => data || !held.has(figure));
  });
};

const meet = (a: ReadonlySet<string>, b: ReadonlySet<string>): readonly string[] => [...a].filter((s) => b.has(s));

export interface Twice {
  readonly figure: string;
  readonly source: string;
  readonly places: readonly [string, string];
}

/** Every count that stands in two places with one source; what is listed as no count is left out. */
export const writtenTwice = (
  files: ReadonlyMap<string, string>,
  sources: readonly Source[],
  noCounts: typeof NO_COUNTS = NO_COUNTS,
): readonly Twice[] => {
  const names = namersOf(sources);
  const all = [...files].flatMap(([path, text]) => foundInFile(path, text, names));
  const byFigure = new Map<string, Found[]>();
  for (const each of all) byFigure.set(each.figure, [...(byFigure.get(each.figure) ?? []), each]);
  const twice = [...byFigure].flatMap(([figure, found]) =>
    found.flatMap((a, i) =>
      found
        .slice(0, i)
        .filter(({ place, data }) => place !== a.place && !(data && a.data))
        .flatMap((b) =>
          meet(a.sources, b.sources).map((source): Twice => ({ figure, source, places: [b.place, a.place] })),
        ),
    ),
  );
  const once = new Map(twice.map((each) => [JSON.stringify(each), each]));
  return [...once.values()].filter(
    ({ figure, source }) => !noCounts.some((each) => each.figure === figure && each.source === source),
  );
};
