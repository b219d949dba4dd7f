/**
 * The way of the load from tibia to ground: every joint, metatarsal, tie, tendon and pad with its force, as places on the standing
 * foot to be drawn on whatever foot is on the stage. What carries next to nothing is left out.
 */
import { fromBone } from '../../anatomy';
import { dot, length, type Vec3 } from '../../units';
import type { Ray } from './landmarks';
import { type FootMarks, type OnBone, RAYS } from './landmarks';
import { TENDONS, type Tendon } from './load-case';
import type { JointForce, RayStation } from './recover';
import type { FootSolution } from './solve';
import { tendonPaths } from './tendons';
import { tiePaths } from './ties';
import type { PathPart } from './types';

/** Parts below this share of body weight are not drawn. */
const LEAST_SHARE = 0.01;

const middleOf = (marks: FootMarks, bone: string): OnBone | null => {
  const middle = marks.middles[bone as keyof FootMarks['middles']];
  return middle === undefined ? null : { bone: bone as keyof FootMarks['middles'], at: middle };
};

const senseOf = (forces: readonly JointForce[]): PathPart['sense'] => {
  const [normalN, shearN] = forces.reduce(([n, s], each) => [n + each.normalN, s + each.shearN], [0, 0] as [
    number,
    number,
  ]);
  return shearN > Math.abs(normalN) ? 'sheared' : normalN <= 0 ? 'pressed' : 'pulled';
};

const jointParts = (marks: FootMarks, joints: readonly JointForce[]): PathPart[] =>
  joints.flatMap((joint): PathPart[] => {
    // The facet between the outer bases is held in three places, and the two facets under the talus by one spring.
    const [first, second] = joint.id.split('-') as [string, string];
    const facet = marks.joints.get(joint.id.replace(/-\d$/, '')) ?? marks.joints.get(`${joint.id}-posterior`);
    if (facet === undefined || joint.id.endsWith('-2') || joint.id.endsWith('-3')) return [];
    const same = joints.filter((each) => each.id === joint.id || each.id.startsWith(`${joint.id.replace(/-1$/, '')}-`));
    const forces = joint.id.endsWith('-1') ? same : [joint];
    const forceN = length(
      forces.reduce<Vec3>((sum, { force: f }) => [sum[0] + f[0], sum[1] + f[1], sum[2] + f[2]], [0, 0, 0]),
    );
    const ends = [middleOf(marks, first), { bone: facet.first, at: facet.centre }, middleOf(marks, second)];
    return [
      {
        id: joint.id.replace(/-1$/, ''),
        kind: 'joint',
        sense: senseOf(forces),
        forceN,
        points: ends.filter((end) => end !== null),
      },
    ];
  });

const boneParts = (marks: FootMarks, stations: Readonly<Record<Ray, readonly RayStation[]>>): PathPart[] =>
  RAYS.map((ray): PathPart => {
    const { axis, base, head, bone } = marks.rays[ray];
    const inside = stations[ray].filter((s) => !s.outsideBeamTheory);
    const list = inside.length > 0 ? inside : stations[ray];
    const axial = list.reduce((sum, s) => sum + s.axialN, 0) / list.length;
    const middle = list[Math.floor(list.length / 2)];
    const through = middle ? [{ bone, at: fromBone(axis, middle.sMm, ...middle.section.centroidMm) }] : [];
    return {
      id: bone,
      kind: 'bone',
      sense: axial <= 0 ? 'pressed' : 'pulled',
      forceN: Math.abs(axial),
      points: [base, ...through, head],
    };
  });

const tieParts = (solution: FootSolution): PathPart[] => {
  const paths = tiePaths(solution.ready.marks);
  return solution.ready.ties.map((tie, i) => ({
    id: tie.id,
    kind: 'tie',
    sense: 'pulled',
    forceN: solution.tieN[i] as number,
    points: paths.get(tie.id) ?? [],
  }));
};

const tendonParts = (solution: FootSolution, pulls: Readonly<Record<Tendon, number>>): PathPart[] => {
  const { marks } = solution.ready;
  const paths = tendonPaths(marks);
  return [
    ...TENDONS.flatMap((tendon) =>
      paths[tendon].map(
        (points, i): PathPart => ({
          id: paths[tendon].length > 1 ? `${tendon}-${i + 2}` : tendon,
          kind: 'tendon',
          sense: 'pulled',
          forceN: (pulls[tendon] * solution.weightN) / paths[tendon].length,
          points,
        }),
      ),
    ),
    {
      id: 'achilles',
      kind: 'tendon',
      sense: 'pulled',
      forceN: Math.abs(solution.achillesN),
      points: [marks.places.achilles],
    },
  ];
};

const groundParts = (solution: FootSolution, toeN: number): PathPart[] => {
  const { marks, pads } = solution.ready;
  const sums = new Map<string, number>();
  pads.forEach((pad, i) => {
    sums.set(pad.pad, (sums.get(pad.pad) ?? 0) + (solution.padN[i] as number));
  });
  if (toeN > 0) sums.set('firstToe', (sums.get('firstToe') ?? 0) + toeN);
  return [...sums].map(([pad, forceN]) => ({
    id: pad,
    kind: 'ground',
    sense: 'pressed',
    forceN,
    points: [marks.pads[pad as keyof FootMarks['pads']]],
  }));
};

/** All parts that carry something, the largest first within each kind. */
export const pathOf = (
  solution: FootSolution,
  joints: readonly JointForce[],
  stations: Readonly<Record<Ray, readonly RayStation[]>>,
  pulls: Readonly<Record<Tendon, number>>,
  toeN: number,
): readonly PathPart[] => {
  const { marks } = solution.ready;
  const tibiaN = tibiaOf(solution);
  return [
    { id: 'tibia', kind: 'leg' as const, sense: 'pressed' as const, forceN: tibiaN, points: [marks.ankle] },
    ...jointParts(marks, joints),
    ...boneParts(marks, stations),
    ...tieParts(solution),
    ...tendonParts(solution, pulls),
    ...groundParts(solution, toeN),
  ].filter((part) => part.forceN > LEAST_SHARE * solution.weightN);
};

/** What the tibia presses on the talus: the load put on there, which balances everything else up and down. */
export const tibiaOf = (solution: FootSolution): number => {
  const leg = solution.applied.at(-1);
  return leg === undefined ? 0 : Math.abs(dot(leg.force, [0, 1, 0]));
};
