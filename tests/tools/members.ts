/** Outlines with known sections. mm. */
import type { Point2 } from '../../src/anatomy/inside/polygon';

/** Regular polygon on an ellipse with the ellipse's own area: its second moments differ by about (2 pi / n)^4 / 60. */
export const ellipse = (semiDorsal: number, semiLateral: number, n = 720): Point2[] => {
  const step = (2 * Math.PI) / n;
  const k = Math.sqrt(step / Math.sin(step));
  return Array.from({ length: n }, (_, i) => [
    k * semiDorsal * Math.cos(i * step),
    k * semiLateral * Math.sin(i * step),
  ]);
};

/** Points `off` mm outside an ellipse, all round. */
export const beside = (semiDorsal: number, semiLateral: number, off: number, n = 720): Point2[] =>
  Array.from({ length: n }, (_, i) => {
    const t = (2 * Math.PI * i) / n;
    const [y, z] = [semiDorsal * Math.cos(t), semiLateral * Math.sin(t)];
    const [ny, nz] = [y / semiDorsal ** 2, z / semiLateral ** 2];
    const k = off / Math.hypot(ny, nz);
    return [y + k * ny, z + k * nz];
  });

export const rectangle = (dorsal: number, lateral: number): Point2[] => [
  [-dorsal / 2, -lateral / 2],
  [-dorsal / 2, lateral / 2],
  [dorsal / 2, lateral / 2],
  [dorsal / 2, -lateral / 2],
];
