/** Frames of thousands of nodes: chains and grids are solved, what is joined all over is refused before memory is gone. */
import { expect, test } from 'vitest';
import { type FrameModel, solveFrame } from '../../../../src/mechanics/frame';
import { seededRandom } from '../../../../src/units';
import { ALL, BONE, ROUND, solved } from '../../../tools/frames';

const frameOf = (
  places: readonly (readonly [number, number, number])[],
  pairs: readonly (readonly [number, number])[],
): FrameModel => ({
  nodes: places.map(([x, y, z], id) => ({ id, xyz: [x, y, z] })),
  materials: { bone: { ...BONE } },
  sections: { round: { ...ROUND } },
  members: pairs.map(([i, j], id) => ({ id, i, j, section: 'round', material: 'bone', orientation: [0.1, 0.2, 1] })),
  supports: [{ node: 0, fixed: [...ALL] }],
  nodalLoads: [{ node: places.length - 1, F: [0, 0, 1e-3, 0, 0, 0] }],
});

test('a cantilever of five thousand members bends as one', () => {
  const count = 5000;
  const length = 200;
  const chain = frameOf(
    Array.from({ length: count + 1 }, (_, n) => [(length * n) / count, 0, 0]),
    Array.from({ length: count }, (_, n) => [n, n + 1]),
  );
  const { displacements, reactions } = solved(chain);
  // The section is round: how it is rolled is no matter.
  const want = (1e-3 * length ** 3) / (3 * BONE.E * ROUND.Iy);
  expect((displacements[String(count)]?.[2] as number) / want).toBeCloseTo(1, 9);
  expect((reactions['0']?.[4] as number) / (1e-3 * length)).toBeCloseTo(1, 9);
});

test('nodes joined all over are too many, told before memory is gone', () => {
  const random = seededRandom(7);
  const count = 3000;
  const places = Array.from({ length: count }, () => [random(), random(), random()] as const);
  const pairs = Array.from({ length: 3 * count }, (_, k) => {
    const i = k % count;
    return [i, (i + 1 + Math.floor(random() * (count - 2))) % count] as const;
  });
  const got = solveFrame(frameOf(places, pairs));
  expect(got).toMatchObject({ ok: false, kind: 'size', where: 'frame' });
  expect(got.ok ? '' : got.what).toContain('3000 nodes');
});
