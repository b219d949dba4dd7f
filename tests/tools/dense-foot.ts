/**
 * The same foot put together another way: every knot of every metatarsal a node of its own, each element turned into global axes by
 * itself, joints as stiffness between two places by skew matrices. What the condensed frame says is held against this.
 */
import { segmentsBetween } from '../../src/mechanics/foot/assemble';
import { solveComplementarity } from '../../src/mechanics/foot/complementarity';
import { RAYS, type Ray } from '../../src/mechanics/foot/landmarks';
import type { FrameFigures } from '../../src/mechanics/foot/parameter-names';
import type { RaySections } from '../../src/mechanics/foot/ray-sections';
import type { FootSolution, ReadyFrame } from '../../src/mechanics/foot/solve';
import type { Spring } from '../../src/mechanics/foot/springs';
import { localAxes } from '../../src/mechanics/frame/axes';
import type { MemberSegment } from '../../src/mechanics/frame/flexible-member';
import { localStiffness } from '../../src/mechanics/frame/timoshenko';
import { length, subtract, type Vec3 } from '../../src/units';

type Matrix = number[][];

const zeros = (rows: number, columns: number): Matrix =>
  Array.from({ length: rows }, () => new Array<number>(columns).fill(0));
const at = (m: Matrix, i: number, j: number): number => m[i]?.[j] ?? 0;

/** How a place at `r` from its node moves: translation, then the skew matrix of the lever. */
const carried = ([x, y, z]: Vec3): Matrix => [
  [1, 0, 0, 0, z, -y],
  [0, 1, 0, -z, 0, x],
  [0, 0, 1, y, -x, 0],
];

/** b^T k b. */
const around = (b: Matrix, k: Matrix): Matrix => {
  const n = b[0]?.length ?? 0;
  const out = zeros(n, n);
  for (let p = 0; p < k.length; p++)
    for (let q = 0; q < k.length; q++)
      for (let i = 0; i < n; i++)
        for (let j = 0; j < n; j++) (out[i] as number[])[j] = at(out, i, j) + at(b, p, i) * at(k, p, q) * at(b, q, j);
  return out;
};

const diagonal = (values: readonly number[]): Matrix => values.map((v, i) => values.map((_, j) => (i === j ? v : 0)));

const globalSegment = (segment: MemberSegment): Matrix => {
  const axes = localAxes(segment.from, segment.to, segment.y);
  if (axes === null) throw new Error('a segment without axes');
  const local = localStiffness(segment, length(subtract(segment.to, segment.from)));
  const turn = zeros(12, 12);
  for (let block = 0; block < 4; block++)
    for (let i = 0; i < 3; i++)
      for (let j = 0; j < 3; j++) (turn[3 * block + i] as number[])[3 * block + j] = axes[i]?.[j] ?? 0;
  return around(
    turn,
    Array.from({ length: 12 }, (_, i) => [...local.slice(12 * i, 12 * i + 12)]),
  );
};

const jointBlock = (ready: ReadyFrame, spring: Spring): Matrix => {
  const lever = (node: number): Vec3 => subtract(spring.at, ready.nodes.at[node] as Vec3);
  const [a, b] = [carried(lever(spring.a)), carried(lever(spring.b))];
  const gap = zeros(3, 12).map((row, i) => row.map((_, j) => (j < 6 ? -at(a, i, j) : at(b, i, j - 6))));
  const n = spring.normal;
  const held = [0, 1, 2].map((i) =>
    [0, 1, 2].map(
      (j) => (spring.along - spring.across) * (n[i] as number) * (n[j] as number) + (i === j ? spring.across : 0),
    ),
  );
  const turns = zeros(3, 12).map((row, i) => row.map((_, j) => (j === 3 + i ? -1 : j === 9 + i ? 1 : 0)));
  const [moved, turned] = [around(gap, held), around(turns, diagonal(spring.turning))];
  return moved.map((row, i) => row.map((value, j) => value + at(turned, i, j)));
};

/** One element with its two nodes: number i of its ray, base first. */
interface DenseElement {
  readonly ray: Ray;
  readonly i: number;
  readonly nodes: readonly [number, number];
  readonly block: Matrix;
}

export interface DenseFoot {
  readonly n: number;
  readonly elements: readonly DenseElement[];
  readonly stiffness: Float64Array;
  /** The node here that a node of the frame is. */
  readonly nodeOf: (node: number) => number;
}

