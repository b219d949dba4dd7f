/** Sliders of question 2 in words, and the words a patient reads there. */
import { expect, it, test } from 'vitest';
import { readContent } from '../../../../src/cli/read-content';
import { LIMITS } from '../../../../src/pages/how/Limits';
import { SLIDER_BOUNDS, soleText, speedText, tiltText } from '../../../../src/pages/how/slider-words';
import { makeSay } from '../../../../src/pages/words';
import { LOAD_BOUNDS } from '../../../../src/session/what-if';
import { readingOf } from '../../../tools/reading-grade';

const { words, activities } = readContent();
const say = makeSay(words);

test.each([
  [0, 'bare foot'],
  [1, 'soft sole'],
  [8, 'firm sole'],
  [20, 'stiff sole'],
  [40, 'stiff sole'],
])('a sole of %d N m/rad is called %s', (bending, name) => {
  expect(soleText(say, bending, false)).toBe(name);
  expect(soleText(say, bending, true)).toBe(`${name} (${bending} N m/rad)`);
});

test('the ground says which edge is higher', () => {
  expect(tiltText(say, 0)).toBe('level');
  expect(tiltText(say, 6)).toBe('6 degrees, higher under the outer edge');
  expect(tiltText(say, -6)).toBe('6 degrees, higher under the inner edge');
});

test('a speed is told in both units', () => {
  expect(speedText(say, 3.3)).toBe('3.3 m/s (12 km/h)');
});

it('asks for nothing that the session refuses, tilts and speeds of every task included', () => {
  for (const key of ['carriedKg', 'soleBending', 'tiltDeg'] as const) {
    expect(SLIDER_BOUNDS[key][0]).toBeGreaterThanOrEqual(LOAD_BOUNDS[key][0]);
    expect(SLIDER_BOUNDS[key][1]).toBeLessThanOrEqual(LOAD_BOUNDS[key][1]);
  }
  for (const { figures, speed } of activities) {
    expect(Math.abs(figures.tilt.value)).toBeLessThanOrEqual(LOAD_BOUNDS.tiltDeg[1]);
    if (speed !== undefined) expect([speed.low, speed.high].map((s) => s >= 1 && s <= 8)).toEqual([true, true]);
  }
});

it('is read by a patient at grade 8 at most', () => {
  const keys = [
    ...LIMITS.map((limit) => `limit.${limit}`),
    'ratio.told',
    'ratio.workingHeld',
    'ratio.workingRank',
    'ratio.key',
    'ratio.noMeasure',
    'whyHere.what',
    'whyHere.working',
    'whyHere.workingHeld',
    'whyHere.key',
    'whatIf.hint',
  ];
  const { words: count, grade } = readingOf(keys.map((key) => words[key]).join(' '));
  expect(count).toBeGreaterThan(100);
  expect(grade).toBeLessThanOrEqual(8);
});

it('names no megapascal of a person to anybody; what a metal bears is told in them', () => {
  const named = Object.entries(words).filter(([, text]) => /\bMPa\b|megapascal/i.test(text));
  expect(named.map(([key]) => key).filter((key) => key !== 'screw.materials')).toEqual([]);
});
