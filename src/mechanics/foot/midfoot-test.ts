/** What a solved foot says of its middle and its ball: the midfoot as one hinge, and how high the heads lie. N, mm, N m/rad. */
import { add, scale, type Vec3 } from '../../units';
import { RAYS } from './landmarks';
import { movementAt } from './recover';
import type { FootSolution } from './solve';

/** Between the hindfoot and the rest. */
const HINGE_JOINTS = ['talus-navicular', 'calcaneus-cuboid'] as const;
const NMM = 1000;

const hingeOf = ({ ready: { marks, placing } }: FootSolution): Vec3 => {
  const places = HINGE_JOINTS.map((id) => {
    const joint = marks.joints.get(id);
    if (!joint) throw new RangeError(`this foot has no joint ${id}`);
    return placing.point({ bone: joint.first, at: joint.centre });
  });
  return scale(places.reduce(add), 1 / places.length);
};

/** Of one hinge on which the ground's push in front of it does the same work as on this foot, measured against the heel bone. */
export const midfootHinge = (solution: FootSolution): number => {
  const { ready, padN } = solution;
  const hinge = hingeOf(solution);
  let [momentNmm, workNmm] = [0, 0];
  ready.pads.forEach((pad, i) => {
    const lever = pad.at[2] - hinge[2];
    if (lever <= 0) return;
    const rise = (node: number): number => movementAt(solution, node, pad.at)[1];
    momentNmm += (padN[i] as number) * lever;
    workNmm += (padN[i] as number) * (rise(pad.node) - rise(ready.nodes.rigid.calcaneus));
  });
  return momentNmm ** 2 / workNmm / NMM;
};

const headsOf = (solution: FootSolution): readonly Vec3[] =>
  RAYS.map((ray) => {
    const { head } = solution.ready.marks.rays[ray];
    const at = solution.ready.placing.point(head);
    return add(at, movementAt(solution, solution.ready.nodes.nodeOf(head), at));
  });

/** Middles of the heads above the ground, first to fifth. */
export const headHeights = (solution: FootSolution): readonly number[] => headsOf(solution).map(([, y]) => y);

/** How far the second to fourth lie above the straight line from the first to the fifth, seen from the front. */
export const overTheLine = (solution: FootSolution): readonly number[] => {
  const heads = headsOf(solution);
  const [first, last] = [heads[0], heads.at(-1)] as [Vec3, Vec3];
  return heads
    .slice(1, -1)
    .map(([x, y]) => y - first[1] - ((last[1] - first[1]) * (x - first[0])) / (last[0] - first[0]));
};
