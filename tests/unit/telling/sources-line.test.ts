import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readContent } from '../../../src/cli/read-content';
import type { Source } from '../../../src/content/schema';
import { idOf, type SourceId } from '../../../src/ids';
import { sourcesLine } from '../../../src/telling/sources-line';

const source = (id: string, family: string | undefined, year: number | undefined, title = 'A title'): Source => ({
  id: idOf<SourceId>(id),
  type: 'article-journal',
  title,
  ...(family === undefined ? {} : { author: [{ family }] }),
  ...(year === undefined ? {} : { issued: { 'date-parts': [[year]] } }),
});

describe('a line of sources', () => {
  const sources = [source('a', 'Dameron', 1995), source('b', 'Lui', 2016), source('c', 'Kadiyala', 2024)];
  const ids = sources.map((s) => s.id);
  const content = { ...readContent(), sources };

  it('lists them, each once', () => {
    expect(sourcesLine(content, [...ids, ...ids], 200)).toBe('Sources: Dameron 1995, Lui 2016, Kadiyala 2024');
  });

  it('counts those it has no room for', () => {
    expect(sourcesLine(content, ids, 42)).toBe('Sources: Dameron 1995, Lui 2016 and 1 more');
    expect(sourcesLine(content, ids, 41)).toBe('Sources: Dameron 1995 and 2 more');
  });

  it('says common practice when there are none', () => {
    expect(sourcesLine(content, [], 100)).toBe('Sources: common practice');
  });

  it('keeps to its length while more than one would be listed', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 120 }), (letters) => {
        const line = sourcesLine(content, ids, letters);
        if (line.includes(',')) expect(line.length).toBeLessThanOrEqual(letters);
        expect(line).toContain('Dameron 1995');
      }),
    );
  });
});
