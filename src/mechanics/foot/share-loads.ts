/**
 * What a share of body weight does to one metatarsal, against pushing off barefoot in plain walking, draw by draw. The frame is not
 * in proportion to its load (heel and ball are soft at first and stiff later), so each share asked about is run. Muscles go along with
 * the load; with none of it the frame has nothing to tell.
 */
import { peakOf } from '../stations';
import { type BandedCase, caseOf, isSolved, type LoadDraw } from './bands';
import { type KeptFrames, type LoadedFoot, type Person, runCase } from './case-draw';
import { STEPS } from './contributors';
import type { Ray } from './landmarks';
import type { LoadCase } from './load-case';
import { flagsOf } from './loads';
import { beyondTheoryOf, type FrameRun, type Pulled } from './pull';
import { rayStations } from './recover';
import { agreementOf, spreadOf } from './spread';
import { ranksOnly, SHARE_WAYS, type ShareLoad, type ShareWay } from './types';

/** The same load case under a share of body weight: what is told as a force goes with the total, where it acts stays. */
export const underShare = (loadCase: LoadCase, share: number): LoadCase => {
  const { figures } = loadCase;
  const per = (value: number): number => (value * share) / figures.total;
  return {
    ...loadCase,
    figures: {
      ...figures,
      total: share,
      sideways: per(figures.sideways),
      forwards: per(figures.forwards),
      twist: per(figures.twist),
      fibularisLongus: per(figures.fibularisLongus),
      fibularisBrevis: per(figures.fibularisBrevis),
      tibialisPosterior: per(figures.tibialisPosterior),
      flexorHallucis: per(figures.flexorHallucis),
      flexorDigitorum: per(figures.flexorDigitorum),
    },
  };
};

/** Draws made with the case named and the reference push-off. */
export interface CaseDraws {
  readonly banded: BandedCase;
  readonly draws: readonly LoadDraw[];
}

export interface ShareAsked {
  /** Standing still with the whole sole down. */
  readonly standing: CaseDraws;
  /** A flat foot in the middle of a step: what stands in for a boot. */
  readonly flat: CaseDraws;
  readonly pushOff: BandedCase;
  readonly person: Person;
  readonly ray: Ray;
  /** Of body weight, each more than none. */
  readonly shares: readonly number[];
  /** The place asked about, mm from the bone's tip; null: wherever the pull is largest. */
  readonly sMm: number | null;
}

/** Tension at a place, or the largest where none is asked about; null where nothing is pulled or the frame has no answer. */
const pullIn = (
  foot: LoadedFoot,
  run: FrameRun,
  draw: LoadDraw,
  ray: Ray,
  sMm: number | null,
  kept: KeptFrames,
): Pulled | null => {
  const solved = runCase(foot, run.loadCase, draw.values, run.person, run.form, kept);
  if (!isSolved(solved)) return null;
  const stations = rayStations(solved, foot.sections, ray, draw.values.wall);
  const mpa =
    sMm === null
      ? peakOf(stations, 'tensionMPa').mpa
      : stations.reduce((a, b) => (Math.abs(b.sMm - sMm) < Math.abs(a.sMm - sMm) ? b : a)).tensionMPa;
  return mpa > 0 ? { mpa, beyond: ranksOnly(flagsOf(solved, run.loadCase.figures)) } : null;
};

/** Whether beam theory may state a size at a place in the told push-off. */
const statesAt = (foot: LoadedFoot, run: FrameRun, draw: LoadDraw, ray: Ray, sMm: number): boolean => {
  const solved = runCase(foot, run.loadCase, draw.values, run.person, run.form);
  if (!isSolved(solved)) return false;
  const stations = rayStations(solved, foot.sections, ray, draw.values.wall);
  return !stations.reduce((a, b) => (Math.abs(b.sMm - sMm) < Math.abs(a.sMm - sMm) ? b : a)).outsideBeamTheory;
};

/** A way with a share that finds no answer as told is left out. Empty where the told push-off finds none. */
export const shareLoadsOf = (foot: LoadedFoot, asked: ShareAsked): readonly ShareLoad[] => {
  const { standing, flat, pushOff, person, ray } = asked;
  const [firstDraw] = flat.draws;
  if (firstDraw === undefined) return [];
  const { form } = foot;
  const base = (draw: LoadDraw): FrameRun => ({ loadCase: caseOf(draw, pushOff, 'reference'), person, form });
  const at: ShareLoad['at'] =
    asked.sMm !== null && statesAt(foot, base(firstDraw), firstDraw, ray, asked.sMm) ? 'break' : 'bone';
  const sMm = at === 'break' ? asked.sMm : null;
  const runOf: Readonly<Record<ShareWay, (draw: LoadDraw, share: number) => FrameRun>> = {
    standing: (draw, share) => ({ loadCase: underShare(caseOf(draw, standing.banded, 'case'), share), person, form }),
    shoe: (draw, share) => ({ loadCase: underShare(caseOf(draw, pushOff, 'reference'), share), person, form }),
    boot: (draw, share) => ({ loadCase: underShare(caseOf(draw, flat.banded, 'case'), share), person, form }),
    stiffSole: (draw, share) => ({
      loadCase: underShare(caseOf(draw, pushOff, 'reference'), share),
      person: { ...person, soleBending: person.soleBending + STEPS.soleBending },
      form,
    }),
  };
  const ratiosFor = (draws: readonly LoadDraw[], ways: readonly ShareWay[]): readonly ShareLoad[] => {
    const kept = draws.map((): KeptFrames => new Map());
    const pull = (run: FrameRun, i: number): Pulled | null =>
      pullIn(foot, run, draws[i] as LoadDraw, ray, sMm, kept[i] as KeptFrames);
    const before = draws.map((draw, i) => pull(base(draw), i));
    const one = (id: ShareWay, share: number): readonly ShareLoad[] => {
      const after = draws.map((draw, i) => pull(runOf[id](draw, share), i));
      const ratios = after.map((pulled, i) => {
        const without = before[i];
        return without == null || pulled === null ? null : pulled.mpa / without.mpa;
      });
      const [first, ...rest] = ratios;
      const drawn = rest.filter((ratio) => ratio !== null);
      if (first == null || drawn.length === 0) return [];
      const theory = beyondTheoryOf(before, after);
      const less = drawn.map((ratio) => ratio < 1);
      return [
        { id, share, at, ...theory, ratio: spreadOf(first, drawn), less: agreementOf(first < 1, less, rest.length) },
      ];
    };
    return ways.flatMap((id) => asked.shares.flatMap((share) => one(id, share)));
  };
  return [
    ...ratiosFor(standing.draws, ['standing']),
    ...ratiosFor(
      flat.draws,
      SHARE_WAYS.filter((way) => way !== 'standing'),
    ),
  ];
};
