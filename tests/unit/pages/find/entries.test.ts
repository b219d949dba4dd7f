/** What is typed finds what is meant: by plain, English and Latin names, by the beginnings of words, the closest first. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readContent } from '../../../../src/cli/read-content';
import { BONE_IDS } from '../../../../src/ids';
import { entriesOf, found, seekEntry } from '../../../../src/pages/find/entries';
import { makeSay } from '../../../../src/pages/words';

const content = readContent();
const entries = entriesOf(content, 'patient', makeSay(content.words));
const first = (typed: string): string | undefined => found(entries, typed)[0]?.key;

describe('finding by typing', () => {
  test.each([
    ['heel', 'bone calcaneus'],
    ['calc', 'bone calcaneus'],
    ['fifth meta', 'bone metatarsal5'],
    ['os metatarsale quintum', 'bone metatarsal5'],
    ['navic', 'bone navicular'],
    ['how did', 'question how'],
    ['hand', 'page hand'],
    ['talar neck', 'card talar-neck'],
    ['turf toe', 'card first-mtp-plantar-plate'],
    ['dancer', 'injury mt5-spiral-shaft'],
    ['find an', 'page find'],
    ['from below', 'view sole'],
    ['slate', 'look slate'],
    ['study', 'reader study'],
  ])('%s', (typed, key) => {
    expect(first(typed)).toBe(key);
  });

  test('every bone is found by each of its names', () => {
    for (const bone of content.bones) {
      for (const name of [bone.term, bone.plain, bone.latin, ...bone.synonyms])
        expect(
          found(entries, name, 40).map(({ key }) => key),
          name,
        ).toContain(`bone ${bone.id}`);
    }
    expect(content.bones).toHaveLength(BONE_IDS.length);
  });

  test('whatever is typed gives at most eight, each once, and nothing for nonsense', () => {
    fc.assert(
      fc.property(fc.string(), (typed) => {
        const hits = found(entries, typed);
        expect(hits.length).toBeLessThanOrEqual(8);
        expect(new Set(hits.map(({ key }) => key)).size).toBe(hits.length);
      }),
    );
    expect(found(entries, 'qzx')).toEqual([]);
  });

  test('what was typed can always be looked for among the injuries, as it stands', () => {
    const say = makeSay(content.words);
    expect(seekEntry('  lis frank ', say)).toMatchObject([{ act: { do: 'seek', words: 'lis frank' } }]);
    expect(seekEntry('  ', say)).toEqual([]);
  });

  test('keys are unique', () => {
    expect(new Set(entries.map(({ key }) => key)).size).toBe(entries.length);
  });
});
