/** Few triangles for many on solids that are known: closed, on the surface, and spent where they count. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { eulerCharacteristic, openEdges } from '../../../../src/anatomy';
import { fieldOf } from '../../../../src/anatomy/field';
import { coarsened } from '../../../../src/anatomy/meshing/coarsen';
import { everywhere, gridField, sampleGrid } from '../../../../src/anatomy/meshing/grid';
import { errorAt, leastAt, quadricsOf, TERMS } from '../../../../src/anatomy/meshing/quadrics';
import { surfaceNets } from '../../../../src/anatomy/meshing/surface-nets';
import { workOf } from '../../../../src/anatomy/meshing/work';
import type { Mesh } from '../../../../src/anatomy/types';

const { field, box } = fieldOf(
  { is: 'rod', name: 'ball', from: [0, 0, -0.01], to: [0, 0, 0.01], radius: [10, 10] },
  [0, 0, 0],
);
const grid = sampleGrid(everywhere(field), box, 1.4);
const surface = gridField(grid);
const dense = surfaceNets(grid);

/** Middles of triangles and how far each lies off the ball, mm, in the half asked for. */
const offs = ({ positions, indices }: Mesh, upper: boolean): number[] => {
  const found: number[] = [];
  for (let t = 0; t < indices.length; t += 3) {
    const [x, y, z] = [0, 1, 2].map(
      (k) => [0, 1, 2].reduce((sum, e) => sum + (positions[3 * (indices[t + e] ?? 0) + k] ?? 0), 0) / 3,
    ) as [number, number, number];
    if (z > 0 === upper) found.push(Math.abs(surface.value(x, y, z)));
  }
  return found;
};
const mean = (all: readonly number[]): number => all.reduce((sum, x) => sum + x, 0) / all.length;

test('a ball stays closed, whole and round, however few triangles are asked for', () => {
  fc.assert(
    fc.property(fc.integer({ min: 40, max: 400 }), (asked) => {
      const few = coarsened(dense, asked, () => 1);
      expect(few.indices.length / 3).toBeLessThanOrEqual(asked);
      expect(few.indices.length / 3).toBeGreaterThan(asked - 2);
      expect([openEdges(few), eulerCharacteristic(few)]).toEqual([0, 2]);
      expect(mean([...offs(few, true), ...offs(few, false)])).toBeLessThan(45 / asked + 0.2);
    }),
    { numRuns: 12 },
  );
});

test('the half that counts more keeps more of them and lies nearer to the ball', () => {
  const even = coarsened(dense, 120, () => 1);
  const upper = coarsened(dense, 120, (_x, _y, z) => (z > 0 ? 12 : 1));
  expect(offs(upper, true).length).toBeGreaterThan(1.4 * offs(upper, false).length);
  expect(offs(upper, true).length).toBeGreaterThan(1.2 * offs(even, true).length);
  expect(mean(offs(upper, true))).toBeLessThan(0.8 * mean(offs(even, true)));
});

test('the same surface comes out each time', () => {
  expect(coarsened(dense, 120, () => 1)).toEqual(coarsened(dense, 120, () => 1));
});

test('what can not be less is left', () => {
  const four: Mesh = {
    positions: new Float32Array([0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0, 1]),
    indices: new Uint32Array([0, 2, 1, 0, 1, 3, 1, 2, 3, 0, 3, 2]),
  };
  expect(coarsened(four, 2, () => 1).indices).toHaveLength(12);
});

test('three planes are met where they meet', () => {
  const cornerOfBox: Mesh = {
    positions: new Float32Array([1, 2, 3, 4, 2, 3, 1, 6, 3, 1, 2, 8]),
    indices: new Uint32Array([0, 1, 2, 0, 2, 3, 0, 3, 1]),
  };
  const sum = quadricsOf(workOf(cornerOfBox), () => 1).subarray(0, TERMS) as Float64Array;
  const at = leastAt(sum, [1, 2, 3]);
  for (const [k, want] of [1, 2, 3].entries()) expect(at[k]).toBeCloseTo(want, 6);
  expect(errorAt(sum, [1, 2, 3])).toBeCloseTo(0, 9);
  // Areas 6, 10 and 7.5 mm2, a third each: one millimetre along x leaves the plane x = 1 alone.
  expect(errorAt(sum, [2, 2, 3])).toBeCloseTo(10 / 3, 6);
});
