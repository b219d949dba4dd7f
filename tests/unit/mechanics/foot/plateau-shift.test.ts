/** Where a change moves the plateau of pull: draw by draw, each against the same draw without it. */
import { expect, test } from 'vitest';
import { loadDraws } from '../../../../src/mechanics/foot/bands';
import { contributorsOf } from '../../../../src/mechanics/foot/contributors';
import { type PulledAt, shiftOf } from '../../../../src/mechanics/foot/pull';
import { bandedCase, freeFrames, modelLoadedFoot, PERSON } from '../../../tools/loaded-foot';

const at = (middleMm: number): PulledAt => ({ mpa: 20, middleMm, beyond: false });

test('towards the head is positive; a draw that stays, goes back or finds no answer does not agree', () => {
  const before = [30, 30, 31, 32, 33, 34].map(at);
  const after = [at(34), at(35), at(34), at(32), at(31), null];
  const shift = shiftOf(before, after);
  expect(shift?.mm.told).toBe(4);
  // 5, 3, 0 and -2 of those with an answer.
  expect(shift?.mm.low).toBeCloseTo(-1.4, 9);
  expect(shift?.mm.high).toBeCloseTo(4.4, 9);
  expect(shift).toMatchObject({ toHead: 2 / 5, toTip: 1 / 5, still: 1 / 5 });
  expect(shiftOf(after.slice(0, 5), before.slice(0, 5))).toMatchObject({ toHead: 1 / 4, toTip: 2 / 4, still: 1 / 4 });
});

test('without a told answer, or any other, there is no shift', () => {
  expect(shiftOf([null, at(3)], [at(3), at(4)])).toBeNull();
  expect(shiftOf([at(3), null], [at(3), at(4)])).toBeNull();
});

test('on the shipped foot a twist outwards and one inwards under push-off move the fifth ray’s plateau, body mass hardly', () => {
  const walking = bandedCase('walking');
  const foot = modelLoadedFoot();
  const found = contributorsOf(foot, loadDraws(freeFrames(1, 1), walking, walking, 1), walking, PERSON, 5);
  const told = (id: string): number => found.find((each) => each.id === id)?.shift.mm.told ?? Number.NaN;
  expect(told('twistIn')).toBeGreaterThan(2);
  expect(Math.abs(told('bodyMass'))).toBeLessThan(1.5);
}, 120_000);
