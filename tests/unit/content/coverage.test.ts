/** `npm run content`: what is missing is found and said, and what is there is not; adding an injury is adding one file. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { checkedContent, contentReport } from '../../../src/cli/content-report';
import { contentFiles, readContent } from '../../../src/cli/read-content';
import { compileContent } from '../../../src/content';
import { type Covered, coverageRows, gapsOf, weakStatements } from '../../../src/content/coverage';
import type { Card, Content } from '../../../src/content/schema';
import { idOf, type RegionId } from '../../../src/ids';

const content = readContent();
const EXAMPLE = readFileSync(join(import.meta.dirname, 'example/toe-example.yaml'), 'utf8');

/** The content as it is, also where somebody has the example in it to try it. */
const realFiles = (): Map<string, string> =>
  new Map([...contentFiles()].filter(([, text]) => !text.includes('id: example-neck-second')));
const compiled = (): Content => {
  const files = realFiles().set('content/injuries/example.yaml', EXAMPLE);
  const result = compileContent(files);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.content;
};
const rowNamed = (of: Content, id: string) => {
  const row = coverageRows(of).find((r) => r.id === id);
  if (row === undefined) throw new Error(`no row ${id}`);
  return row;
};
const coveredIn = (of: Content, id: string): Readonly<Record<string, Covered>> =>
  Object.fromEntries(rowNamed(of, id).parts.map(({ name, covered }) => [name, covered]));

describe('adding an injury is adding one file', () => {
  it('the example of the guide compiles with the real content and nothing else', () => {
    const others = content.injuries.filter(({ id }) => id !== 'example-neck-second');
    expect(compiled().injuries.length).toBe(others.length + 1);
  });

  it('and the report says which parts it has and which it has not', () => {
    const covered = coveredIn(compiled(), 'example-neck-second');
    expect(covered).toMatchObject({ place: 'full', classification: 'full', rules: 'full', 'tell apart': 'full' });
    expect(covered).toMatchObject({ 'first film': 'full', code: 'full', 'found by': 'full', 'three readers': 'full' });
    expect(covered).toMatchObject({ 'recovery arms': 'none', troubles: 'none', 'soft tissue': 'none', review: 'none' });
  });

  it('a wrong id in it is told with file and line', () => {
    const files = realFiles().set('content/injuries/example.yaml', EXAMPLE.replace('[s92-32]', '[s92-99]'));
    const result = compileContent(files);
    expect(result.ok ? [] : result.problems.map(({ file, got }) => `${file}: ${got}`)).toEqual([
      'injuries/example.yaml: s92-99',
    ]);
  });
});

describe('a wrong example is told in plain words by the command, and never with a stack', () => {
  const told = (from: string, to: string) => {
    expect(EXAMPLE).toContain(from);
    return checkedContent(realFiles().set('content/injuries/example.yaml', EXAMPLE.replace(from, to)));
  };

  it('as it is, it is read, no text of it is wrong, and that no study speaks of it stands in table and words', () => {
    const { readable, text } = told('invented example', 'invented example');
    expect(readable).toBe(true);
    expect(text).toContain('example-neck-second has no study arm in studies.yaml.');
    expect(text).not.toMatch(/injuries example-neck-second\./);
  });

  it.each([
    ['id: example-neck-second', 'id: talar-neck', 'an id that is not used in cards. There is: talar-neck.'],
    [
      '{ source: null, mark: common practice }',
      '{ source: nobody-2020, mark: seen }',
      'sources.yaml (sources). There is: nobody-2020.',
    ],
  ])('%s as %s', (from, to, words) => {
    const { readable, text } = told(from, to);
    expect(readable).toBe(false);
    expect(text).toContain(words);
    expect(text).toMatch(/content\/injuries\/example\.yaml, line \d+: at records\[0\]/);
    expect(text).not.toMatch(/\n\s+at .*:\d+:\d+/);
  });

  it.each([
    ['patient: The piece has moved.', 'patient: The piece has moved 3 mm.', 'a figure stands in the patient text'],
    ['patient: The piece has moved.', `patient: ${'It goes on and '.repeat(5)}on.`, 'more than 15 words'],
    ['patient: The piece has moved.', 'patient: The distal piece has moved.', 'look up "distal"'],
    ['broadcast: The piece has moved.', 'broadcast: The piece (so seen) has moved.', 'cannot be spoken'],
  ])('%s as %s', (from, to, words) => {
    const { readable, text } = told(from, to);
    expect(readable).toBe(true);
    expect(text).toMatch(new RegExp(`injuries example-neck-second\\.classification.*${words}`));
  });
});

