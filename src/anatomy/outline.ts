/**
 * The quiet outline of foot and ankle: rods around the bones, joined smoothly. Drawn by hand to be read as a foot, not
 * measured on anybody.
 */
import { scale } from '../units';
import { type Box, type Field, rod, smoothMax, smoothMin } from './field';
import { mapMesh } from './mesh';
import type { Shape } from './shape';
import { simplify } from './simplify';
import { blur, sampleGrid, surfaceNets } from './surface-nets';
import type { FootParameters, Mesh, PoseName } from './types';

export const buildOutline = (shape: Shape, parameters: FootParameters, _pose: PoseName): Mesh => {
  const { masses, join, step, triangles } = shape.outline;
  const rods = masses.map((m) => rod(m.from, m.to, m.radius));
  const field: Field = (x, y, z) => {
    let d = Number.POSITIVE_INFINITY;
    for (const r of rods) d = d === Number.POSITIVE_INFINITY ? r(x, y, z) : smoothMin(d, r(x, y, z), join);
    return smoothMax(d, -y, 4);
  };
  const reach = 6;
  const ends = masses.flatMap((m) => [m.from, m.to].map((p) => ({ p, r: Math.max(...m.radius) + reach })));
  const box: Box = {
    min: [
      Math.min(...ends.map((e) => e.p[0] - e.r)),
      Math.min(...ends.map((e) => e.p[1] - e.r)),
      Math.min(...ends.map((e) => e.p[2] - e.r)),
    ],
    max: [
      Math.max(...ends.map((e) => e.p[0] + e.r)),
      Math.max(...ends.map((e) => e.p[1] + e.r)),
      Math.max(...ends.map((e) => e.p[2] + e.r)),
    ],
  };
  const k = parameters.heelToSecondHeadMm / shape.scale.referenceHMm;
  return mapMesh(simplify(surfaceNets(blur(sampleGrid(field, box, step), 1)), triangles), (p) => scale(p, k));
};
