/** A source in two words, for places where the full reference has no room: first author (or title) and year. */
import type { Source } from '../content/schema';
import type { SourceId } from '../ids';
import { fill, TELLING_PHRASES as P } from './phrases';

const TITLE_LETTERS = 40;

const clipped = (text: string): string =>
  text.length <= TITLE_LETTERS ? text : `${text.slice(0, TITLE_LETTERS - 1)}…`;

export const shortSource = (source: Pick<Source, 'author' | 'title' | 'issued'>): string => {
  const first = source.author?.[0];
  const who = first?.family ?? first?.literal ?? clipped(source.title);
  const year = source.issued?.['date-parts'][0]?.[0];
  return year === undefined ? who : `${who} ${year}`;
};

/** One line of sources of at most `letters`; what does not fit is counted: "Dameron 1995, Lui 2016 and 3 more". */
export const sourcesLine = (sources: readonly Source[], ids: readonly SourceId[], letters: number): string => {
  const shorts = [...new Set(ids.flatMap((id) => sources.filter((s) => s.id === id).map(shortSource)))];
  if (shorts.length === 0) return P['source.none'];
  const line = (count: number): string => {
    const listed = shorts.slice(0, count).join(', ');
    const left = shorts.length - count;
    const text = left === 0 ? listed : fill(P['source.more'], { sources: listed, count: left });
    return fill(P['source.line'], { sources: text });
  };
  for (let count = shorts.length; count > 1; count -= 1) if (line(count).length <= letters) return line(count);
  return line(1);
};
