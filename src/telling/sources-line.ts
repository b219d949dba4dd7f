/** Sources in one line of a given length, by their short names; what does not fit is counted. */
import type { Content } from '../content/schema';
import type { SourceId } from '../ids';
import { fill, sourceName } from '../wording';
import { TELLING_PHRASES as P } from './phrases';

/** "Sources: Dameron 1995, Lui 2016 and 3 more". The first is always named, however long. */
export const sourcesLine = (content: Content, ids: readonly SourceId[], letters: number): string => {
  const names = [...new Set(ids.map((id) => sourceName(content, id)))];
  if (names.length === 0) return P['source.none'];
  const line = (count: number): string => {
    const listed = names.slice(0, count).join(', ');
    const left = names.length - count;
    const text = left === 0 ? listed : fill(P['source.more'], { sources: listed, count: left });
    return fill(P['source.line'], { sources: text });
  };
  for (let count = names.length; count > 1; count -= 1) if (line(count).length <= letters) return line(count);
  return line(1);
};
