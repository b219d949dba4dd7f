/**
 * Six-node triangles on a triangulation: unknowns at corners and at the middles of sides, varying by a quadratic in between. Their
 * integrals are exact (straight sides). Numbered by a sweep along the figure's longer side, so that neighbours have near numbers.
 */
import { Envelope } from './envelope';
import type { Triangulation } from './mesh';

export interface Elements {
  readonly count: number;
  /** Six nodes a triangle: corners 0, 1, 2, middles of sides 01, 12, 20. */
  readonly nodes: Int32Array;
  /** Twice the area of each triangle and, three numbers each, the slopes of the corners' coordinates along a and b. */
  readonly twice: Float64Array;
  readonly slopeA: Float64Array;
  readonly slopeB: Float64Array;
  /** Coordinates of the corners of each triangle, three each. */
  readonly cornerA: Float64Array;
  readonly cornerB: Float64Array;
  /** Loop on which each node lies: 0 the outline, from 1 the holes; -1 within the bone. */
  readonly loop: Int32Array;
  /** Sides on the border, by number in the triangulation. */
  readonly border: Int32Array;
}

const next = (e: number): number => (e % 3 === 2 ? e - 2 : e + 1);

/** New numbers of the unknowns, by a sweep along the direction in which they spread more. */
const swept = (a: readonly number[], b: readonly number[]): Int32Array => {
  const spread = (x: readonly number[]): number =>
    x.reduce((m, v) => Math.max(m, v)) - x.reduce((m, v) => Math.min(m, v));
  const [along, across] = spread(a) >= spread(b) ? [a, b] : [b, a];
  const order = a.map((_, i) => i);
  order.sort((i, j) => (along[i] ?? 0) - (along[j] ?? 0) || (across[i] ?? 0) - (across[j] ?? 0));
  const number = new Int32Array(order.length);
  order.forEach((i, k) => {
    number[i] = k;
  });
  return number;
};

export const elementsOf = ({ at, corners, twin, loop }: Triangulation): Elements => {
  const [a, b]: [number[], number[]] = [[], []];
  for (let i = 0; i < at.length; i += 2) {
    a.push(at[i] ?? 0);
    b.push(at[i + 1] ?? 0);
  }
  const middle = new Int32Array(corners.length);
  const loops = [...loop];
  for (let e = 0; e < corners.length; e++) {
    const other = twin[e] ?? -1;
    if (other >= 0 && other < e) {
      middle[e] = middle[other] ?? 0;
      continue;
    }
    middle[e] = a.length;
    const [p, q] = [corners[e] ?? 0, corners[next(e)] ?? 0];
    loops.push(other < 0 ? (loop[p] ?? -1) : -1);
    a.push(((a[p] ?? 0) + (a[q] ?? 0)) / 2);
    b.push(((b[p] ?? 0) + (b[q] ?? 0)) / 2);
  }
  const number = swept(a, b);
  const onLoop = new Int32Array(number.length);
  number.forEach((k, i) => {
    onLoop[k] = loops[i] ?? -1;
  });
  const triangles = corners.length / 3;
  const nodes = new Int32Array(6 * triangles);
  const twice = new Float64Array(triangles);
  const [slopeA, slopeB] = [new Float64Array(corners.length), new Float64Array(corners.length)];
  const [cornerA, cornerB] = [new Float64Array(corners.length), new Float64Array(corners.length)];
  for (let t = 0; t < triangles; t++) {
    for (let k = 0; k < 3; k++) {
      const [e, c] = [3 * t + k, corners[3 * t + k] ?? 0];
      nodes[6 * t + k] = number[c] ?? 0;
      nodes[6 * t + 3 + k] = number[middle[e] ?? 0] ?? 0;
      cornerA[e] = a[c] ?? 0;
      cornerB[e] = b[c] ?? 0;
    }
    const [a0, a1, a2] = [cornerA[3 * t] ?? 0, cornerA[3 * t + 1] ?? 0, cornerA[3 * t + 2] ?? 0];
    const [b0, b1, b2] = [cornerB[3 * t] ?? 0, cornerB[3 * t + 1] ?? 0, cornerB[3 * t + 2] ?? 0];
    const d = (a1 - a0) * (b2 - b0) - (a2 - a0) * (b1 - b0);
    twice[t] = d;
    slopeA[3 * t] = (b1 - b2) / d;
    slopeA[3 * t + 1] = (b2 - b0) / d;
    slopeA[3 * t + 2] = (b0 - b1) / d;
    slopeB[3 * t] = (a2 - a1) / d;
    slopeB[3 * t + 1] = (a0 - a2) / d;
    slopeB[3 * t + 2] = (a1 - a0) / d;
  }
  const border = Int32Array.from([...twin.keys()].filter((e) => (twin[e] ?? -1) < 0));
  return { count: a.length, nodes, twice, slopeA, slopeB, cornerA, cornerB, loop: onLoop, border };
};

