/** The page of sources lists each in use with what rests on it; the rule of films is nowhere on a patient's screen. */
import { describe, expect, it } from 'vitest';
import { readContent } from '../../../src/cli/read-content';
import { TOPICS, usesOfSources } from '../../../src/content/source-uses';
import { READERS } from '../../../src/ids';
import { addressOf, holding, sourceRows } from '../../../src/pages/evidence/source-rows';
import { entriesOf } from '../../../src/pages/find/entries';
import { makeSay } from '../../../src/pages/words';
import { wordedFindings } from '../../../src/telling/worded-findings';
import { DEMOS, demoOnDefaultFoot, explained } from '../../tools/explained';

const content = readContent();
const rows = sourceRows(content, 'study');

describe('the list of sources', () => {
  it('holds every source of the content, each once, under one topic', () => {
    expect(rows.map(({ source }) => source.id).toSorted()).toEqual(content.sources.map(({ id }) => id).toSorted());
    for (const { topic } of rows) expect(TOPICS).toContain(topic);
  });

  it.each(READERS)('says of each what rests on it, for %s', (reader) => {
    for (const { source, uses } of sourceRows(content, reader))
      for (const { statement } of uses) expect(statement, source.id).toMatch(/\w/);
  });

  it('counts each citation of a study: its row, with its mark', () => {
    const uses = usesOfSources(content, 'study');
    for (const { id, source, mark, asPrinted } of content.studies)
      expect(uses.get(source)).toContainEqual({ kind: 'studies', record: id, statement: asPrinted, mark });
  });

  it('is found by author, year, number and what it is used for, whatever the accents', () => {
    const found = (typed: string) => holding(rows, typed).map(({ source }) => source.id);
    expect(found('mologne 2005')).toContain('mologne-2005');
    expect(found('20197494')).toContain('torg-2010');
    expect(found('jimenez')).toEqual(['jimenez-almonte-2019']);
    expect(found('no such thing anywhere')).toEqual([]);
    expect(found('')).toHaveLength(rows.length);
  });

  it('leads only to secure pages, and has the identifier as text', () => {
    for (const { source } of rows) {
      const address = addressOf(source);
      if (address === null) continue;
      expect(new URL(address.href).protocol).toBe('https:');
      expect(address.text).not.toBe('');
    }
  });
});

describe('the rule of films', () => {
  const say = makeSay(content.words);
  const pages = (reader: (typeof READERS)[number]) =>
    entriesOf(content, reader, say).flatMap(({ act }) => (act.do === 'page' ? [act.page] : []));

  it('is found by those who learn or speak, and not by a patient', () => {
    expect(pages('study')).toContain('rule');
    expect(pages('broadcast')).toContain('rule');
    expect(pages('patient')).not.toContain('rule');
  });

  it('is no part of any explanation, script or handout', () => {
    const names = content.decisionRules.map(({ term }) => term);
    expect(names).toEqual(['Ottawa foot rule']);
    for (const demo of DEMOS)
      for (const reader of READERS)
        for (const { text } of wordedFindings(content, explained(demoOnDefaultFoot(demo)), reader))
          for (const name of names) expect(text).not.toContain(name);
  });

  it('has a figure only with its source, and its interval where one was printed', () => {
    for (const { figures, steps } of content.decisionRules) {
      expect(figures.length).toBeGreaterThan(1);
      for (const { evidence, percent, lowHighPercent } of figures) {
        expect(evidence.source).not.toBeNull();
        const [low = 0, high = 100] = lowHighPercent ?? [];
        expect(low <= percent && percent <= high).toBe(true);
      }
      expect(steps.filter(({ at }) => at !== null).map(({ at }) => at?.bone)).toEqual(['metatarsal5', 'navicular']);
    }
  });
});
