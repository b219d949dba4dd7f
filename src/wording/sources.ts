/** Sources in one line, from their CSL-JSON. */
import type { Content, Source } from '../content/schema';
import type { Reader, SourceId } from '../ids';
import { SOURCE_KINDS } from './en/basis';

const yearOf = (source: Source): string => String(source.issued?.['date-parts'][0]?.[0] ?? '');

const surname = (author: NonNullable<Source['author']>[number]): string => author.family ?? author.literal ?? '';

const authorsOf = (source: Source): string => {
  const names = (source.author ?? []).map(surname).filter((name) => name !== '');
  if (names.length === 0) return '';
  return names.length > 2 ? `${names[0]} et al.` : names.join(' & ');
};

/** Kadiyala et al. 2024: enough to find it in the list. Without authors, its title. */
export const sourceName = (content: Content, id: SourceId): string => {
  const source = content.sources.find((s) => s.id === id);
  if (source === undefined) return id;
  return [authorsOf(source) || source.title, yearOf(source)].filter(Boolean).join(' ');
};

/** In a sentence: for whoever does not study, a source without authors is one study or one sheet; its title stands under "How do you know?". */
export const sourceSaid = (content: Content, id: SourceId, reader: Reader): string => {
  const source = content.sources.find((s) => s.id === id);
  if (reader === 'study' || source === undefined || authorsOf(source) !== '') return sourceName(content, id);
  return SOURCE_KINDS[source.type === 'article-journal' ? 'study' : 'sheet'];
};

/** Author, year, title, journal volume:page, DOI. Ends with a full stop. */
export const sourceLine = (source: Source): string => {
  const volume = [source.volume, source.page].filter(Boolean).join(':');
  const home = [source['container-title'] ?? source.publisher, volume].filter(Boolean).join(' ');
  const address =
    source.DOI !== undefined
      ? `doi:${source.DOI}`
      : source.PMID !== undefined
        ? `PMID ${source.PMID}`
        : (source.URL ?? '');
  const parts = [authorsOf(source), yearOf(source), source.title, home, address].map((part) => part.replace(/\.$/, ''));
  return `${parts.filter(Boolean).join('. ')}.`;
};
