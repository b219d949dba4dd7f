/** The outer contour of a mesh across an axis, with no inside: the largest loop. mm, [dorsal, lateral] of the axis. */
import { fromBone, inBone, sliceMesh } from '../../src/anatomy';
import { integralsOf, type Point2 } from '../../src/anatomy/inside';
import type { BoneAxis, Mesh } from '../../src/anatomy/types';

export const outlineAt = (mesh: Mesh, axis: BoneAxis, sMm: number): Point2[] =>
  sliceMesh(mesh, fromBone(axis, sMm), axis.axis)
    .map((loop) =>
      loop.map((p): Point2 => {
        const { dorsalMm, lateralMm } = inBone(axis, p);
        return [dorsalMm, lateralMm];
      }),
    )
    .reduce<Point2[]>((a, b) => (integralsOf([b]).area > integralsOf([a]).area ? b : a), []);
