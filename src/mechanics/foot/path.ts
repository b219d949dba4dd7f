/**
 * The way of the load from tibia to ground: every joint, metatarsal, tie, tendon and pad with its force, as places on the standing
 * foot to be drawn on whatever foot is on the stage. What carries next to nothing is left out.
 */
import { fromBone } from '../../anatomy';
import { type FootMarks, type OnBone, RAYS, type Ray } from './landmarks';
import { TENDONS, type Tendon } from './load-case';
import { memberOf, type PathForce, pathForces, tendonId } from './path-forces';
import type { JointForce, RayStation } from './recover';
import type { FootSolution } from './solve';
import { tendonPaths } from './tendons';
import { tiePaths } from './ties';
import type { PathPart } from './types';

/** Parts below this share of body weight are not drawn. */
const LEAST_SHARE = 0.01;

type Stations = Readonly<Record<Ray, readonly RayStation[]>>;

const middleOf = (marks: FootMarks, bone: string): OnBone | null => {
  const middle = marks.middles[bone as keyof FootMarks['middles']];
  return middle === undefined ? null : { bone: bone as keyof FootMarks['middles'], at: middle };
};

/** From bone to bone through the facet; none where the foot has no such facet. */
const throughJoint = (marks: FootMarks, id: string): readonly OnBone[] => {
  const [first, second] = id.split('-') as [string, string];
  // The two facets under the talus are one spring.
  const facet = marks.joints.get(id) ?? marks.joints.get(`${id}-posterior`);
  if (facet === undefined) return [];
  const ends = [middleOf(marks, first), { bone: facet.first, at: facet.centre }, middleOf(marks, second)];
  return ends.filter((end) => end !== null);
};

const alongBone = (marks: FootMarks, ray: Ray, stations: Stations): readonly OnBone[] => {
  const { axis, base, head, bone } = marks.rays[ray];
  const list = memberOf(stations[ray]);
  const middle = list[Math.floor(list.length / 2)];
  const through = middle ? [{ bone, at: fromBone(axis, middle.sMm, ...middle.section.centroidMm) }] : [];
  return [base, ...through, head];
};

const tendonWays = (marks: FootMarks): ReadonlyMap<string, readonly OnBone[]> => {
  const paths = tendonPaths(marks);
  return new Map([
    ...TENDONS.flatMap((tendon) =>
      paths[tendon].map((way, i, { length: count }): [string, readonly OnBone[]] => [tendonId(tendon, i, count), way]),
    ),
    ['achilles', [marks.places.achilles]],
  ]);
};

/** Places of a part by its kind and name. */
const waysOn = (marks: FootMarks, stations: Stations): ((part: PathForce) => readonly OnBone[]) => {
  const [ties, tendons] = [tiePaths(marks), tendonWays(marks)];
  return ({ id, kind }) => {
    switch (kind) {
      case 'leg':
        return [marks.ankle];
      case 'joint':
        return throughJoint(marks, id);
      case 'bone':
        return RAYS.flatMap((ray) => (marks.rays[ray].bone === id ? alongBone(marks, ray, stations) : []));
      case 'tie':
        return ties.get(id) ?? [];
      case 'tendon':
        return tendons.get(id) ?? [];
      case 'ground':
        return [marks.pads[id as keyof FootMarks['pads']]];
    }
  };
};

/** All parts that carry something, in the order of the way. */
export const pathOf = (
  solution: FootSolution,
  joints: readonly JointForce[],
  stations: Stations,
  pulls: Readonly<Record<Tendon, number>>,
): readonly PathPart[] => {
  const way = waysOn(solution.ready.marks, stations);
  return pathForces(solution, joints, stations, pulls)
    .filter((part) => part.forceN > LEAST_SHARE * solution.weightN)
    .map((part) => ({ ...part, points: way(part) }))
    .filter((part) => part.points.length > 0);
};
