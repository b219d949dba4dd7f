/**
 * What a corner of a surface stands for: a sum of squared distances from planes, as a symmetric matrix of four by four, ten numbers a
 * corner (xx xy xz xw yy yz yw zz zw ww). Garland M, Heckbert PS, Proc SIGGRAPH 1997:209-216, from memory. mm.
 */
import { corner, type Normal, normalOf, placeOf, type Work } from './work';

export const TERMS = 10;
/** Holds a corner near the middle of its edge where the planes let it slide, as a share of their area. */
const HOLD = 1e-3;

/** How much a place of the surface counts; 1 where nothing more is asked of it. */
export type Weight = (x: number, y: number, z: number) => number;

const addPlane = (q: Float64Array, v: number, [x, y, z]: Normal, d: number, weight: number): void => {
  const terms = [x * x, x * y, x * z, x * d, y * y, y * z, y * d, z * z, z * d, d * d];
  for (let k = 0; k < TERMS; k++) q[TERMS * v + k] = (q[TERMS * v + k] as number) + weight * (terms[k] as number);
};

/** The planes of all triangles, each given to its three corners by its area and by how much its middle counts. */
export const quadricsOf = (w: Work, weight: Weight): Float64Array => {
  const q = new Float64Array((TERMS * w.p.length) / 3);
  for (let t = 0; 3 * t < w.t.length; t++) {
    const [a, b, c] = [corner(w, t, 0), corner(w, t, 1), corner(w, t, 2)];
    const [pa, pb, pc] = [placeOf(w, a), placeOf(w, b), placeOf(w, c)];
    const n = normalOf(w, a, b, c);
    const d = -(n[0] * pa[0] + n[1] * pa[1] + n[2] * pa[2]);
    const [ux, uy, uz] = [pb[0] - pa[0], pb[1] - pa[1], pb[2] - pa[2]];
    const [vx, vy, vz] = [pc[0] - pa[0], pc[1] - pa[1], pc[2] - pa[2]];
    const area = Math.hypot(uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx) / 2;
    const middle = (k: 0 | 1 | 2): number => (pa[k] + pb[k] + pc[k]) / 3;
    const share = (area * weight(middle(0), middle(1), middle(2))) / 3;
    for (const v of [a, b, c]) addPlane(q, v, n, d, share);
  }
  return q;
};

const term = (s: Float64Array, k: number): number => s[k] as number;

/** Squared distances of a place from all planes of a sum, by their weights. */
export const errorAt = (s: Float64Array, [x, y, z]: Normal): number =>
  x * (term(s, 0) * x + 2 * (term(s, 1) * y + term(s, 2) * z + term(s, 3))) +
  y * (term(s, 4) * y + 2 * (term(s, 5) * z + term(s, 6))) +
  z * (term(s, 7) * z + 2 * term(s, 8)) +
  term(s, 9);

/** Where that is least; what the planes of a flat place leave open is decided by how near it is to `middle`. */
export const leastAt = (s: Float64Array, middle: Normal): Normal => {
  const hold = HOLD * (term(s, 0) + term(s, 4) + term(s, 7)) + 1e-12;
  const [xx, xy, xz] = [term(s, 0) + hold, term(s, 1), term(s, 2)];
  const [yy, yz, zz] = [term(s, 4) + hold, term(s, 5), term(s, 7) + hold];
  const [bx, by, bz] = [3, 6, 8].map((k, i) => hold * (middle[i] as number) - term(s, k)) as Normal;
  const [cxx, cxy, cxz] = [yy * zz - yz * yz, xz * yz - xy * zz, xy * yz - xz * yy];
  const [cyy, cyz, czz] = [xx * zz - xz * xz, xy * xz - xx * yz, xx * yy - xy * xy];
  // Above 0: the hold makes the matrix definite.
  const whole = xx * cxx + xy * cxy + xz * cxz;
  return [
    (cxx * bx + cxy * by + cxz * bz) / whole,
    (cxy * bx + cyy * by + cyz * bz) / whole,
    (cxz * bx + cyz * by + czz * bz) / whole,
  ];
};
