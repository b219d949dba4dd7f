/**
 * How much the places of a bone's surface count while the few triangles to be drawn are chosen: facets, which gaps are told by, and
 * the sole and back of the heel, which the foot stands on and is measured from, count more than the rest.
 */
import type { SkeletonId } from '../ids';
import { jointSurface } from './joint-surface';
import type { Weight } from './meshing/quadrics';
import type { JointShape, Shape } from './shape';
import { type Motion, movePoint } from './stance/motion';

/** A facet's rim counts with it: elliptical radius. */
const RIM = 1.15;
/** So near to the joint's surface lies what carries the facet: half a gap and what rounding takes, mm. */
const NEAR_MM = 3;
/** What lies lower than this in the standing foot carries it, and what lies less before its hindmost point is its back, mm. */
const END_MM = 3;

/** `joints`: those of the bone, where it has them. `standing`: its way into the standing foot. */
export const whatCounts = (
  { facet, end }: Shape['defaults']['counts'],
  bone: SkeletonId,
  joints: readonly JointShape[],
  standing: Motion,
): Weight => {
  const facets = joints
    .filter(({ articular }) => articular)
    .map((j) => ({ surface: jointSurface(j, j.first === bone ? 1 : -1, 1), counts: facet * (j.made.weight ?? 1) }));
  const seen = { side: 0, radius: 0 };
  return (x, y, z) => {
    for (const { surface, counts } of facets) {
      surface.look(x, y, z, seen);
      if (seen.radius < RIM && Math.abs(seen.side) < NEAR_MM) return counts;
    }
    const [, up, forward] = movePoint(standing, [x, y, z]);
    return Math.min(up, forward) < END_MM ? end : 1;
  };
};
