import { describe, expect, test } from 'vitest';
import { amountsOf, FIRST_DIARY, ofKind, stepRatios, typed } from '../../../../src/pages/repeat/diary-state';
import { leavesOpen, shortNumber, wearOf } from '../../../../src/pages/repeat/wear';
import { content } from '../../../tools/explained';

const constants = content.repetitions[0];
if (constants === undefined) throw new Error('the content has no constants of repeated load');
const task = { value: 1.6, unit: 'times', lowHigh: [1.3, 2] } as const;
const steady = { ...FIRST_DIARY, rampPercent: 0 };

describe('weeks as told', () => {
  test('a ramp grows by its percent on the week before', () => {
    expect(amountsOf({ ...FIRST_DIARY, before: 20, rampPercent: 10, weekCount: 3 })).toEqual([22, 24.2, 26.6]);
  });
  test('typing begins from the ramp, and a longer plan goes on with it', () => {
    const state = typed({ ...FIRST_DIARY, weekCount: 2 });
    expect(state.each).toEqual([22, 24.2]);
    expect(amountsOf({ ...state, each: [5, 6], weekCount: 3 })).toEqual([5, 6, 26.6]);
  });
  test('another kind of week starts anew', () => {
    expect(ofKind(typed({ ...FIRST_DIARY, before: 80 }), 'sessions')).toMatchObject({
      before: 3,
      plan: 'ramp',
      each: [],
    });
  });
  test('the load of a step is as before, as told, or as the frame has it with its band', () => {
    expect(stepRatios(FIRST_DIARY, task)).toEqual([1]);
    expect(stepRatios({ ...FIRST_DIARY, step: 'own', ownStep: 1.2 }, task)).toEqual([1.2]);
    expect(stepRatios({ ...FIRST_DIARY, step: 'task' }, task)).toEqual([1.6, 1.3, 2]);
    expect(stepRatios({ ...FIRST_DIARY, step: 'task' }, null)).toEqual([1]);
  });
});

describe('wear', () => {
  test('the habit gone on is once the habit, mended or not', () => {
    for (const { done, left } of wearOf(steady, constants, null))
      for (const end of [done.low, done.high, left.low, left.high]) expect(end).toBeCloseTo(1, 9);
  });
  test('sessions at the same pace wear as kilometres of as many strides do', () => {
    const sessions = wearOf({ ...ofKind(FIRST_DIARY, 'sessions'), before: 10 }, constants, null);
    expect(sessions[1]?.done.value).toBeCloseTo(wearOf(FIRST_DIARY, constants, null)[1]?.done.value ?? Number.NaN, 2);
  });
  test('shorter strides over the same way are more of them', () => {
    const short = wearOf({ ...steady, strideBeforeM: 2.2, strideAheadM: 2 }, constants, null);
    expect(short[0]?.done.value).toBeCloseTo(1.1, 9);
  });
  test('a harder step magnifies by the power, over its range', () => {
    const [first] = wearOf({ ...steady, step: 'own', ownStep: 1.1 }, constants, null);
    expect(first?.done.value).toBeCloseTo(1.1 ** 6.6, 9);
    expect(first?.done.low).toBeCloseTo(1.1 ** 5.3, 9);
    expect(first?.done.high).toBeCloseTo(1.1 ** 9, 9);
  });
  test('the band of the frame widens that of the constants', () => {
    const [first] = wearOf({ ...steady, step: 'task' }, constants, task);
    expect(first?.done.low).toBeCloseTo(1.3 ** 5.3, 6);
    expect(first?.done.high).toBeCloseTo(2 ** 9, 6);
  });
  test('a step that may be lighter or harder leaves open whether it is more', () => {
    const doneAt = (step: 'same' | 'task') =>
      wearOf({ ...steady, step }, constants, { ...task, lowHigh: [0.8, 2] })[0]?.done ?? { value: 0, low: 0, high: 0 };
    expect([leavesOpen(doneAt('task')), leavesOpen(doneAt('same'))]).toEqual([true, false]);
  });
  test('a week left out mends some of what stands', () => {
    const rest = wearOf({ ...typed(FIRST_DIARY), each: [20, 0, 0, 0, 0, 0] }, constants, null);
    expect(rest[0]?.left.value).toBeCloseTo(1, 9);
    for (let i = 1; i < rest.length; i++)
      expect(rest[i]?.left.value).toBeLessThan(rest[i - 1]?.left.value ?? Number.NaN);
  });
});

test.each([
  [1.04, '1'],
  [1.25, '1.3'],
  [12.6, '13'],
  [512, '510'],
  [0.034, '0.034'],
])('%s is told as %s', (value, text) => {
  expect(shortNumber(value)).toBe(text);
});
