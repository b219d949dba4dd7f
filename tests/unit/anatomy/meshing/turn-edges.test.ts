/** Turned edges on solids whose surfaces are known: nearer to the surface, along a shaft, and as closed as before. */
import { expect, test } from 'vitest';
import { eulerCharacteristic, openEdges } from '../../../../src/anatomy';
import { fieldOf } from '../../../../src/anatomy/field';
import { coarsened } from '../../../../src/anatomy/meshing/coarsen';
import { everywhere, gridField, sampleGrid } from '../../../../src/anatomy/meshing/grid';
import { leastAngle } from '../../../../src/anatomy/meshing/repair';
import { surfaceNets } from '../../../../src/anatomy/meshing/surface-nets';
import { turnForForm, turnForSurface } from '../../../../src/anatomy/meshing/turn-edges';
import { type Work, workOf } from '../../../../src/anatomy/meshing/work';
import type { Mesh } from '../../../../src/anatomy/types';

const RADIUS = 4;
const { field, box } = fieldOf(
  { is: 'rod', name: 'shaft', from: [0, 0, 0], to: [0, 0, 60], radius: [RADIUS, RADIUS] },
  [0, 0, 0],
);
const grid = sampleGrid(everywhere(field), box, 0.8);
const surface = gridField(grid);
const meshOf = (w: Work): Mesh => ({ positions: Float32Array.from(w.p), indices: Uint32Array.from(w.t) });

/** Sum of the distances of the middles of all edges from the surface, each edge once, mm. */
const allSag = ({ positions, indices }: Mesh): number => {
  let sum = 0;
  for (let i = 0; i < indices.length; i++) {
    const [a, b] = [indices[i] ?? 0, indices[i % 3 === 2 ? i - 2 : i + 1] ?? 0];
    const middle = [0, 1, 2].map((k) => ((positions[3 * a + k] ?? 0) + (positions[3 * b + k] ?? 0)) / 2);
    sum += Math.abs(surface.value(middle[0] ?? 0, middle[1] ?? 0, middle[2] ?? 0));
  }
  return sum / 2;
};

const settle = (w: Work): number => {
  let turned = 0;
  for (let n = 0; n < 6; n++) turned += turnForSurface(w, surface);
  return turned;
};

test('what was turned for form is turned back along the rod, and it stays closed', () => {
  const w = workOf(coarsened(surfaceNets(grid), 120, () => 1));
  expect(turnForForm(w)).toBeGreaterThan(5);
  const formed = meshOf(w);
  const turned = settle(w);
  expect(turned).toBeGreaterThan(5);
  const settled = meshOf(w);
  // Each turn is worth two hundredths of a millimetre or is not made.
  expect(allSag(formed) - allSag(settled)).toBeGreaterThan(0.02 * turned - 1e-3);
  expect(openEdges(settled)).toBe(0);
  expect(eulerCharacteristic(settled)).toBe(2);
  expect(settled.positions).toEqual(formed.positions);
  expect(leastAngle(settled)).toBeGreaterThanOrEqual(Math.min(leastAngle(formed), (12 * Math.PI) / 180) - 1e-9);
});

test('what lies along the surface is left', () => {
  const w = workOf(coarsened(surfaceNets(grid), 120, () => 1));
  settle(w);
  expect(settle(w)).toBe(0);
});