describe('a small invented content', () => {
  const [injury] = compiled().injuries.filter(({ id }) => id === 'example-neck-second');
  if (injury === undefined) throw new Error('no example');
  const card = {
    id: 'example-card',
    place: { is: 'regions', regions: ['no-such-part'] },
    tellApart: [],
    codes: [],
    findBy: ['toe'],
    danger: { what: { patient: 'a', broadcast: 'b', study: 'c' }, evidence: { source: 'x', mark: 'weak' } },
    evidence: { source: 'x', mark: 'seen' },
  } as unknown as Card;
  const empty = Object.fromEntries(Object.keys(content).map((key) => [key, []]));
  const small = { ...empty, injuries: [injury], cards: [card], reviews: {} } as unknown as Content;

  it('without mechanisms, vessels, options or codes has none of them', () => {
    const covered = coveredIn(small, injury.id);
    for (const part of ['mechanism', 'model', 'blood', 'options', 'code', 'danger signs'])
      expect(covered[part], part).toBe('none');
  });

  it('cards are looked at by parts of their own', () => {
    expect(coveredIn(small, 'example-card')).toMatchObject({
      place: 'none',
      'what it is': 'full',
      'danger sign': 'weak',
      'found by': 'full',
      'tell apart': 'none',
    });
  });

  it('of a card, common practice is there and is no source', () => {
    const practice = { source: null, mark: 'common practice' };
    const unsourced = { ...card, evidence: practice, danger: { ...card.danger, evidence: practice } };
    const rows = { ...small, cards: [unsourced] } as unknown as Content;
    expect(coveredIn(rows, 'example-card')).toMatchObject({
      'danger sign': 'full',
      'danger sourced': 'none',
      sources: 'none',
    });
    expect(gapsOf(rowNamed(rows, 'example-card'))).toContain(
      'example-card has no source at all (common practice, and marked so).',
    );
    expect(coveredIn(small, 'example-card')).toMatchObject({ 'danger sourced': 'weak', sources: 'full' });
  });

  it('each gap is one plain sentence, and what is there is no gap', () => {
    const gaps = gapsOf(rowNamed(small, 'example-card'));
    expect(gaps).toContain('example-card has no look-alike and how to tell it (tellApart).');
    expect(gaps.filter((gap) => gap.includes('danger sign'))).toEqual([
      'example-card: nothing better than a secondary page or memory stands behind "danger sign".',
    ]);
    expect(gaps.some((gap) => gap.includes('findBy'))).toBe(false);
  });

  it('a statement from memory is named by its record', () => {
    expect(weakStatements(small)).toEqual(['cards example-card: 1 from a secondary or unreviewed page.']);
  });

  it('the report holds both tables and says so when there are no cards', () => {
    expect(contentReport(small, new Map())).toMatch(/example-neck-second[\s\S]*example-card/);
    expect(contentReport({ ...small, cards: [] }, new Map())).toContain('Cards: none yet.');
  });
});

it('the real content has a row for each injury and card, and no text is missing a reader', () => {
  const rows = coverageRows(content);
  expect(rows.map(({ id }) => id)).toEqual([...content.injuries, ...content.cards].map(({ id }) => id));
  for (const { id, parts } of rows)
    expect(parts.find(({ name }) => name === 'three readers')?.covered, id).toBe('full');
});

describe('the place of a card', () => {
  const withPlace = (place: Card['place']): Content => ({
    ...content,
    cards: content.cards.map((card) => (card.id === 'cuboid' ? { ...card, place } : card)),
  });
  it.each([
    [{ is: 'bones' } as const, 'full'],
    [{ is: 'regions', regions: [idOf<RegionId>('cuboid-spot-dorsal')] } as const, 'full'],
    [{ is: 'regions', regions: [idOf<RegionId>('no-such-part')] } as const, 'none'],
  ])('%j counts as %s', (place, covered) => {
    const changed = withPlace({ ...place } as Card['place']);
    expect(coveredIn(changed, 'cuboid').place).toBe(covered);
    expect(gapsOf(rowNamed(changed, 'cuboid')).some((gap) => gap.startsWith('cuboid has no part of its bones'))).toBe(
      covered === 'none',
    );
  });
  it('is there for every card', () => {
    for (const { id } of content.cards) expect(coveredIn(content, id).place, id).toBe('full');
  });
});
