/** Numbers of the AO/OTA compendium: an optional reference for study, only as far as they were read, with the leave to use them. */
import { describe, expect, test } from 'vitest';
import { plainText, wordFinding } from '../../../src/wording';
import { caseOf, content, explained, findingNamed } from '../../tools/explained';

const numbered = content.injuries.filter(({ alsoNumbered }) => alsoNumbered !== undefined);

describe('numbers of another list', () => {
  test('bones only where no more was read; the whole number only where a study prints it; none for the joints', () => {
    expect(
      Object.fromEntries(content.injuries.map(({ id, alsoNumbered }) => [id, alsoNumbered?.number ?? null])),
    ).toEqual({
      'mt5-tuberosity': '87',
      'mt5-metaphyseal': '87',
      'mt5-proximal-shaft': '87.5.2A',
      'mt5-spiral-shaft': '87',
      'metatarsal-shaft-stress': '87',
      'mt2-base-stress': '87',
      'navicular-stress': '83',
      'calcaneus-intra-articular': '82',
      lisfranc: null,
    });
  });

  test.each(numbered.map(({ id }) => id))('%s: told to study only, with edition and leave', (id) => {
    const explanation = explained(caseOf(['injury', id]));
    const found = findingNamed(explanation, 'where.alsoNumbered');
    if (found === undefined) throw new Error('not told');
    expect(found.readers).toEqual(['study']);
    const text = plainText(wordFinding(content, explanation, found, 'study'));
    expect(text).toMatch(/AO\/OTA 8\d.*compendium of 2018/);
    expect(text).toMatch(/not commercially or for profit without leave/);
    expect(found.basis.sources.map(({ source }) => source)).toContain('kellam-2018');
  });

  test('a number read outside the compendium is marked weak', () => {
    for (const { alsoNumbered } of numbered)
      expect(alsoNumbered?.evidence.mark).toBe(alsoNumbered?.number.length === 2 ? 'weak' : 'seen');
  });
});