/**
 * Calls `each(i, j, k)` for the lower half of every triangle's stiffness, k = integral of grad Ni . grad Nj: with the products g of
 * the corners' slopes times the area, corners g_ii and -g_ij/3, corner and adjoining middle 4/3 g_ij, middles 8/3 (g_ii + g_ij +
 * g_jj) and 8/3 of the product of the two corners they do not share.
 */
export const eachStiffness = (m: Elements, each: (i: number, j: number, k: number) => void): void => {
  const g = new Float64Array(9);
  for (let t = 0; t < m.twice.length; t++) {
    const area = (m.twice[t] ?? 0) / 2;
    for (let i = 0; i < 3; i++)
      for (let j = 0; j < 3; j++) {
        const [p, q] = [3 * t + i, 3 * t + j];
        g[3 * i + j] = area * ((m.slopeA[p] ?? 0) * (m.slopeA[q] ?? 0) + (m.slopeB[p] ?? 0) * (m.slopeB[q] ?? 0));
      }
    const node = (k: number): number => m.nodes[6 * t + k] ?? 0;
    const of = (i: number, j: number): number => g[3 * i + j] ?? 0;
    for (let i = 0; i < 3; i++) {
      const [j, k] = [(i + 1) % 3, (i + 2) % 3];
      each(node(i), node(i), of(i, i));
      each(node(i), node(j), -of(i, j) / 3);
      each(node(i), node(3 + i), (4 / 3) * of(i, j));
      each(node(j), node(3 + i), (4 / 3) * of(i, j));
      each(node(3 + i), node(3 + i), (8 / 3) * (of(i, i) + of(i, j) + of(j, j)));
      each(node(3 + i), node(3 + j), (8 / 3) * of(i, k));
    }
  }
};

/** Equations of the unknowns that `keep` gives each node; -1: held at nothing. Nodes may share an unknown. */
export const equationsOf = (m: Elements, keep: Int32Array, unknowns: number): Envelope => {
  const first = Int32Array.from({ length: unknowns }, (_, i) => i);
  for (let t = 0; t < m.nodes.length; t += 6) {
    let lowest = unknowns;
    for (let k = 0; k < 6; k++) {
      const i = keep[m.nodes[t + k] ?? 0] ?? -1;
      if (i >= 0) lowest = Math.min(lowest, i);
    }
    for (let k = 0; k < 6; k++) {
      const i = keep[m.nodes[t + k] ?? 0] ?? -1;
      if (i >= 0) first[i] = Math.min(first[i] ?? 0, lowest);
    }
  }
  const equations = new Envelope(first);
  eachStiffness(m, (i, j, k) => {
    const [x, y] = [keep[i] ?? -1, keep[j] ?? -1];
    if (x < 0 || y < 0) return;
    // The upper half adds the same once more where two nodes are one unknown.
    equations.add(x, y, x === y && i !== j ? 2 * k : k);
  });
  return equations;
};

/** Integral over the section of every node's shape: a third of the triangle for each middle, nothing for corners. */
export const shapesOf = (m: Elements): Float64Array => {
  const sums = new Float64Array(m.count);
  for (let t = 0; t < m.twice.length; t++)
    for (let k = 3; k < 6; k++) {
      const n = m.nodes[6 * t + k] ?? 0;
      sums[n] = (sums[n] ?? 0) + (m.twice[t] ?? 0) / 6;
    }
  return sums;
};

/** Integral of every node's shape times a field that is linear in each triangle, given at the corners. */
export const shapesTimes = (m: Elements, field: Float64Array): Float64Array => {
  const sums = new Float64Array(m.count);
  for (let t = 0; t < m.twice.length; t++) {
    const area = (m.twice[t] ?? 0) / 2;
    for (let i = 0; i < 3; i++) {
      const [x, y, z] = [field[3 * t + i] ?? 0, field[3 * t + ((i + 1) % 3)] ?? 0, field[3 * t + ((i + 2) % 3)] ?? 0];
      const [corner, middle] = [m.nodes[6 * t + i] ?? 0, m.nodes[6 * t + 3 + i] ?? 0];
      sums[corner] = (sums[corner] ?? 0) + area * (x / 30 - (y + z) / 60);
      sums[middle] = (sums[middle] ?? 0) + (area * (2 * x + 2 * y + z)) / 15;
    }
  }
  return sums;
};
