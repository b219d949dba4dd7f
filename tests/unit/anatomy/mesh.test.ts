import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  eulerCharacteristic,
  meshBounds,
  meshCentroid,
  meshVolume,
  mirrorMesh,
  openEdges,
  principalExtents,
} from '../../../src/anatomy';
import { fieldOf } from '../../../src/anatomy/field';
import { mapMesh } from '../../../src/anatomy/mesh';
import { everywhere, sampleGrid } from '../../../src/anatomy/meshing/grid';
import { surfaceNets } from '../../../src/anatomy/meshing/surface-nets';
import { add } from '../../../src/units';

const netOf = (size: [number, number, number], step: number) => {
  const { field, box } = fieldOf({ is: 'ellipsoid', name: 'ball', at: [0, 0, 0], size }, [1, 2, 3]);
  return surfaceNets(sampleGrid(everywhere(field), box, step));
};

describe('surface nets and mesh measures', () => {
  test('an ellipsoid has its closed-form volume, centre and extents', () => {
    const mesh = netOf([10, 14, 30], 0.5);
    expect(meshVolume(mesh) / ((Math.PI / 6) * 10 * 14 * 30)).toBeCloseTo(1, 2);
    meshCentroid(mesh).forEach((x, k) => {
      expect(x).toBeCloseTo([1, 2, 3][k] ?? 0, 1);
    });
    const e = principalExtents(mesh);
    expect(e.axis[2]).toBeCloseTo(1, 3);
    expect(Math.abs(e.lengthMm - 30)).toBeLessThan(0.5);
    expect(Math.abs(e.widthMm - 10)).toBeLessThan(0.5);
    expect(Math.abs(e.heightMm - 14)).toBeLessThan(0.5);
  });

  test('are closed and outward at any size, and a hole is noticed', () => {
    const size = fc.double({ min: 4, max: 20, noNaN: true });
    fc.assert(
      fc.property(size, size, size, (a, b, c) => {
        const mesh = netOf([a, b, c], 1);
        expect(openEdges(mesh)).toBe(0);
        expect(eulerCharacteristic(mesh)).toBe(2);
        expect(meshVolume(mesh)).toBeGreaterThan(0);
        expect(openEdges({ ...mesh, indices: mesh.indices.slice(3) })).toBeGreaterThan(0);
      }),
      { numRuns: 30 },
    );
  });

  test('the mirror keeps the volume and turns back into itself; a shift moves only the centre', () => {
    const mesh = netOf([8, 9, 12], 1);
    expect(meshVolume(mirrorMesh(mesh))).toBeCloseTo(meshVolume(mesh), 3);
    expect(mirrorMesh(mirrorMesh(mesh))).toEqual(mesh);
    const moved = mapMesh(mesh, (p) => add(p, [5, -4, 3]));
    expect(meshVolume(moved)).toBeCloseTo(meshVolume(mesh), 1);
    expect(meshBounds(moved).min[0] - meshBounds(mesh).min[0]).toBeCloseTo(5, 4);
  });
});
