/**
 * Stiffness of everything that pulls and presses alike (bones, joints, the leg's hold on the talus) and the rows of what does not.
 * Freedoms: six a node as in nodes.ts. mm, N, rad.
 */
import { add, scale, type Vec3 } from '../../units';
import { chainStiffness, type MemberSegment } from '../frame/flexible-member';
import { chainKept, turned, turnOf } from './chains';
import { addDirection, NONE, rowAt, springBlock } from './joint-blocks';
import { type FootMarks, RAYS, type Ray } from './landmarks';
import { type FrameNodes, type Knot, lever } from './nodes';
import type { FrameFigures } from './parameter-names';
import type { Placing } from './placing';
import { type RaySections, sectionAt } from './ray-sections';
import type { Spring } from './springs';
import type { Pad, Tie } from './ties';

/** K[dofs, dofs] += block, both 12 x 12: two nodes. */
const addBlock = (k: Float64Array, n: number, nodes: readonly [number, number], block: Float64Array): void => {
  for (let a = 0; a < 2; a++)
    for (let b = 0; b < 2; b++) {
      const corner = 6 * ((nodes[a] as number) * n + (nodes[b] as number));
      for (let i = 0; i < 6; i++) {
        const [row, from] = [corner + i * n, (6 * a + i) * 12 + 6 * b];
        for (let j = 0; j < 6; j++) k[row + j] = (k[row + j] as number) + (block[from + j] as number);
      }
    }
};

/** The chain of a metatarsal between two of its nodes. */
export const segmentsBetween = (
  marks: FootMarks,
  knots: readonly Pick<Knot, 'sMm' | 'at'>[],
  placing: Placing,
  sections: RaySections,
  f: FrameFigures,
  ray: Ray,
  from: number,
  to: number,
): MemberSegment[] => {
  const { bone, axis } = marks.rays[ray];
  const [dorsal, lateral] = [placing.direction(bone, axis.dorsal), placing.direction(bone, axis.lateral)];
  return Array.from({ length: to - from }, (_, i) => {
    const [a, b] = [knots[from + i], knots[from + i + 1]];
    if (!a || !b) throw new RangeError('a chain beyond its knots');
    const s = sectionAt(sections[ray], (a.sMm + b.sMm) / 2, f.wall);
    // Principal directions: y is the one in which the section spreads most, so that iz is the larger.
    const [mean, half] = [
      (s.iLateralMm4 + s.iDorsalMm4) / 2,
      Math.hypot((s.iLateralMm4 - s.iDorsalMm4) / 2, s.iProductMm4),
    ];
    const turn = Math.atan2(2 * s.iProductMm4, s.iLateralMm4 - s.iDorsalMm4) / 2;
    const [c, d] = [Math.cos(turn), Math.sin(turn)];
    return {
      from: a.at,
      to: b.at,
      y: add(scale(dorsal, c), scale(lateral, d)),
      areaMm2: s.areaMm2,
      iyMm4: mean - half,
      izMm4: mean + half,
      jMm4: s.jMm4,
      shearYMm2: s.shearAreaMostMm2,
      shearZMm2: s.shearAreaLeastMm2,
      youngMPa: 1000 * f.cortexYoung,
      shearMPa: 1000 * f.cortexShear,
    };
  });
};

const AXES: readonly Vec3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

/** The leg keeps the talus from sliding and holds its turning in two planes; up and down and in pitch it hangs on weak springs alone. */
export const LEG_SLIDE = 1e5;
export const WEAK_LIFT = 0.01;
export const WEAK_PITCH = 1e3;

export interface LegHold {
  readonly at: Vec3;
  /** Stiffness along X, Y, Z and about them. */
  readonly slide: Vec3;
  readonly turn: Vec3;
}

const addGround = (k: Float64Array, n: number, node: number, from: Vec3, hold: LegHold): void => {
  const block = new Float64Array(144);
  AXES.forEach((axis, i) => {
    addDirection(block, [NONE, NONE], rowAt(axis, from), hold.slide[i] as number);
    addDirection(block, [NONE, NONE], [NONE, axis], hold.turn[i] as number);
  });
  for (let i = 0; i < 6; i++)
    for (let j = 0; j < 6; j++) {
      const at = (6 * node + i) * n + 6 * node + j;
      k[at] = (k[at] as number) + (block[(6 + i) * 12 + 6 + j] as number);
    }
};

