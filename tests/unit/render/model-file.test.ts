/** What a saved foot says of itself, and that its surfaces are closed, look outwards and are those of the side. */
import { describe, expect, test } from 'vitest';
import { meshBounds } from '../../../src/anatomy';
import { modelFile } from '../../../src/render/model-file';
import { modelFoot } from '../../tools/model-foot';

const foot = modelFoot();
const saved = async (change: Partial<Parameters<typeof modelFile>[0]>): Promise<Buffer> =>
  Buffer.from(
    await (
      await modelFile({ kind: 'stl', foot, side: 'right', whatIf: false, notes: new Map(), ...change })
    ).arrayBuffer(),
  );
const headerOf = (stl: Buffer): string => stl.subarray(0, 80).toString('latin1').replace(/\0+$/, '');
const extrasOf = (glb: Buffer): Record<string, unknown> =>
  JSON.parse(glb.subarray(20, 20 + glb.readUInt32LE(12)).toString()).extras;

/** Corners of the triangles, nine numbers each. */
const trianglesOf = (stl: Buffer): number[][] =>
  Array.from({ length: stl.readUInt32LE(80) }, (_, i) =>
    Array.from({ length: 9 }, (_, k) => stl.readFloatLE(84 + 50 * i + 12 + 4 * k)),
  );
/** Six times the volume that outward triangles enclose; negative where they look inwards. */
const volumeOf = (triangles: readonly number[][]): number =>
  triangles.reduce(
    (sum, [ax = 0, ay = 0, az = 0, bx = 0, by = 0, bz = 0, cx = 0, cy = 0, cz = 0]) =>
      sum + ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx),
    0,
  );

describe('a foot whose side nobody stated', () => {
  test('says so in either file', async () => {
    expect(headerOf(await saved({ side: null }))).toContain('not stated, drawn as a right foot');
    expect(extrasOf(await saved({ kind: 'glb', side: null }))).toMatchObject({
      side: 'right',
      sideStated: 'not stated, drawn as a right foot',
    });
  });

  test('and one that was stated does not', async () => {
    expect(headerOf(await saved({}))).toBe('Underfoot, mm');
    expect(extrasOf(await saved({ kind: 'glb', side: 'left' }))).not.toHaveProperty('sideStated');
  });
});

test('a what-if and another pose are told', async () => {
  const given = { whatIf: true, foot: { ...foot, pose: 'heelRaise' } as const };
  expect(headerOf(await saved(given))).toBe('Underfoot, mm; a what-if, not the foot of the case; heelRaise');
  expect(extrasOf(await saved({ kind: 'glb', ...given }))).toMatchObject({
    whatIf: expect.any(String),
    held: 'heelRaise',
  });
});

test('the left foot for printing is the mirror image, and both look outwards', async () => {
  const [right, left] = [trianglesOf(await saved({})), trianglesOf(await saved({ side: 'left' }))];
  expect(volumeOf(right)).toBeGreaterThan(0);
  expect(volumeOf(left)).toBeCloseTo(volumeOf(right), -2);
  const xs = (triangles: readonly number[][]): number[] =>
    triangles.flatMap(([a = 0, , , b = 0, , , c = 0]) => [a, b, c]);
  const bone = foot.bones.get('phalanxDistal1');
  if (bone === undefined) throw new Error('no bone');
  // The big toe lies medially: towards +X on a right foot.
  expect(meshBounds(bone).max[0]).toBeGreaterThan(0);
  expect(Math.max(...xs(left))).toBeCloseTo(-Math.min(...xs(right)), 4);
  expect(Math.min(...xs(left))).toBeCloseTo(-Math.max(...xs(right)), 4);
});
