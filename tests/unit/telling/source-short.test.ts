import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Source } from '../../../src/content/schema';
import { idOf, type SourceId } from '../../../src/ids';
import { shortSource, sourcesLine } from '../../../src/telling/source-short';

const source = (id: string, family: string | undefined, year: number | undefined, title = 'A title'): Source => ({
  id: idOf<SourceId>(id),
  type: 'article-journal',
  title,
  ...(family === undefined ? {} : { author: [{ family }] }),
  ...(year === undefined ? {} : { issued: { 'date-parts': [[year]] } }),
});

describe('a short source', () => {
  it('is the first author and the year, else the start of the title', () => {
    expect(shortSource(source('a', 'Dameron', 1995))).toBe('Dameron 1995');
    expect(shortSource(source('a', undefined, 2018, 'Fracture compendium'))).toBe('Fracture compendium 2018');
    expect(shortSource(source('a', undefined, undefined, 'x'.repeat(60)))).toHaveLength(40);
    expect(shortSource({ title: 'T', author: [{ literal: 'A group' }] })).toBe('A group');
  });
});

describe('a line of sources', () => {
  const sources = [source('a', 'Dameron', 1995), source('b', 'Lui', 2016), source('c', 'Kadiyala', 2024)];
  const ids = sources.map((s) => s.id);

  it('lists them, each once', () => {
    expect(sourcesLine(sources, [...ids, ...ids], 200)).toBe('Sources: Dameron 1995, Lui 2016, Kadiyala 2024');
  });

  it('counts those it has no room for', () => {
    expect(sourcesLine(sources, ids, 42)).toBe('Sources: Dameron 1995, Lui 2016 and 1 more');
    expect(sourcesLine(sources, ids, 41)).toBe('Sources: Dameron 1995 and 2 more');
  });

  it('says common practice when there are none', () => {
    expect(sourcesLine(sources, [], 100)).toBe('Sources: common practice');
  });

  it('keeps to its length while more than one would be listed', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 120 }), (letters) => {
        const line = sourcesLine(sources, ids, letters);
        if (line.includes(',')) expect(line.length).toBeLessThanOrEqual(letters);
        expect(line).toContain('Dameron 1995');
      }),
    );
  });
});
