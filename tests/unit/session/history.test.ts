import fc from 'fast-check';
import { expect, test } from 'vitest';
import { MOST_STEPS, startOf, stepBack, stepForward, stepTo } from '../../../src/session/history';

test('back undoes a step, forward redoes it', () => {
  fc.assert(
    fc.property(fc.array(fc.integer(), { maxLength: 30 }), fc.integer(), (steps, last) => {
      const before = steps.reduce(stepTo<number>, startOf(0));
      const after = stepTo(before, last);
      expect(stepBack(after)).toEqual({ ...before, future: [last] });
      expect(stepForward(stepBack(after))).toEqual(after);
    }),
  );
});

test('at either end nothing happens', () => {
  const one = startOf(1);
  expect(stepBack(one)).toBe(one);
  expect(stepForward(one)).toBe(one);
});

test('the oldest steps are forgotten', () => {
  let history = startOf(0);
  for (let i = 1; i <= MOST_STEPS + 50; i++) history = stepTo(history, i);
  expect(history.past.length).toBe(MOST_STEPS);
  for (let i = 0; i < MOST_STEPS + 50; i++) history = stepBack(history);
  expect(history.present).toBe(50);
});
