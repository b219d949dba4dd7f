/** A bone cut by a plane: the outline of the bone and the border inside it, in the plane's own coordinates. mm. */
import type { Vec3 } from '../../units';
import { sliceMesh } from '../slice';
import { contoursOf } from './contour';
import { facetsNear } from './depth';
import { type CutAxes, cutAxes, toPlane } from './plane';
import { integralsOf, type Point2 } from './polygon';
import { depthAt, sampleDepths } from './samples';
import type { Surface } from './surface';
import type { WallOfBone } from './wall';

/**
 * Step of the grid on the reference foot, mm. A canal 2 mm in radius comes out 0.4 % small in area; the cortex is never thinner
 * than the step, so that no border slips between two samples.
 */
const STEP_MM = 0.3;
/** Anything narrower is no canal but a gap in the sampling: area of three steps squared. */
const LEAST_STEPS = 9;

export interface PlaneCut {
  readonly axes: CutAxes;
  readonly outer: Point2[][];
  readonly inner: Point2[][];
}

/**
 * Cut of a surface and the wall under it; `size` is the foot's over the reference foot's. Null where the plane misses
 * the bone.
 */
export const cutSurface = (
  surface: Surface,
  wall: WallOfBone,
  size: number,
  planePoint: Vec3,
  planeNormal: Vec3,
): PlaneCut | null => {
  const loops = sliceMesh(surface.mesh, planePoint, planeNormal);
  if (loops.length === 0) return null;
  const axes = cutAxes(surface.axis, planePoint, planeNormal);
  const outer = loops.map((loop) => loop.map((p) => toPlane(axes, p)));
  const step = STEP_MM * size;
  // Felt a little beyond the cortex, so that both ends of every crossing are true depths.
  const deep = 2 * step;
  const facets = facetsNear(surface, wall, axes, deep);
  const samples = sampleDepths(outer, facets, wall, step, deep);
  const inner = contoursOf(samples, (p) => depthAt(facets, wall, p, deep)).filter(
    (loop) => integralsOf([loop]).area > LEAST_STEPS * step * step,
  );
  return { axes, outer, inner };
};
