/** Checks of how the shape of a foot and its task move the load among the metatarsals. Sources with the records. */
import { add, degrees, radians, subtract, type Vec3 } from '../../units';
import { peakOf } from '../stations';
import { CHECK_MASS_KG, type Change, type CheckCase, type CheckOf, NoAnswer, type Trial } from './checks-trial';
import type { OnBone, Ray } from './landmarks';
import type { Placing } from './placing';
import { rayStations } from './recover';
import { type FootSolution, readyFrame, solveFoot } from './solve';

/** Largest stress of a bone where beam theory holds, whichever its sign, MPa, and where along the bone, as a share of its length. */
const worst = (trial: Trial, solution: FootSolution, ray: Ray): { readonly mpa: number; readonly share: number } => {
  const stations = trial.stations(solution, ray);
  const [pull, press] = [peakOf(stations, 'tensionMPa'), peakOf(stations, 'compressionMPa')];
  const peak = pull.mpa > -press.mpa ? pull : press;
  return { mpa: Math.abs(peak.mpa), share: peak.sMm / (stations.at(-1)?.sMm ?? Number.NaN) };
};

const pull = (trial: Trial, id: CheckCase, change: Change = {}, ray: Ray = 5): number =>
  peakOf(trial.stations(trial.run(id, change), ray), 'tensionMPa').mpa;

/** Gu's three feet, deg. */
const INVERSION_DEG = [0, 10, 20] as const;
const inverted =
  (ray: Ray): CheckOf =>
  (t) =>
    INVERSION_DEG.map((tilt) => worst(t, t.run('landing-outer-edge', { load: { tilt } }), ray).mpa);

const SIDEWAYS = [0, 0.5, 1] as const;
const ADDUCTUS_DEG = [0, 5, 10] as const;
/** Tasks in which a high arch is looked at. */
const CAVUS_TASKS = ['side-step-cut', 'landing-outer-edge', 'walking'] as const;

const cutDirectionDeg = (t: Trial): number => {
  const stations = t.stations(t.run('side-step-cut'), 5);
  const { sMm } = peakOf(stations, 'tensionMPa');
  return degrees(stations.find((s) => s.sMm === sMm)?.tensionAtRad ?? Number.NaN);
};

const WIDER_DEG = 3;

/** The fifth ray turned outwards about the upright through its base: a wider angle between the fourth and fifth. */
const widened = (foot: Trial['foot'], placing: Placing, deg: number): Placing => {
  const about = placing.point(foot.marks.rays[5].base);
  const [c, s] = [Math.cos(radians(deg)), Math.sin(radians(deg))];
  // A right foot's outer side is -X: toes (+Z) turn towards it.
  const turn = ([x, y, z]: Vec3): Vec3 => [c * x - s * z, y, s * x + c * z];
  const moves = (bone: string): boolean => bone === 'metatarsal5' || /^phalanx.*5$/.test(bone);
  const turned =
    (carry: (place: OnBone) => Vec3) =>
    (place: OnBone): Vec3 =>
      moves(place.bone) ? add(about, turn(subtract(carry(place), about))) : carry(place);
  return {
    point: turned(placing.point),
    standing: turned(placing.standing),
    direction: (bone, d) => (moves(bone) ? turn(placing.direction(bone, d)) : placing.direction(bone, d)),
  };
};

const widerRatio = (t: Trial): number => {
  const loadCase = t.cases['side-step-cut'];
  const placing = widened(t.foot, t.foot.placing(loadCase.pose), WIDER_DEG);
  const ready = readyFrame({ ...t.foot, placing }, t.frame, loadCase);
  const solved = 'kind' in ready ? ready : solveFoot(ready, loadCase, CHECK_MASS_KG);
  if ('kind' in solved) throw new NoAnswer(`wider fifth ray: ${solved.kind}`);
  const { mpa } = peakOf(rayStations(solved, t.foot.sections, 5, t.frame.wall), 'tensionMPa');
  return 100 * (mpa / pull(t, 'side-step-cut') - 1);
};

export const TREND_CHECKS = {
  inversionFirst: inverted(1),
  inversionSecond: inverted(2),
  inversionFourth: inverted(4),
  inversionFifth: inverted(5),
  inversionPlace: (t) => [worst(t, t.run('landing-outer-edge', { load: { tilt: 20 } }), 5).share],
  cutDirection: (t) => [cutDirectionDeg(t)],
  cutPlace: (t) => {
    const stations = t.stations(t.run('side-step-cut'), 5);
    return [peakOf(stations, 'tensionMPa').sMm / (stations.at(-1)?.sMm ?? Number.NaN)];
  },
  sidewaysFifth: (t) => SIDEWAYS.map((sideways) => pull(t, 'side-step-cut', { load: { sideways } })),
  adductusFifth: (t) => ADDUCTUS_DEG.map((adductusDeg) => pull(t, 'side-step-cut', { form: { adductusDeg } })),
  cavusFifth: (t) => CAVUS_TASKS.map((id) => 100 * (pull(t, id, { form: { arch: 1 } }) / pull(t, id) - 1)),
  wideAngleFifth: (t) => [widerRatio(t)],
} as const satisfies Readonly<Record<string, CheckOf>>;
