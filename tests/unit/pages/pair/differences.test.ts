/** How two feet differ: in figures that agree with what is printed, in words that agree with the figures. */
import { describe, expect, it } from 'vitest';
import type { Angle } from '../../../../src/anatomy/angles';
import { DEFAULT_FOOT } from '../../../../src/anatomy/parameters';
import { byText, differenceWords } from '../../../../src/pages/pair/difference-words';
import { differencesOf, mostChanged, unequal } from '../../../../src/pages/pair/differences';
import { pairOf } from '../../../../src/pages/pair/pairs';
import { wordsOfScreens } from './words-of-screens';

const say = wordsOfScreens();
const LINES: Angle['lines'] = [
  [
    [0, 0, 0],
    [0, 0, 1],
  ],
  [
    [0, 0, 0],
    [0, 1, 1],
  ],
];
const angle = (id: Angle['id'], value: number, unit: Angle['unit'] = 'deg'): Angle => ({
  id,
  value,
  unit,
  view: 'lateral',
  lines: LINES,
});

describe('the difference of two measures', () => {
  it('is that of the printed figures, so that a reader can add it up', () => {
    // 20.4 and 21.6 are 1.2 apart and print as 20 and 22.
    expect(differencesOf([angle('meary', 20.4)], [angle('meary', 21.6)])).toMatchObject([
      { first: 20, second: 22, by: 2 },
    ]);
    expect(differencesOf([angle('protrusion1', 1.34, 'mm')], [angle('protrusion1', 1.26, 'mm')])).toMatchObject([
      { first: 1.3, second: 1.3, by: 0 },
    ]);
    expect(
      differencesOf([angle('protrusion1', 0.3, 'mm')], [angle('protrusion1', 0.1, 'mm')]).map(({ by }) => by),
    ).toEqual([-0.2]);
    expect(
      differencesOf([angle('protrusionShare1', 0.021, 'share')], [angle('protrusionShare1', 0.048, 'share')]),
    ).toMatchObject([{ first: 2, second: 5, by: 3 }]);
  });

  it('is told of what both feet have, and of no foot alone', () => {
    expect(differencesOf([angle('meary', 1), angle('boehler', 30)], [angle('boehler', 25)])).toMatchObject([
      { id: 'boehler', by: -5 },
    ]);
  });

  it('weighs angles against angles only, the largest first', () => {
    const all = differencesOf(
      [angle('calcanealPitch', 20), angle('meary', 0), angle('protrusion1', 0, 'mm'), angle('boehler', 30)],
      [angle('calcanealPitch', 25), angle('meary', -9), angle('protrusion1', 40, 'mm'), angle('boehler', 30.2)],
    );
    expect(unequal(all).map(({ id }) => id)).toEqual(['calcanealPitch', 'meary', 'protrusion1']);
    expect(mostChanged(all, 3).map(({ id }) => id)).toEqual(['meary', 'calcanealPitch']);
    expect(mostChanged(all, 1)).toHaveLength(1);
  });
});

describe('the words of the difference', () => {
  const compared = { known: DEFAULT_FOOT, tried: { ...DEFAULT_FOOT, arch: 1 }, side: null };
  const all = differencesOf(
    [angle('calcanealPitch', 22), angle('meary', 4)],
    [angle('calcanealPitch', 27), angle('meary', 4)],
  );
  const counted = { told: mostChanged(all, 3), changed: 1, all: 2, nameOf: () => 'tilt of the heel bone' };

  it('name both feet, count, and give both figures', () => {
    const text = differenceWords(say, pairOf('tried', compared), counted);
    expect(text).toContain('1 of 2 figures differ');
    expect(text).toContain('The foot of the case');
    expect(text).toContain('The foot as tried');
    expect(text).toContain('tilt of the heel bone 27 degrees instead of 22 degrees');
  });

  it('of a mirror image claim nothing of the other foot itself', () => {
    expect(differenceWords(say, pairOf('other', compared), { ...counted, told: [], changed: 0 })).toBe(
      say('pair.mirror'),
    );
  });

  it.each([
    [5, 'deg', '5 degrees more'],
    [-1, 'deg', '1 degree less'],
    [-0.4, 'mm', '0.4 mm less'],
    [3, 'share', '3 percentage points more'],
  ] as const)('tell %f %s as "%s"', (by, unit, text) => {
    expect(byText(say, { by, unit })).toBe(text);
  });

  it('say so where nothing differs', () => {
    const alike = { told: [], changed: 0, all: 30, nameOf: () => '' };
    expect(differenceWords(say, pairOf('low', compared), alike)).toContain('alike in all 30 figures');
  });
});
