/**
 * What the frame says once everything that is assumed or uncertain is let loose: a seeded ensemble of feet that the calibration does
 * not rule out (`held-draws.ts`), each run twice, in the case and in the reference activity, so that only ratios and signs leave it.
 */

import { peakOf } from '../stations';
import { type LoadedFoot, type Person, runCase } from './case-draw';
import { type Band, type Draw, drawsOf, inBand } from './draws';
import type { FrameDraw } from './held-draws';
import { RAYS, type Ray } from './landmarks';
import { type LegHold, legHoldOf } from './leg-hold';
import { CASE_FIGURES, type CaseFigure, type LoadCase } from './load-case';
import { fasciaOf, flagsOf, sidewaysOf } from './loads';
import { FRAME_FIGURES, type FrameFigure } from './parameter-names';
import { bandsOfParts } from './part-bands';
import { type PathForce, pathForces, tibiaOf } from './path-forces';
import { allStations, jointForces, type RayStation, rayStations } from './recover';
import { chanceFloor, sensitivityOf } from './sensitivity';
import type { FootSolution } from './solve';
import { agreementOf, spreadOf } from './spread';
import { bandsOfStations, stationRow } from './station-bands';
import { type LoadBands, ranksOnly, type Spread } from './types';

export type CaseBands = Readonly<Record<CaseFigure, Band>>;
export type FrameBands = Readonly<Record<FrameFigure, Band>>;

/** A case whose figures are bands. */
export interface BandedCase extends Omit<LoadCase, 'figures'> {
  readonly figures: CaseBands;
}

const CASE_NAMES = [
  ...CASE_FIGURES.map((name) => `case.${name}` as const),
  ...CASE_FIGURES.map((name) => `reference.${name}` as const),
] as const;
const NAMES = [...FRAME_FIGURES, ...CASE_NAMES] as const;
type Name = (typeof NAMES)[number];
export type LoadDraw = Draw<Name>;

/** Figures of the tasks are drawn apart from those of the frame: a foot does not change with what it is asked about. */
const TASKS_SEED = 1;

/** `frames`: draws of the frame's figures, the told values first, each to be given a draw of both tasks. */
export const loadDraws = (
  frames: readonly FrameDraw[],
  loadCase: BandedCase,
  reference: BandedCase,
  seed: number,
): readonly LoadDraw[] => {
  // The same task in both: one draw of it, or the ratio would not be one.
  const same = loadCase.id === reference.id;
  const bands = Object.fromEntries([
    ...CASE_FIGURES.map((name) => [`case.${name}`, loadCase.figures[name]] as const),
    ...CASE_FIGURES.map((name) => [`reference.${name}`, reference.figures[name]] as const),
  ]) as Record<(typeof CASE_NAMES)[number], Band>;
  const tasks = drawsOf(CASE_NAMES, bands, frames.length - 1, seed + TASKS_SEED);
  const draws = frames.map((frame, i): LoadDraw => {
    const task = tasks[i] as Draw<(typeof CASE_NAMES)[number]>;
    return { shares: { ...frame.shares, ...task.shares }, values: { ...frame.values, ...task.values } };
  });
  if (!same) return draws;
  return draws.map(({ shares, values }) => {
    const both = (of: (name: CaseFigure) => number) =>
      Object.fromEntries(CASE_FIGURES.map((name) => [`reference.${name}`, of(name)]));
    const share = (name: CaseFigure): number => shares[`case.${name}`];
    // As far out in its own band: a slider moves the band of the case alone.
    return {
      shares: { ...shares, ...both(share) },
      values: { ...values, ...both((name) => inBand(reference.figures[name], share(name))) },
    };
  });
};

/** A case with the figures of one draw. */
export const caseOf = ({ values }: LoadDraw, loadCase: BandedCase, which: 'case' | 'reference'): LoadCase => ({
  ...loadCase,
  figures: Object.fromEntries(
    CASE_FIGURES.map((name) => [name, values[`${which}.${name}`]]),
  ) as unknown as LoadCase['figures'],
});

interface Answer {
  readonly draw: LoadDraw;
  readonly ratio: number;
  readonly peakAtMm: number;
  readonly directionRad: number;
  readonly pressedRad: number;
  readonly mostOfFive: boolean;
  /** Beyond what may be stated as a size, in the case or in the reference. */
  readonly ranks: boolean;
  /** Beyond it in the case alone. */
  readonly ranksItself: boolean;
  readonly plateau: readonly [number, number];
  readonly fasciaN: number;
  readonly achillesN: number;
  readonly tibiaN: number;
  readonly sideways: number;
  readonly leg: LegHold;
  readonly parts: readonly PathForce[];
  /** Of the bone in question: `stationRow`. */
  readonly stations: Float64Array;
}

/** Nine tenths of the largest pull: told as a plateau, for a peak's own place is the cortex guess talking. */
const PLATEAU = 0.9;

export const plateauOf = (stations: readonly RayStation[], peakMPa: number): readonly [number, number] => {
  const high = stations.filter((s) => !s.outsideBeamTheory && s.tensionMPa >= PLATEAU * peakMPa).map((s) => s.sMm);
  return [Math.min(...high), Math.max(...high)];
};

export const isSolved = (result: ReturnType<typeof runCase>): result is FootSolution => !('kind' in result);