/** `pieces`: into how many each element is cut again. `springs`: those of the frame, or others. */
export const denseFoot = (
  ready: ReadyFrame,
  sections: RaySections,
  f: FrameFigures,
  pieces = 1,
  springs: readonly Spring[] = ready.springs,
): DenseFoot => {
  const { marks, nodes, placing, hold } = ready;
  const rigid = Object.keys(nodes.rigid).length;
  const whole = (nodes.rays[1].knots.length - 1) * pieces;
  const first = (ray: number): number => rigid + (ray - 1) * (whole + 1);
  const n = 6 * first(6);
  const stiffness = new Float64Array(n * n);
  const put = (block: Matrix, ...at2: readonly number[]): void => {
    block.forEach((row, i) => {
      row.forEach((value, j) => {
        const k =
          (6 * (at2[Math.floor(i / 6)] as number) + (i % 6)) * n + 6 * (at2[Math.floor(j / 6)] as number) + (j % 6);
        stiffness[k] = (stiffness[k] as number) + value;
      });
    });
  };
  const map = new Map<number, number>();
  const elements: DenseElement[] = [];
  for (let i = 0; i < rigid; i++) map.set(i, i);
  for (const ray of RAYS) {
    const { stops, firstNode, knots } = nodes.rays[ray];
    stops.forEach((stop, i) => {
      map.set(firstNode + i, first(ray) + stop * pieces);
    });
    segmentsBetween(marks, knots, placing, sections, f, ray, 0, knots.length - 1).forEach((segment, i) => {
      const between = (t: number): Vec3 =>
        segment.from.map((x, k) => x + t * ((segment.to[k] as number) - x)) as unknown as Vec3;
      for (let p = 0; p < pieces; p++) {
        const piece = { ...segment, from: between(p / pieces), to: between((p + 1) / pieces) };
        const block = globalSegment(piece);
        const ends = [first(ray) + i * pieces + p, first(ray) + i * pieces + p + 1] as const;
        put(block, ...ends);
        elements.push({ ray, i: i * pieces + p, nodes: ends, block });
      }
    });
  }
  const nodeOf = (node: number): number => map.get(node) ?? Number.NaN;
  for (const spring of springs) put(jointBlock(ready, spring), nodeOf(spring.a), nodeOf(spring.b));
  const talus = nodes.rigid.talus;
  const slide = around(carried(subtract(hold.at, nodes.at[talus] as Vec3)), diagonal(hold.slide));
  const turn = around(
    zeros(3, 6).map((row, i) => row.map((_, j) => (j === 3 + i ? 1 : 0))),
    diagonal(hold.turn),
  );
  put(
    slide.map((row, i) => row.map((value, j) => value + at(turn, i, j))),
    talus,
  );
  return { n, elements, stiffness, nodeOf };
};

/** Cholesky with every entry touched, n x n row-major: L with L L^T the matrix. */
export const denseFactor = ({ n, stiffness }: DenseFoot): Float64Array => {
  const l = Float64Array.from(stiffness);
  for (let j = 0; j < n; j++) {
    for (let i = j; i < n; i++) {
      let sum = l[i * n + j] as number;
      for (let k = 0; k < j; k++) sum -= (l[i * n + k] as number) * (l[j * n + k] as number);
      l[i * n + j] = i === j ? Math.sqrt(sum) : sum / (l[j * n + j] as number);
    }
  }
  return l;
};

/** L^-1 of a vector, in place, and L^-T. */
const forward = (l: Float64Array, n: number, x: Float64Array): Float64Array => {
  for (let i = 0; i < n; i++) {
    let sum = x[i] as number;
    for (let k = 0; k < i; k++) sum -= (l[i * n + k] as number) * (x[k] as number);
    x[i] = sum / (l[i * n + i] as number);
  }
  return x;
};
const backward = (l: Float64Array, n: number, x: Float64Array): Float64Array => {
  for (let i = n - 1; i >= 0; i--) {
    const value = (x[i] as number) / (l[i * n + i] as number);
    x[i] = value;
    for (let k = 0; k < i; k++) x[k] = (x[k] as number) - (l[i * n + k] as number) * value;
  }
  return x;
};

export interface DenseAnswer {
  /** Motions of the frame's own nodes, in its order. */
  readonly displacement: Float64Array;
  /** Of every knot. */
  readonly whole: Float64Array;
  readonly tieN: Float64Array;
  readonly padN: Float64Array;
}

/** What an element's last end bears: force and moment of what lies towards the toes, six numbers. */
export const lastEndOf = ({ nodes, block }: DenseElement, { whole }: DenseAnswer): number[] =>
  [0, 1, 2, 3, 4, 5].map((i) => {
    let sum = 0;
    for (let j = 0; j < 12; j++)
      sum += at(block, 6 + i, j) * (whole[6 * (nodes[j < 6 ? 0 : 1] as number) + (j % 6)] as number);
    return sum;
  });

/** Loads, ties and pads of a solved frame on the dense one. */
export const solveDense = (dense: DenseFoot, { ready, load }: FootSolution): DenseAnswer => {
  const { n, nodeOf } = dense;
  const l = denseFactor(dense);
  const nodes = ready.nodes.at.length;
  const widened = (vector: Float64Array): Float64Array => {
    const wide = new Float64Array(n);
    for (let i = 0; i < 6 * nodes; i++) wide[6 * nodeOf(Math.floor(i / 6)) + (i % 6)] = vector[i] as number;
    return wide;
  };
  const halves = ready.rows.map((row) => forward(l, n, widened(row)));
  const pushed = forward(l, n, widened(load));
  const product = (a: Float64Array, b: Float64Array): number => {
    let sum = 0;
    for (let i = 0; i < n; i++) sum += (a[i] as number) * (b[i] as number);
    return sum;
  };
  const each = [...ready.ties.map((t) => [t.stiffness, t.slackMm]), ...ready.pads.map((p) => [p.stiffness, p.gapMm])];
  const m = halves.length;
  const matrix = new Float64Array(m * m);
  halves.forEach((a, i) => {
    halves.forEach((b, j) => {
      matrix[i * m + j] = product(a, b) + (i === j ? 1 / (each[i]?.[0] ?? 1) : 0);
    });
  });
  const reach = Float64Array.from(halves, (half, i) => product(half, pushed) - (each[i]?.[1] ?? 0));
  const solved = solveComplementarity({ m, matrix, reach });
  if (!solved.ok) throw new Error(`the dense foot: ${solved.reason}`);
  halves.forEach((half, r) => {
    for (let i = 0; i < n; i++) pushed[i] = (pushed[i] as number) - (solved.force[r] as number) * (half[i] as number);
  });
  const whole = backward(l, n, pushed);
  const displacement = Float64Array.from(
    { length: 6 * nodes },
    (_, i) => whole[6 * nodeOf(Math.floor(i / 6)) + (i % 6)] as number,
  );
  return {
    displacement,
    whole,
    tieN: solved.force.slice(0, ready.ties.length),
    padN: solved.force.slice(ready.ties.length),
  };
};
