/** Which feet stand side by side, of which side, and what is written of a side that was not stated. */
import { describe, expect, it } from 'vitest';
import { DEFAULT_FOOT } from '../../../../src/anatomy/parameters';
import { halfLetter, halfName, halfShape, halfSide } from '../../../../src/pages/pair/half-words';
import { type Compared, kindsFor, pairOf } from '../../../../src/pages/pair/pairs';
import { wordsOfScreens } from './words-of-screens';

const say = wordsOfScreens();
const known = { ...DEFAULT_FOOT, heelToSecondHeadMm: 180 };
const tried = { ...known, arch: 1 };
const stated = (side: 'left' | 'right', status: 'confirmed' | 'reported'): Compared['side'] => ({
  state: 'stated',
  side,
  status,
});

describe('before and after', () => {
  it('is not offered while nothing is tried', () => {
    expect(kindsFor({ known, tried: known, side: null })).toEqual(['other', 'high', 'low']);
    expect(kindsFor({ known, tried, side: null })[0]).toBe('tried');
  });

  it('is the foot of the case and the one tried, of the same side, each with what it has otherwise', () => {
    const pair = pairOf('tried', { known, tried, side: stated('left', 'confirmed') });
    expect(pair.map(({ parameters }) => parameters)).toEqual([known, tried]);
    expect(pair.map(({ mirrored }) => mirrored)).toEqual([true, true]);
    expect(pair.map((half) => halfLetter(say, half))).toEqual(['L', 'L']);
    expect(pair.map((half) => halfName(say, half))).toEqual(['The foot of the case', 'The foot as tried']);
    expect(pair.map((half) => halfShape(say, half, pair))).toEqual(['Arch: usual.', 'Arch: high.']);
  });
});

describe('with the other foot', () => {
  it('is the same shape of the other side, drawn in the mirror', () => {
    const pair = pairOf('other', { known, tried, side: stated('left', 'confirmed') });
    expect(pair[1].parameters).toEqual(pair[0].parameters);
    expect(pair.map(({ mirrored }) => mirrored)).toEqual([true, false]);
    expect(pair.map((half) => halfLetter(say, half))).toEqual(['L', 'R']);
    expect(pair.map((half) => halfSide(say, half))).toEqual(['Left foot', 'Right foot']);
  });

  it('keeps a side from hearsay as hearsay on both', () => {
    const pair = pairOf('other', { known, tried, side: stated('right', 'reported') });
    expect(pair.map((half) => halfSide(say, half))).toEqual(['Right foot, as reported', 'Left foot, as reported']);
  });

  it.each([
    [{ state: 'notStated' }, 'Side not stated'],
    [{ state: 'contradiction' }, 'Statements on the side disagree'],
    [null, 'Side not stated'],
  ] as const)('writes no letter of a side that is not certain: %o', (side, text) => {
    const pair = pairOf('other', { known, tried, side });
    expect(pair.map((half) => halfLetter(say, half))).toEqual(['?', '?']);
    expect(pair.map(({ mirrored }) => mirrored)).toEqual([false, true]);
    expect(halfSide(say, pair[0])).toContain(text);
    expect(halfSide(say, pair[1])).toBe('Side just as uncertain (drawn as a left foot)');
  });
});

describe('two arches', () => {
  it('are feet of nobody, whatever the case, of the side that is spoken of', () => {
    const pair = pairOf('high', { known, tried, side: stated('left', 'reported') });
    expect(pair.map(({ parameters }) => parameters)).toEqual([DEFAULT_FOOT, { ...DEFAULT_FOOT, arch: 1 }]);
    expect(pair.map((half) => halfSide(say, half))).toEqual(['A left foot', 'A left foot']);
    expect(pair.map((half) => halfName(say, half))).toEqual(['Usual arch', 'High arch']);
    expect(pairOf('low', { known, tried, side: null })[1].parameters.arch).toBe(-1);
  });
});
