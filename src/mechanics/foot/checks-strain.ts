/** Checks of strain on the sides of the metatarsals, at the middle of the shaft, where gauges were glued. Microstrain. */

import { CUT_TIE } from './arch-test';
import type { Change, CheckOf, Trial } from './checks-trial';
import { STEPS } from './contributors';
import { RAYS, type Ray } from './landmarks';
import { TENDONS } from './load-case';
import type { RayStation } from './recover';
import type { FootSolution } from './solve';

type Side = 'dorsal' | 'medial';

const NIU_N = 700;
const PACK_KG = 20;

/** Stress of one side: at the point of the outline that lies furthest that way, MPa. */
const sideStress = (trial: Trial, ray: Ray, i: number, station: RayStation, side: Side): number => {
  const outline = trial.foot.sections[ray].usual[i]?.outline ?? [];
  const far = outline.reduce((best, point) => {
    const by = ([d, l]: readonly [number, number]): number => (side === 'dorsal' ? d : -l);
    return by(point) > by(best) ? point : best;
  });
  const [a, b, c] = station.field;
  const [cd, cl] = station.section.centroidMm;
  return a + b * (far[0] - cd) + c * (far[1] - cl);
};

/** At the station nearest the middle of the bone. */
const strain = (trial: Trial, solution: FootSolution, ray: Ray, side: Side): number => {
  const stations = trial.stations(solution, ray);
  const middle = ((stations[0]?.sMm ?? 0) + (stations.at(-1)?.sMm ?? 0)) / 2;
  const i = stations.reduce(
    (best, s, k) => (Math.abs(s.sMm - middle) < Math.abs((stations[best]?.sMm ?? 0) - middle) ? k : best),
    0,
  );
  return (1000 * sideStress(trial, ray, i, stations[i] as RayStation, side)) / trial.frame.cortexYoung;
};

const walking = (trial: Trial, change: Change, ray: Ray, side: Side): number =>
  strain(trial, trial.run('walking', change), ray, side);
const second = (trial: Trial, change: Change = {}): number => walking(trial, change, 2, 'dorsal');
const fifth = (trial: Trial, change: Change = {}): number => walking(trial, change, 5, 'medial');

/** The muscles at half their pull, the calf apart: it must hold the foot whatever they do. */
const tired = ({ cases }: Trial): Change => ({
  load: Object.fromEntries(TENDONS.map((tendon) => [tendon, STEPS.tired * cases.walking.figures[tendon]])),
});
const CUT: Change = { frame: { fasciaTotal: CUT_TIE } };

const sizeChange = (before: number, after: number): number => Math.abs(after) - Math.abs(before);

export const STRAIN_CHECKS = {
  fiveDorsal: (t) => RAYS.map((ray) => strain(t, t.press(NIU_N).solution, ray, 'dorsal')),
  secondDorsalSign: (t) => [second(t)],
  secondDorsalLiving: (t) => [second(t)],
  secondDorsalCadaver: (t) => [second(t)],
  fifthMedialSign: (t) => [fifth(t)],
  fifthMedialCadaver: (t) => [fifth(t)],
  secondOverFifth: (t) => [second(t) / fifth(t)],
  tiredSecond: (t) => [sizeChange(second(t), second(t, tired(t)))],
  tiredFifth: (t) => [sizeChange(fifth(t), fifth(t, tired(t)))],
  cutOverTiredSecond: (t) => [Math.abs(second(t, CUT) - second(t)), Math.abs(second(t, tired(t)) - second(t))],
  cutOverTiredFifth: (t) => [Math.abs(fifth(t, CUT) - fifth(t)), Math.abs(fifth(t, tired(t)) - fifth(t))],
  packSecond: (t) => [sizeChange(second(t), second(t, { person: { carriedKg: PACK_KG } }))],
} as const satisfies Readonly<Record<string, CheckOf>>;
