import { expect, test } from 'vitest';
import { crossesItself } from '../../../../src/anatomy/meshing/self-crossing';
import type { Mesh } from '../../../../src/anatomy/types';

const mesh = (points: number[][], indices: number[]): Mesh => ({
  positions: new Float32Array(points.flat()),
  indices: new Uint32Array(indices),
});
const TETRAHEDRON = [0, 2, 1, 0, 1, 3, 1, 2, 3, 2, 0, 3];
const corners = [
  [0, 0, 0],
  [4, 0, 0],
  [0, 4, 0],
  [0, 0, 4],
];
const moved = (by: number): number[][] => corners.map((p) => p.map((x) => x + by));

test('two solids apart do not cross; pushed into each other they do', () => {
  const both = [...TETRAHEDRON, ...TETRAHEDRON.map((i) => i + 4)];
  expect(crossesItself(mesh(corners, TETRAHEDRON))).toBe(false);
  expect(crossesItself(mesh([...corners, ...moved(5)], both))).toBe(false);
  expect(crossesItself(mesh([...corners, ...moved(0.5)], both))).toBe(true);
});

test('a solid pressed flat lies on itself', () => {
  expect(crossesItself(mesh([...corners.slice(0, 3), [1, 1, 0.5]], TETRAHEDRON))).toBe(false);
  expect(crossesItself(mesh([...corners.slice(0, 3), [5, 5, 0.01]], TETRAHEDRON))).toBe(true);
});
