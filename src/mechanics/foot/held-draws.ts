/**
 * Draws of the frame's figures that could be a foot: each is put in the press in which the figures were calibrated (683 N on the
 * ankle, heel pad cut away), and dropped where the foot lengthens by much more or much less than with the told figures, whole or with
 * its fascia cut. Drawn one by one and seldom all soft at once, the figures else make feet that no press has seen.
 *
 * Held against the told figures on the same foot, not against the millimetres of the foot that was measured: the told figures were
 * fixed on these, and what another shape or size does to the lengthening is no fault of a draw.
 */
import type { LoadedFoot } from './case-draw';
import { type Band, type Draw, drawerOf } from './draws';
import { FRAME_FIGURES, type FrameFigure } from './parameter-names';
import { pressLengthenings } from './press-lengthening';

export type FrameDraw = Draw<FrameFigure>;

/** By how much of itself a lengthening may differ: with the fascia, and with it cut. */
export interface HeldWithin {
  readonly whole: number;
  readonly cut: number;
}

export interface HeldDraws {
  /** The told values first. Fewer than asked for when too many were dropped. */
  readonly draws: readonly FrameDraw[];
  /** How many were drawn to keep these, the told values apart. */
  readonly tried: number;
}

/** Draws tried for each that is asked for, at most. About two are needed. */
export const TRIES_EACH = 8;

const near = (mm: number, told: number, within: number): boolean => Math.abs(mm - told) <= within * told;

/** `count` draws that hold. Where the told figures themselves have no answer in the press nothing can be held: none but these. */
export const heldDraws = (
  foot: LoadedFoot,
  bands: Readonly<Record<FrameFigure, Band>>,
  within: HeldWithin,
  count: number,
  seed: number,
): HeldDraws => {
  const { told, next } = drawerOf(FRAME_FIGURES, bands, seed);
  const measure = pressLengthenings(foot, told.values);
  const draws: FrameDraw[] = [told];
  let tried = 0;
  while (measure !== null && draws.length <= count && tried < TRIES_EACH * count) {
    const draw = next();
    tried++;
    const got = pressLengthenings(foot, draw.values);
    if (got === null || !near(got.wholeMm, measure.wholeMm, within.whole)) continue;
    if (near(got.cutMm, measure.cutMm, within.cut)) draws.push(draw);
  }
  return { draws, tried };
};
