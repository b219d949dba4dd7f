/** The slender frames that both solve. Members are 20 to 50 times as long as deep. */
import type { FrameModel } from '../../src/mechanics/frame';
import type { Dof } from '../../src/mechanics/frame/dofs';
import { type Shape, type SlenderFrame, valuesOf } from './calculix-deck';
import type { Six } from './frames';

type Point = readonly [number, number, number];
interface Told {
  readonly shape: Shape;
  readonly points: readonly Point[];
  readonly members: readonly (readonly [i: number, j: number, orientation: Point])[];
  readonly held: Readonly<Record<number, readonly Dof[]>>;
  readonly imposed?: Readonly<Record<number, Partial<Record<Dof, number>>>>;
  readonly loads: Readonly<Record<number, Six>>;
  readonly divisions?: number;
  readonly reactions?: true;
}

const ALL: readonly Dof[] = ['ux', 'uy', 'uz', 'rx', 'ry', 'rz'];

const frame = ({
  shape,
  points,
  members,
  held,
  imposed = {},
  loads,
  divisions = 40,
  reactions,
}: Told): SlenderFrame => ({
  shapes: { s: shape },
  divisions,
  reactions: reactions === true,
  model: {
    nodes: points.map((xyz, n) => ({ id: n + 1, xyz: [...xyz] })),
    materials: { BONE: { E: 17000, G: 17000 / 2.6 } },
    sections: { s: valuesOf(shape) },
    members: members.map(([i, j, y], m) => ({
      id: m + 1,
      i,
      j,
      section: 's',
      material: 'BONE',
      orientation: [...y],
    })),
    supports: Object.entries(held).map(([node, fixed]) => ({
      node,
      fixed: [...fixed],
      ...(imposed[Number(node)] ? { imposed: imposed[Number(node)] } : {}),
    })) as FrameModel['supports'],
    nodalLoads: Object.entries(loads).map(([node, F]) => ({ node, F })),
  },
});

const BAR: Shape = { y: 8, z: 5 };
const ROD: Shape = { diameter: 8 };
const FLAT: readonly Dof[] = ['uz', 'rx', 'ry'];

export const FRAMES: Readonly<Record<string, SlenderFrame>> = {
  'skew cantilever, bent both ways': frame({
    shape: BAR,
    points: [
      [0, 0, 0],
      [240, 120, 240],
    ],
    members: [[1, 2, [0, 1, 0]]],
    held: { 1: ALL },
    loads: { 2: [4, -9, 3, 0, 0, 0] },
  }),
  'portal with clamped feet, pushed and pressed': frame({
    shape: BAR,
    points: [
      [0, 0, 0],
      [0, 320, 0],
      [200, 320, 0],
      [400, 320, 0],
      [400, 0, 0],
    ],
    members: [
      [1, 2, [1, 0, 0]],
      [2, 3, [0, 1, 0]],
      [3, 4, [0, 1, 0]],
      [4, 5, [1, 0, 0]],
    ],
    held: { 1: ALL, 2: FLAT, 3: FLAT, 4: FLAT, 5: ALL },
    loads: { 2: [20, 0, 0, 0, 0, 0], 3: [0, -50, 0, 0, 0, 0] },
    // A corner is one rigid element long.
    divisions: 80,
    reactions: true,
  }),
  'three spans, two supports sink': frame({
    shape: BAR,
    points: [0, 90, 180, 260, 340, 440, 540].map((x): Point => [x, 0, 0]),
    members: [1, 2, 3, 4, 5, 6].map((i) => [i, i + 1, [0, 1, 0]] as const),
    held: {
      1: ['ux', 'uy', ...FLAT],
      2: FLAT,
      3: ['uy', ...FLAT],
      4: FLAT,
      5: ['uy', ...FLAT],
      6: FLAT,
      7: ['uy', ...FLAT],
    },
    imposed: { 3: { uy: -2 }, 5: { uy: 1 } },
    loads: {},
    divisions: 20,
    reactions: true,
  }),
  'bent rod, loaded across its plane: bending and torsion': frame({
    shape: ROD,
    points: [
      [0, 0, 0],
      [200, 0, 0],
      [200, 0, 200],
    ],
    members: [
      [1, 2, [0, 1, 0]],
      [2, 3, [0, 1, 0]],
    ],
    held: { 1: ALL },
    loads: { 3: [0, 10, 0, 0, 0, 0] },
  }),
  'two clamped rods joined by a third, one pushed across': frame({
    shape: ROD,
    points: [
      [0, 0, 0],
      [250, 0, 0],
      [0, 0, 180],
      [220, 0, 200],
    ],
    members: [
      [1, 2, [0, 1, 0]],
      [3, 4, [0, 1, 0]],
      [2, 4, [0, 1, 0]],
    ],
    held: { 1: ALL, 3: ALL },
    loads: { 2: [0, -20, 0, 0, 0, 0] },
  }),
  'quarter of a ring, pulled out of its plane': frame({
    shape: ROD,
    divisions: 1,
    points: Array.from({ length: 25 }, (_, i): Point => {
      const turn = (i / 24) * (Math.PI / 2);
      return [200 * Math.sin(turn), 0, 200 * (1 - Math.cos(turn))];
    }),
    members: Array.from({ length: 24 }, (_, i) => [i + 1, i + 2, [0, 1, 0]] as const),
    held: { 1: ALL },
    loads: { 25: [0, 12, 0, 0, 0, 0] },
  }),
};