const answerOf = (
  foot: LoadedFoot,
  draw: LoadDraw,
  loadCase: BandedCase,
  reference: BandedCase,
  person: Person,
  ray: Ray,
): Answer | null => {
  const [ofCase, ofReference] = [caseOf(draw, loadCase, 'case'), caseOf(draw, reference, 'reference')];
  const solved = runCase(foot, ofCase, draw.values, person);
  const base = runCase(foot, ofReference, draw.values, {
    ...person,
    carriedKg: 0,
    soleBending: 0,
  });
  if (!isSolved(solved) || !isSolved(base)) return null;
  const wall = draw.values.wall;
  const rays = allStations(solved, foot.sections, wall);
  const stations = rays[ray];
  const [peak, push] = [peakOf(stations, 'tensionMPa'), peakOf(stations, 'compressionMPa')];
  const referencePeak = peakOf(rayStations(base, foot.sections, ray, wall), 'tensionMPa');
  const others = RAYS.filter((other) => other !== ray).map((other) => peakOf(rays[other], 'tensionMPa').mpa);
  if (!(peak.mpa > 0 && referencePeak.mpa > 0)) return null;
  return {
    draw,
    ratio: peak.mpa / referencePeak.mpa,
    peakAtMm: peak.sMm,
    directionRad: stations.find((s) => s.sMm === peak.sMm)?.tensionAtRad ?? 0,
    pressedRad: stations.find((s) => s.sMm === push.sMm)?.compressionAtRad ?? 0,
    mostOfFive: others.every((mpa) => mpa < peak.mpa),
    ranksItself: ranksOnly(flagsOf(solved, ofCase.figures)),
    ranks: ranksOnly([...flagsOf(solved, ofCase.figures), ...flagsOf(base, ofReference.figures)]),
    plateau: plateauOf(stations, peak.mpa),
    fasciaN: fasciaOf(solved),
    achillesN: solved.achillesN,
    tibiaN: tibiaOf(solved),
    sideways: sidewaysOf(ofCase.figures),
    leg: legHoldOf(solved),
    parts: pathForces(solved, jointForces(solved), rays, ofCase.figures),
    stations: stationRow(stations, peak.mpa, referencePeak.mpa),
  };
};

const QUARTER_RAD = Math.PI / 4;
const apart = (a: number, b: number): number => Math.abs(Math.atan2(Math.sin(a - b), Math.cos(a - b)));

/** Ratios nearer to each other than this are one ratio: a task against itself has no spread to be shared out, only rounding. */
const ONE_RATIO = 1e-9;

/** What the log ratios hang on. Nothing where they have no spread; a figure without a band was not drawn. */
const hangsOn = (answers: readonly Answer[]): Pick<LoadBands, 'sensitivity' | 'chanceShare'> => {
  const ratios = answers.map((a) => Math.log(a.ratio));
  const drawn = NAMES.filter((name) => new Set(answers.map((a) => a.draw.values[name])).size > 1);
  const chanceShare = chanceFloor(drawn.length, answers.length);
  if (Math.max(...ratios) - Math.min(...ratios) < ONE_RATIO) return { sensitivity: [], chanceShare };
  const figures = drawn.map((name) => ({ figure: name, shares: answers.map((a) => a.draw.shares[name]) }));
  return { sensitivity: sensitivityOf(figures, ratios), chanceShare };
};

/** Bands of one bone in one case against the reference. Null when the told values, or all draws, find no answer. */
export const loadBands = (
  foot: LoadedFoot,
  draws: readonly LoadDraw[],
  loadCase: BandedCase,
  reference: BandedCase,
  person: Person,
  ray: Ray,
  from: Pick<LoadBands, 'seed' | 'tried'>,
): LoadBands | null => {
  const all = draws.map((draw) => answerOf(foot, draw, loadCase, reference, person, ray));
  const [told, ...rest] = all;
  const drawn = rest.filter((answer) => answer !== null);
  if (!told || drawn.length === 0) return null;
  const spread = (of: (a: Answer) => number): Spread => spreadOf(of(told), drawn.map(of));
  const side = (of: (a: Answer) => number): LoadBands['direction'] => ({
    rad: of(told),
    ...agreementOf(
      true,
      drawn.map((a) => apart(of(a), of(told)) <= QUARTER_RAD),
      rest.length,
    ),
  });
  return {
    ...from,
    draws: rest.length,
    ray,
    ratio: spread((a) => a.ratio),
    more: agreementOf(
      told.ratio > 1,
      drawn.map((a) => a.ratio > 1),
      rest.length,
    ),
    peakAtMm: spread((a) => a.peakAtMm),
    direction: side((a) => a.directionRad),
    pressed: side((a) => a.pressedRad),
    mostOfFive: agreementOf(
      told.mostOfFive,
      drawn.map((a) => a.mostOfFive),
      rest.length,
    ),
    plateauMm: [spread((a) => a.plateau[0]), spread((a) => a.plateau[1])],
    places: drawn.map(({ peakAtMm, plateau: [fromMm, toMm] }) => ({ peakMm: peakAtMm, fromMm, toMm })),
    fascia: spread((a) => a.fasciaN),
    achilles: spread((a) => a.achillesN),
    tibia: spread((a) => a.tibiaN),
    sideways: spread((a) => a.sideways),
    legAlong: spread((a) => a.leg.alongN),
    legFrontal: spread((a) => a.leg.frontalNmm),
    parts: bandsOfParts(
      told.parts,
      drawn.map((a) => a.parts),
      rest.length,
    ),
    stations: bandsOfStations(
      foot.sections[ray].usual.map((cut) => cut.sMm),
      told.stations,
      drawn.map((a) => a.stations),
      rest.length,
    ),
    ...hangsOn(drawn),
    beyond: 1 - drawn.filter((a) => !a.ranks).length / rest.length,
    beyondItself: 1 - drawn.filter((a) => !a.ranksItself).length / rest.length,
    unsolved: rest.length - drawn.length,
  };
};
