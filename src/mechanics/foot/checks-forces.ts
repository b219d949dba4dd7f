/** Checks of the forces in ties, tendons, joints and pads, told in body weights. Sources with the records. */

import { CHECK_WEIGHT_N, type CheckOf, type Trial } from './checks-trial';
import { BASE_JOINTS, RAYS, type Ray } from './landmarks';
import { fasciaOf } from './loads';
import { jointForces, padForces } from './recover';
import type { FootSolution } from './solve';

const inWeights = (n: number): number => n / CHECK_WEIGHT_N;

const slips = ({ ready, tieN }: FootSolution): readonly number[] =>
  RAYS.map((ray) => inWeights(tieN[ready.ties.findIndex((tie) => tie.id === `fascia-${ray}`)] ?? Number.NaN));

const jointOf = (solution: FootSolution, id: string) => {
  const found = jointForces(solution).find((joint) => joint.id === id);
  if (!found) throw new RangeError(`the frame has no joint ${id}`);
  return found;
};

/** How hard the bones of a joint are pressed together, body weights. */
const pressed = (solution: FootSolution, id: string): number => inWeights(-jointOf(solution, id).normalN);

const whole = (solution: FootSolution, id: string): number => {
  const { normalN, shearN } = jointOf(solution, id);
  return inWeights(Math.hypot(normalN, shearN));
};

const others = [2, 3, 4, 5] as const;

/** Largest bending moment of a bone where beam theory holds, N m. */
const largestMoment = (trial: Trial, solution: FootSolution, ray: Ray): number =>
  Math.max(
    ...trial
      .stations(solution, ray)
      .filter((s) => !s.outsideBeamTheory)
      .map((s) => Math.hypot(s.bendingUpDownNmm, s.bendingSidewaysNmm) / 1000),
  );

/** Forces under the five heads, the first on its two sesamoids, N. */
const heads = (solution: FootSolution): readonly number[] => {
  const pads = padForces(solution);
  const at = (name: string): number => pads.get(name) ?? 0;
  return [at('sesamoidMedial') + at('sesamoidLateral'), at('head2'), at('head3'), at('head4'), at('head5')];
};

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);

/** First tarsometatarsal joint a fifth as stiff: a first ray that gives way. */
const SOFT_FIRST = 0.2;

export const FORCE_CHECKS = {
  fasciaWalking: (t) => [inWeights(fasciaOf(t.run('walking')))],
  fasciaWalkingModel: (t) => [inWeights(fasciaOf(t.run('walking')))],
  slipOrder: (t) => slips(t.run('walking')),
  achillesWalking: (t) => [inWeights(t.run('walking').achillesN)],
  achillesRunning: (t) => [inWeights(t.run('running').achillesN)],
  firstToeJoint: (t) => [whole(t.run('walking'), 'metatarsal1-phalanxProximal1')],
  firstBaseLargest: (t) => {
    const axial = RAYS.map((ray) => pressed(t.run('walking'), BASE_JOINTS[ray]));
    return [axial[0] as number, Math.max(...axial.slice(1))];
  },
  firstBasePeak: (t) => [pressed(t.run('walking'), BASE_JOINTS[1])],
  firstMomentLargest: (t) => {
    const moments = RAYS.map((ray) => largestMoment(t, t.run('walking'), ray));
    return [moments[0] as number, Math.max(...moments.slice(1))];
  },
  lesserMoments: (t) => others.map((ray) => largestMoment(t, t.run('midstance'), ray)),
  fifthBasePad: (t) => [inWeights(padForces(t.run('midstance')).get('base5') ?? 0)],
  fifthBaseStanding: (t) => [inWeights(padForces(t.run('standing')).get('base5') ?? 0)],
  fifthBaseMoving: (t) =>
    (['side-step-cut', 'landing-outer-edge'] as const).map((id) => inWeights(padForces(t.run(id)).get('base5') ?? 0)),
  thirdHeadMost: (t) => {
    const [first, , third, , fifth] = heads(t.run('standing')) as [number, number, number, number, number];
    return [third, Math.max(first / 2, fifth)];
  },
  middleHeads: (t) => {
    const loads = heads(t.run('walking'));
    return [(100 * ((loads[1] as number) + (loads[2] as number))) / sum(loads)];
  },
  firstHeadTwice: (t) => {
    const [first, ...rest] = heads(t.run('standing')) as [number, ...number[]];
    return [first / (sum(rest) / rest.length)];
  },
  softFirstRay: (t) => {
    const [before, after] = [
      heads(t.run('midstance')),
      heads(t.run('midstance', { frame: { tarsometatarsal1: SOFT_FIRST * t.frame.tarsometatarsal1 } })),
    ];
    return others.map((ray) => 100 * ((after[ray - 1] as number) / (before[ray - 1] as number) - 1));
  },
} as const satisfies Readonly<Record<string, CheckOf>>;
