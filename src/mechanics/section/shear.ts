/**
 * Shear of a bent section: the stress that balances the change of bending stress along the member, as the slope of a potential
 * without flow through the border. Poisson's effect is neglected: it moves shear areas of compact sections by a few per cent,
 * those of thin walls hardly. The energy of unit forces gives the shear areas; the torque of the stress, the shear centre. mm.
 */
import type { Point2 } from '../../anatomy/inside/polygon';
import { type Elements, equationsOf, shapesTimes } from './elements';

export interface ShearInput {
  readonly centroid: Point2;
  /** Second moments about it: of dorsal squared, lateral squared, and the product. */
  readonly aa: number;
  readonly bb: number;
  readonly ab: number;
}

export interface Shear {
  /** Twice the strain energy per length of a unit force, times the shear modulus, per mm2: [dorsal, lateral, both]. */
  readonly energy: readonly [aa: number, bb: number, ab: number];
  /** Where a force bends without twisting. */
  readonly centre: Point2;
}

const dot = (x: Float64Array, y: Float64Array): number => x.reduce((sum, v, i) => sum + v * (y[i] ?? 0), 0);

/** Integral of a dN/db - b dN/da for every node's shape: what turns a potential's slope into its torque. */
export const torqueOf = (m: Elements, a: Float64Array, b: Float64Array): Float64Array => {
  const sums = new Float64Array(m.count);
  for (let t = 0; t < m.twice.length; t++) {
    const share = (m.twice[t] ?? 0) / 6;
    // Slopes and arms are linear: three middles of sides integrate their product exactly.
    for (let s = 0; s < 3; s++) {
      const [i, j, k] = [s, (s + 1) % 3, (s + 2) % 3];
      const [am, bm] = [
        ((a[3 * t + i] ?? 0) + (a[3 * t + j] ?? 0)) / 2,
        ((b[3 * t + i] ?? 0) + (b[3 * t + j] ?? 0)) / 2,
      ];
      const arm = (c: number): number => share * (am * (m.slopeB[3 * t + c] ?? 0) - bm * (m.slopeA[3 * t + c] ?? 0));
      const [wi, wj, wk] = [arm(i), arm(j), arm(k)];
      const put = (n: number, x: number): void => {
        const at = m.nodes[6 * t + n] ?? 0;
        sums[at] = (sums[at] ?? 0) + x;
      };
      put(i, wi);
      put(j, wj);
      put(k, -wk);
      put(3 + i, -2 * wk);
      put(3 + j, 2 * wk);
      put(3 + k, 2 * wk);
    }
  }
  return sums;
};

export const shearOf = (m: Elements, { centroid, aa, bb, ab }: ShearInput): Shear => {
  const a = m.cornerA.map((x) => x - centroid[0]);
  const b = m.cornerB.map((x) => x - centroid[1]);
  const [pullA, pullB] = [shapesTimes(m, a), shapesTimes(m, b)];
  // Only slopes count, so one node is held at nothing.
  const keep = Int32Array.from({ length: m.count }, (_, n) => n - 1);
  const equations = equationsOf(m, keep, m.count - 1);
  const potential = (pull: Float64Array): Float64Array => {
    const x = pull.slice(1);
    equations.solve(x);
    return Float64Array.of(0, ...x);
  };
  const [psiA, psiB] = [potential(pullA), potential(pullB)];
  const [eAA, eBB, eAB] = [dot(pullA, psiA), dot(pullB, psiB), dot(pullA, psiB)];
  // A force F changes the bending stress along the bone by x a + y b, where the second moments times (x, y) are F.
  const det = aa * bb - ab * ab;
  const [xa, ya, xb, yb] = [bb / det, -ab / det, -ab / det, aa / det];
  const energyOf = (x: number, y: number, u: number, v: number): number =>
    x * u * eAA + y * v * eBB + (x * v + y * u) * eAB;
  const torque = torqueOf(m, a, b);
  const [tA, tB] = [dot(torque, psiA), dot(torque, psiB)];
  return {
    energy: [energyOf(xa, ya, xa, ya), energyOf(xb, yb, xb, yb), energyOf(xa, ya, xb, yb)],
    // Torque is a F_b - b F_a.
    centre: [centroid[0] + xb * tA + yb * tB, centroid[1] - (xa * tA + ya * tB)],
  };
};
