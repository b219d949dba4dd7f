import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { meshVolume } from '../../../src/anatomy/mesh';
import { sliceMesh } from '../../../src/anatomy/slice';
import type { Vec3 } from '../../../src/units';
import { barMesh } from '../../tools/tubes';

/** Area of a loop seen against +Z, positive when counter-clockwise seen from +Z. */
const area = (loop: readonly Vec3[]): number =>
  loop.reduce((sum, p, i) => {
    const q = loop[(i + 1) % loop.length] ?? p;
    return sum + (p[0] * q[1] - q[0] * p[1]) / 2;
  }, 0);

const cube = barMesh({ lengthMm: 10, semi: () => [5, 5], around: 4, along: 1 });
const bar = barMesh({ lengthMm: 60, semi: (u) => [5 + u, 6 - u], around: 24, along: 12 });

describe('sliceMesh', () => {
  test('cuts a convex bar in one counter-clockwise loop seen against the normal', () => {
    const loops = sliceMesh(cube, [0, 0, 5], [0, 0, 1]);
    expect(loops).toHaveLength(1);
    // A square with half-diagonal 5.
    expect(area(loops[0] ?? [])).toBeCloseTo(50, 5);
  });

  test('closes its loop through vertices that lie exactly on the plane', () => {
    for (let j = 1; j <= 12; j++) {
      const loops = sliceMesh(bar, [0, 0, 5 * j], [0, 0, 1]);
      expect(loops).toHaveLength(1);
      const u = j / 12;
      const polygon = 12 * Math.sin((2 * Math.PI) / 24) * (5 + u) * (6 - u);
      expect(area(loops[0] ?? [])).toBeCloseTo(polygon, 3);
    }
  });

  test('closes every loop of a plane in any direction through any vertex', () => {
    const vertex = fc.integer({ min: 0, max: bar.positions.length / 3 - 1 });
    const part = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(
      fc.property(vertex, part, part, part, (i, x, y, z) => {
        fc.pre(Math.hypot(x, y, z) > 0.1);
        const at: Vec3 = [bar.positions[3 * i] ?? 0, bar.positions[3 * i + 1] ?? 0, bar.positions[3 * i + 2] ?? 0];
        for (const loop of sliceMesh(bar, at, [x, y, z])) expect(loop.length).toBeGreaterThanOrEqual(3);
      }),
    );
  });

  test('misses a plane beyond the end', () => {
    expect(sliceMesh(bar, [0, 0, 60.001], [0, 0, 1])).toEqual([]);
    expect(sliceMesh(bar, [0, 0, -0.001], [0, 0, 1])).toEqual([]);
  });

  test('areas of the cuts add up to the volume', () => {
    const steps = 400;
    let sum = 0;
    for (let i = 0; i < steps; i++) {
      const [loop = []] = sliceMesh(bar, [0, 0, (60 * (i + 0.5)) / steps], [0, 0, 1]);
      sum += area(loop) * (60 / steps);
    }
    // The midpoint rule on a section that changes quadratically: error well below 1 in 100 000.
    expect(sum / meshVolume(bar)).toBeCloseTo(1, 5);
  });

  test('says so when the mesh is open', () => {
    const open = { positions: cube.positions, indices: cube.indices.slice(3) };
    expect(() => sliceMesh(open, [0, 0, 5], [0, 0, 1])).toThrow('not closed');
  });
});
