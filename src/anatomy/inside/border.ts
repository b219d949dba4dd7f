/** A bone cut by a plane: the outline of the bone and the border inside it, in the plane's own coordinates. mm. */
import type { Vec3 } from '../../units';
import { sliceMesh } from '../slice';
import { contoursOf } from './contour';
import { facetsNear, type Surface } from './depth';
import { type CutAxes, cutAxes, toPlane } from './plane';
import { integralsOf, type Point2 } from './polygon';
import { depthAt, sampleDepths } from './samples';
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

/** `size` is the foot's size over the reference foot's. Null where the plane misses the bone. */
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
  // Felt a little beyond the thickest cortex, so that both ends of every crossing are true depths.
  const facets = facetsNear(surface, axes, wall.thickestMm + 2 * step);
  const samples = sampleDepths(outer, facets, wall, step);
  const inner = contoursOf(samples, (p) => depthAt(facets, wall, p)).filter(
    (loop) => integralsOf([loop]).area > LEAST_STEPS * step * step,
  );
  return { axes, outer, inner };
};
