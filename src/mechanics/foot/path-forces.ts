/**
 * Force in every part on the way of the load from tibia to ground: joints, metatarsals, ties, tendons and pads, by name. Which way it
 * acts and how much, no places: cheap enough to be asked of every draw. N.
 */
import { dot, length, type Vec3 } from '../../units';
import { metatarsalOf, RAYS, type Ray } from './landmarks';
import { TENDONS, type Tendon } from './load-case';
import { type JointForce, padForces, type RayStation } from './recover';
import type { FootSolution } from './solve';
import { tendonPaths } from './tendons';
import type { PathPart } from './types';

export type PathForce = Omit<PathPart, 'points'>;

const senseOf = (forces: readonly JointForce[]): PathPart['sense'] => {
  const [normalN, shearN] = forces.reduce(([n, s], each) => [n + each.normalN, s + each.shearN], [0, 0] as [
    number,
    number,
  ]);
  return shearN > Math.abs(normalN) ? 'sheared' : normalN <= 0 ? 'pressed' : 'pulled';
};

/** The facet between the outer bases is held in three places and told as one. */
const PLACE = /-\d$/;

const jointParts = (joints: readonly JointForce[]): PathForce[] => {
  const byFacet = new Map<string, JointForce[]>();
  for (const joint of joints) {
    const id = joint.id.replace(PLACE, '');
    byFacet.set(id, [...(byFacet.get(id) ?? []), joint]);
  }
  return [...byFacet].map(([id, forces]) => ({
    id,
    kind: 'joint',
    sense: senseOf(forces),
    forceN: length(
      forces.reduce<Vec3>((sum, { force: f }) => [sum[0] + f[0], sum[1] + f[1], sum[2] + f[2]], [0, 0, 0]),
    ),
  }));
};

const boneParts = (stations: Readonly<Record<Ray, readonly RayStation[]>>): PathForce[] =>
  RAYS.map((ray): PathForce => {
    const list = memberOf(stations[ray]);
    const axial = list.reduce((sum, s) => sum + s.axialN, 0) / list.length;
    return { id: metatarsalOf(ray), kind: 'bone', sense: axial <= 0 ? 'pressed' : 'pulled', forceN: Math.abs(axial) };
  });

/** Stations where a metatarsal is a beam; all of them where it is one nowhere. */
export const memberOf = (stations: readonly RayStation[]): readonly RayStation[] => {
  const inside = stations.filter((s) => !s.outsideBeamTheory);
  return inside.length > 0 ? inside : stations;
};

const tieParts = ({ ready, tieN }: FootSolution): PathForce[] =>
  ready.ties.map((tie, i) => ({ id: tie.id, kind: 'tie', sense: 'pulled', forceN: tieN[i] as number }));

/** A tendon to several toes is told toe by toe, the second first. */
export const tendonId = (tendon: Tendon, i: number, count: number): string =>
  count > 1 ? `${tendon}-${i + 2}` : tendon;

const tendonParts = (solution: FootSolution, pulls: Readonly<Record<Tendon, number>>): PathForce[] => {
  const paths = tendonPaths(solution.ready.marks);
  return [
    ...TENDONS.flatMap((tendon) =>
      paths[tendon].map(
        (_, i, { length: count }): PathForce => ({
          id: tendonId(tendon, i, count),
          kind: 'tendon',
          sense: 'pulled',
          forceN: (pulls[tendon] * solution.weightN) / count,
        }),
      ),
    ),
    { id: 'achilles', kind: 'tendon', sense: 'pulled', forceN: solution.achillesN },
  ];
};

const groundParts = (solution: FootSolution): PathForce[] => {
  const { toeN } = solution;
  const sums = new Map(padForces(solution));
  if (toeN > 0) sums.set('firstToe', (sums.get('firstToe') ?? 0) + toeN);
  return [...sums].map(([id, forceN]) => ({ id, kind: 'ground', sense: 'pressed', forceN }));
};

/** Every part, in the order of the way. */
export const pathForces = (
  solution: FootSolution,
  joints: readonly JointForce[],
  stations: Readonly<Record<Ray, readonly RayStation[]>>,
  pulls: Readonly<Record<Tendon, number>>,
): readonly PathForce[] => [
  { id: 'tibia', kind: 'leg', sense: 'pressed', forceN: tibiaOf(solution) },
  ...jointParts(joints),
  ...boneParts(stations),
  ...tieParts(solution),
  ...tendonParts(solution, pulls),
  ...groundParts(solution),
];

/** What the tibia presses on the talus: the load put on there, which balances everything else up and down. */
export const tibiaOf = (solution: FootSolution): number => {
  const leg = solution.applied.at(-1);
  return leg === undefined ? 0 : Math.abs(dot(leg.force, [0, 1, 0]));
};
