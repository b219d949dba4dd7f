/** The largest pull in one metatarsal in one run of one draw, and what a change does to it over all draws. */
import type { FootForm } from '../../anatomy/types';
import { peakOf } from '../stations';
import { isSolved, type LoadDraw } from './bands';
import { type KeptFrames, type LoadedFoot, type Person, runCase } from './case-draw';
import type { Ray } from './landmarks';
import type { LoadCase } from './load-case';
import { rayStations } from './recover';
import { agreementOf, spreadOf } from './spread';
import type { Agreement, Spread } from './types';

/** What one run of the frame is told besides the draw. */
export interface FrameRun {
  readonly loadCase: LoadCase;
  readonly person: Person;
  readonly form: FootForm;
}

/** Largest tension, MPa, on frames kept for this draw; null where the frame finds no answer or the bone is nowhere pulled. */
export const pullOf = (
  foot: LoadedFoot,
  { loadCase, person, form }: FrameRun,
  draw: LoadDraw,
  ray: Ray,
  kept: KeptFrames,
): number | null => {
  const solved = runCase(foot, loadCase, draw.values, person, form, kept);
  if (!isSolved(solved)) return null;
  const { mpa } = peakOf(rayStations(solved, foot.sections, ray, draw.values.wall), 'tensionMPa');
  return mpa > 0 ? mpa : null;
};

export interface PullChange {
  /** Largest pull with the change over that without, in the same draw. */
  readonly ratio: Spread;
  /** Whether it raises (holds true) or lowers the pull, and how many draws say so. */
  readonly raises: Agreement;
}

/** Draw by draw, the told values first. Null when these find no answer, or no other draw does. */
export const pullChangeOf = (
  before: readonly (number | null)[],
  after: readonly (number | null)[],
): PullChange | null => {
  const ratios = before.map((pull, i) => {
    const changed = after[i];
    return pull === null || changed == null ? null : changed / pull;
  });
  const [told, ...rest] = ratios;
  const drawn = rest.filter((ratio) => ratio !== null);
  if (told == null || drawn.length === 0) return null;
  return {
    ratio: spreadOf(told, drawn),
    raises: agreementOf(
      told > 1,
      drawn.map((ratio) => ratio > 1),
      rest.length,
    ),
  };
};
