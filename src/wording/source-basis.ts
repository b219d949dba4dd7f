/** One source behind one finding: which it is, who and how many were studied, how it was read, and the mark that follows from it. */
import type { Content, Mark, Rate, Source, Study } from '../content/schema';
import type { Basis, Finding } from '../explain/types';
import type { Reader, SourceId } from '../ids';
import { BASIS_LINES } from './en/basis';
import { fill } from './fill';
import { peopleOfStudy } from './people';
import { sourceLine } from './sources';

export interface SourceBasis {
  readonly id: SourceId;
  readonly text: string;
  readonly mark: Mark;
  /** Population and number, one a line. */
  readonly people: readonly string[];
  readonly how: string;
}

/** Every text in plain data. */
export const textsIn = (value: unknown): readonly string[] => {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(textsIn) : [];
};

type Counted = { readonly group: string; readonly n: number | null; readonly read: Study['read'] };
/** Arms of one trial may have the same people in words: their treatment tells them apart. */
const ofStudy = (content: Content, { id, option, n, read }: Study, reader: Reader): Counted => {
  const people = peopleOfStudy(content, id, reader);
  const treated = content.options.find((each) => each.id === option)?.[reader === 'study' ? 'term' : 'plain'];
  return { group: treated === undefined ? people : `${people} (${treated})`, n, read };
};
const ofRate = ({ group, plain, of, read }: Rate, reader: Reader): Counted => ({
  group: reader === 'study' ? group : plain.group,
  n: of,
  read,
});

/** Arms and rates of this source that the finding tells of, by the ids that its message carries. */
const countedIn = (content: Content, finding: Finding, source: SourceId, reader: Reader): readonly Counted[] => {
  const named = new Set(textsIn(finding.message.args));
  for (const c of content.contradictions)
    if (named.has(c.id)) for (const side of c.sides) for (const id of [...side.studies, ...side.rates]) named.add(id);
  const here = <T extends Study | Rate>(record: T): boolean => record.source === source && named.has(record.id);
  return [
    ...content.studies.filter(here).map((s) => ofStudy(content, s, reader)),
    ...content.rates.filter(here).map((r) => ofRate(r, reader)),
  ];
};

const peopleLine = ({ group, n }: Counted): string =>
  fill(BASIS_LINES.people, {
    group,
    n: n === null ? BASIS_LINES['people.none'] : fill(BASIS_LINES['people.n'], { n }),
  });

/** How it was read, in a sentence; what the source's own record adds stands after it. */
export const howRead = ({ note }: Pick<Source, 'note'>, mark: Mark, reads: readonly Study['read'][]): string => {
  const said = reads.length === 0 ? [BASIS_LINES[`mark.${mark}`]] : reads.map((read) => BASIS_LINES[`read.${read}`]);
  return [...new Set([...said, ...(note === undefined ? [] : [note])])].join(' ');
};

/** Null for common practice, which has no source, and for a source that the content no longer has. */
export const sourceBasis = (
  content: Content,
  finding: Finding,
  { source, mark }: Basis['sources'][number],
  reader: Reader,
): SourceBasis | null => {
  const record = content.sources.find(({ id }) => id === source);
  if (source === null || record === undefined) return null;
  const counted = countedIn(content, finding, source, reader);
  const lines = [...new Set(counted.map(peopleLine))];
  return {
    id: source,
    text: sourceLine(record),
    mark,
    people: lines.length === 0 ? [BASIS_LINES.noGroup] : lines,
    how: howRead(
      record,
      mark,
      counted.map(({ read }) => read),
    ),
  };
};