/** The foot as its sections were cut. */
const STILL: Placing = { point: ({ at }) => at, standing: ({ at }) => at, direction: (_, d) => d };

export interface MemberPart {
  readonly ray: Ray;
  readonly from: number;
  readonly to: number;
  readonly nodes: readonly [number, number];
  readonly stiffness: Float64Array;
}

export interface Assembled {
  readonly n: number;
  readonly stiffness: Float64Array;
  readonly members: readonly MemberPart[];
}

export const assemble = (
  marks: FootMarks,
  nodes: FrameNodes,
  placing: Placing,
  sections: RaySections,
  f: FrameFigures,
  springs: readonly Spring[],
  hold: LegHold,
): Assembled => {
  const n = 6 * nodes.at.length;
  const stiffness = new Float64Array(n * n);
  const members: MemberPart[] = [];
  for (const ray of RAYS) {
    const { stops, firstNode, knots } = nodes.rays[ray];
    const standingKnots = () => knots.map(({ sMm, standing }) => ({ sMm, at: standing }));
    const turn = turnOf(placing, marks.rays[ray].bone);
    for (let i = 0; i + 1 < stops.length; i++) {
      const [from, to] = [stops[i] as number, stops[i + 1] as number];
      const key = `${from} ${to} ${knots.length} ${f.wall} ${f.cortexYoung} ${f.cortexShear}`;
      const standing = chainKept(sections[ray], marks, key, () =>
        chainStiffness(segmentsBetween(marks, standingKnots(), STILL, sections, f, ray, from, to)),
      );
      const part = turned(standing, turn);
      const ends = [firstNode + i, firstNode + i + 1] as const;
      members.push({ ray, from, to, nodes: ends, stiffness: part });
      addBlock(stiffness, n, ends, part);
    }
  }
  for (const spring of springs) addBlock(stiffness, n, [spring.a, spring.b], springBlock(spring));
  addGround(stiffness, n, nodes.rigid.talus, lever(nodes, nodes.rigid.talus, hold.at), hold);
  return { n, stiffness, members };
};

/** As `rowAt`, but straight into the row: every pass of a solution does this some forty times. */
const addPlace = (row: Float64Array, nodes: FrameNodes, node: number, at: Vec3, d: Vec3): void => {
  const from = nodes.at[node] as Vec3;
  const [x, y, z] = [at[0] - from[0], at[1] - from[1], at[2] - from[2]];
  const i = 6 * node;
  row[i] = (row[i] as number) + d[0];
  row[i + 1] = (row[i + 1] as number) + d[1];
  row[i + 2] = (row[i + 2] as number) + d[2];
  row[i + 3] = (row[i + 3] as number) + y * d[2] - z * d[1];
  row[i + 4] = (row[i + 4] as number) + z * d[0] - x * d[2];
  row[i + 5] = (row[i + 5] as number) + x * d[1] - y * d[0];
};

/** How a tie's length changes with the freedoms. */
export const tieRow = (n: number, nodes: FrameNodes, tie: Tie): Float64Array => {
  const row = new Float64Array(n);
  for (let i = 0; i + 1 < tie.path.length; i++) {
    const [p, q] = [tie.path[i], tie.path[i + 1]];
    if (!p || !q) continue;
    const way: Vec3 = [q.at[0] - p.at[0], q.at[1] - p.at[1], q.at[2] - p.at[2]];
    const e = scale(way, 1 / Math.hypot(...way));
    addPlace(row, nodes, q.node, q.at, e);
    addPlace(row, nodes, p.node, p.at, scale(e, -1));
  }
  return row;
};

/** How far a pad comes nearer to the ground, whose unit normal points out of it. */
export const padRow = (n: number, nodes: FrameNodes, pad: Pad, ground: Vec3): Float64Array => {
  const row = new Float64Array(n);
  addPlace(row, nodes, pad.node, pad.at, scale(ground, -1));
  return row;
};

/** A force at a place, added to the load. */
export const addForce = (load: Float64Array, nodes: FrameNodes, node: number, at: Vec3, force: Vec3): void =>
  addPlace(load, nodes, node, at, force);
