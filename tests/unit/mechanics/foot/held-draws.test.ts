/** Draws held against the press in which the figures were calibrated: what is kept, what is dropped, and that it is bounded. */
import { expect, test } from 'vitest';
import { BARE_HEEL, CUT_TIE, inPress, PRESS_N, pressArch } from '../../../../src/mechanics/foot/arch-test';
import { heldDraws, TRIES_EACH } from '../../../../src/mechanics/foot/held-draws';
import type { FrameFigures } from '../../../../src/mechanics/foot/parameter-names';
import { pressLengthenings } from '../../../../src/mechanics/foot/press-lengthening';
import { FRAME_BANDS, freeFrames, HELD_WITHIN, modelLoadedFoot, TOLD } from '../../../tools/loaded-foot';

const foot = modelLoadedFoot();
const SLOW_MS = 60_000;

/** By the long way round: a frame of its own for each state of the fascia. */
const lengthening = (figures: FrameFigures): number => {
  const pressed = inPress(foot, { ...figures, heelPad: BARE_HEEL });
  const answer = 'kind' in pressed ? pressed : pressArch(pressed, PRESS_N);
  if ('kind' in answer) throw new Error(answer.kind);
  return answer.lengtheningMm;
};
const both = (figures: FrameFigures) =>
  [lengthening(figures), lengthening({ ...figures, fasciaTotal: CUT_TIE })] as const;

const [toldWhole, toldCut] = both(TOLD);
const holds = (figures: FrameFigures): boolean => {
  const [whole, cut] = both(figures);
  return Math.abs(whole / toldWhole - 1) <= HELD_WITHIN.whole && Math.abs(cut / toldCut - 1) <= HELD_WITHIN.cut;
};

test('by reciprocity the arch lengthens by as much as its displacements say, whole and cut', () => {
  for (const { values } of freeFrames(5, 8)) {
    const [whole, cut] = both(values);
    const quick = pressLengthenings(foot, values);
    expect(quick?.wholeMm).toBeCloseTo(whole, 6);
    expect(quick?.cutMm).toBeCloseTo(cut, 6);
  }
  expect(toldCut).toBeGreaterThan(toldWhole);
});

test(
  'kept are, in their order, those draws that lengthen as the told figures do within a quarter, whole and cut',
  () => {
    const { draws, tried } = heldDraws(foot, FRAME_BANDS, HELD_WITHIN, 10, 4);
    const free = freeFrames(tried, 4);
    expect(draws).toEqual([free[0], ...free.slice(1).filter(({ values }) => holds(values))]);
    expect(draws).toHaveLength(11);
    // Some are dropped, or there would be nothing to hold against.
    expect(tried).toBeGreaterThan(10);
  },
  SLOW_MS,
);

test(
  'fewer draws are the first of more',
  () => {
    const more = heldDraws(foot, FRAME_BANDS, HELD_WITHIN, 6, 2).draws;
    expect(heldDraws(foot, FRAME_BANDS, HELD_WITHIN, 3, 2).draws).toEqual(more.slice(0, 4));
  },
  SLOW_MS,
);

test('a hold that no draw meets ends, and leaves the told figures alone', () => {
  const { draws, tried } = heldDraws(foot, FRAME_BANDS, { whole: 1e-9, cut: 1e-9 }, 3, 1);
  expect(draws).toEqual(freeFrames(0, 1));
  expect(tried).toBe(3 * TRIES_EACH);
});
