/** The largest pull in one metatarsal in one run of one draw, and what a change does to it over all draws. */
import type { FootForm } from '../../anatomy/types';
import { peakOf } from '../stations';
import { isSolved, type LoadDraw, plateauOf } from './bands';
import { type KeptFrames, type LoadedFoot, type Person, runCase } from './case-draw';
import type { Ray } from './landmarks';
import type { LoadCase } from './load-case';
import { flagsOf } from './loads';
import { rayStations } from './recover';
import { agreementOf, spreadOf } from './spread';
import { type Agreement, type BeyondTheory, type PlateauShift, ranksOnly, type Spread } from './types';

/** What one run of the frame is told besides the draw. */
export interface FrameRun {
  readonly loadCase: LoadCase;
  readonly person: Person;
  readonly form: FootForm;
}

export interface Pulled {
  /** Tension in the bone, MPa. */
  readonly mpa: number;
  /** Beyond what the theory may state as a size. */
  readonly beyond: boolean;
}

/** The largest pull in a bone, and where. */
export interface PulledAt extends Pulled {
  /** Middle of the stretch that carries nine tenths of it, mm from the tip. */
  readonly middleMm: number;
}

/** How many draws of a change are beyond the theory, with it or without it; a draw without an answer is no size either. */
export const beyondTheoryOf = (
  before: readonly (Pick<Pulled, 'beyond'> | null)[],
  after: readonly (Pick<Pulled, 'beyond'> | null)[],
): BeyondTheory => {
  const beyond = before.map((one, i) => (one?.beyond ?? true) || (after[i]?.beyond ?? true));
  const [told = true, ...rest] = beyond;
  return { ranks: told, beyond: rest.filter(Boolean).length / rest.length };
};

/** Largest tension on frames kept for this draw; null where the frame finds no answer or the bone is nowhere pulled. */
export const pullOf = (
  foot: LoadedFoot,
  { loadCase, person, form }: FrameRun,
  draw: LoadDraw,
  ray: Ray,
  kept: KeptFrames,
): PulledAt | null => {
  const solved = runCase(foot, loadCase, draw.values, person, form, kept);
  if (!isSolved(solved)) return null;
  const stations = rayStations(solved, foot.sections, ray, draw.values.wall);
  const { mpa, sMm } = peakOf(stations, 'tensionMPa');
  if (!(mpa > 0)) return null;
  // A bone that is a beam nowhere has no plateau to state, only the place of its peak.
  const [fromMm, toMm] = stations.some((s) => !s.outsideBeamTheory) ? plateauOf(stations, mpa) : [sMm, sMm];
  return { mpa, middleMm: (fromMm + toMm) / 2, beyond: ranksOnly(flagsOf(solved, loadCase.figures)) };
};

export interface PullChange extends BeyondTheory {
  /** Largest pull with the change over that without, in the same draw. */
  readonly ratio: Spread;
  /** Whether it raises (holds true) or lowers the pull, and how many draws say so. */
  readonly raises: Agreement;
}

/** Draw by draw, the told values first. Null when these find no answer, or no other draw does. */
export const pullChangeOf = (
  before: readonly (Pulled | null)[],
  after: readonly (Pulled | null)[],
): PullChange | null => {
  const ratios = before.map((pull, i) => {
    const changed = after[i];
    return pull === null || changed == null ? null : changed.mpa / pull.mpa;
  });
  const [told, ...rest] = ratios;
  const drawn = rest.filter((ratio) => ratio !== null);
  if (told == null || drawn.length === 0) return null;
  return {
    ...beyondTheoryOf(before, after),
    ratio: spreadOf(told, drawn),
    raises: agreementOf(
      told > 1,
      drawn.map((ratio) => ratio > 1),
      rest.length,
    ),
  };
};

/** A shift of no more than this is not told: the cuts of the bone lie a millimetre or two apart (chosen). */
export const LEAST_SHIFT_MM = 1;

/** Where the plateau goes with a change, draw by draw as the ratio does. */
export const shiftOf = (
  before: readonly (PulledAt | null)[],
  after: readonly (PulledAt | null)[],
): PlateauShift | null => {
  const moved = before.map((pull, i) => {
    const changed = after[i];
    return pull === null || changed == null ? null : changed.middleMm - pull.middleMm;
  });
  const [told, ...rest] = moved;
  const drawn = rest.filter((mm) => mm !== null);
  if (told == null || drawn.length === 0) return null;
  const share = (of: (mm: number) => boolean): number => drawn.filter(of).length / rest.length;
  return {
    mm: spreadOf(told, drawn),
    toHead: share((mm) => mm > 0),
    toTip: share((mm) => mm < 0),
    still: share((mm) => Math.abs(mm) <= LEAST_SHIFT_MM),
  };
};
