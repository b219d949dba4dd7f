import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { secondsOf, spokenWords } from '../../../src/telling/spoken';

const said = (text: string): string => spokenWords(text).join(' ');

describe('spoken words', () => {
  it.each([
    ['It took 15.0 weeks.', 'It took fifteen point zero weeks'],
    ['87 of 100 healed', 'eighty seven of one hundred healed'],
    ['6–8 weeks', 'six to eight weeks'],
    ['about 27 mm from the base', 'about twenty seven millimetres from the base'],
    ['44 % of them', 'forty four percent of them'],
    ['44% of them', 'forty four percent of them'],
    ['An MRI of MT5', 'An M R I of M T five'],
    ['non-operative care (a boot)', 'non operative care a boot'],
    ['the 5th bone', 'the five bone'],
    ['298,886 people', 'two hundred and ninety eight thousand eight hundred and eighty six people'],
    ['in 2026', 'in two thousand and twenty six'],
    ['≥ 2 mm', 'at least two millimetres'],
    ['side-step — then nothing …', 'side step then nothing'],
    ['007', 'zero zero seven'],
    ['', ''],
    ['toString constructor', 'toString constructor'],
    ['N and mm', 'newtons and millimetres'],
  ])('%s', (text, expected) => {
    expect(said(text)).toBe(expected);
  });

  it('needs at least as many words as there are printed ones, and time follows words', () => {
    fc.assert(
      fc.property(fc.array(fc.stringMatching(/^[a-z]{1,9}$/), { minLength: 1, maxLength: 40 }), (words) => {
        expect(spokenWords(words.join(' ')).length).toBeGreaterThanOrEqual(words.length);
        expect(secondsOf(words.join(' '), 120)).toBeCloseTo(spokenWords(words.join(' ')).length / 2, 9);
      }),
    );
  });

  it('ends on any text and never returns an empty word', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 200 }), (text) => {
        for (const word of spokenWords(text)) expect(word.length).toBeGreaterThan(0);
      }),
    );
  });

  it('counts two texts together as the sum of both', () => {
    fc.assert(
      fc.property(fc.lorem(), fc.lorem(), (a, b) => {
        expect(spokenWords(`${a} ${b}`).length).toBe(spokenWords(a).length + spokenWords(b).length);
      }),
    );
  });
});
