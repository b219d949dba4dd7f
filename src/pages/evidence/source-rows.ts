/** The list of the sources page: sources in use by what they are used for, and those that hold what was typed. Pure. */
import type { Content, Source } from '../../content/schema';
import { type SourceUse, TOPICS, type Topic, topicOf, usesOfSources } from '../../content/source-uses';
import type { Reader } from '../../ids';
import { sourceLine } from '../../wording';

export interface SourceRow {
  readonly source: Source;
  readonly line: string;
  readonly uses: readonly SourceUse[];
  readonly topic: Topic;
}

/** Named by an author before those of which only a description is known. */
const place = ({ source: { author }, line }: SourceRow): string =>
  `${author === undefined ? 1 : 0}${line.replace(/^\[/, '')}`;

/** Every source that something rests on; by topic, then by name. */
export const sourceRows = (content: Content, reader: Reader): readonly SourceRow[] => {
  const uses = usesOfSources(content, reader);
  return content.sources
    .flatMap((source): SourceRow[] => {
      const used = uses.get(source.id) ?? [];
      return used.length === 0 ? [] : [{ source, line: sourceLine(source), uses: used, topic: topicOf(used) }];
    })
    .sort((a, b) => TOPICS.indexOf(a.topic) - TOPICS.indexOf(b.topic) || place(a).localeCompare(place(b), 'en'));
};

const plain = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/\p{Diacritic}/gu, '')
    .toLowerCase();

/** Those that hold every typed word, in their line, their note or what they are used for. */
export const holding = (rows: readonly SourceRow[], typed: string): readonly SourceRow[] => {
  const words = plain(typed).split(/\s+/).filter(Boolean);
  return rows.filter(({ line, source, uses }) => {
    const text = plain([line, source.note, source.PMID, ...uses.map(({ statement }) => statement)].join(' '));
    return words.every((word) => text.includes(word));
  });
};

/** An identifier by which a source is found elsewhere, and the page it leads to; null where only its words are known. */
export const addressOf = ({
  DOI,
  PMID,
  PMCID,
  URL,
}: Source): { readonly text: string; readonly href: string } | null => {
  if (DOI !== undefined) return { text: `doi:${DOI}`, href: `https://doi.org/${DOI}` };
  if (PMID !== undefined) return { text: `PMID ${PMID}`, href: `https://pubmed.ncbi.nlm.nih.gov/${PMID}/` };
  if (PMCID !== undefined) return { text: PMCID, href: `https://www.ncbi.nlm.nih.gov/pmc/articles/${PMCID}/` };
  return URL?.startsWith('https://') ? { text: URL, href: URL } : null;
};
