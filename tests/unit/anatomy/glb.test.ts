import { readFileSync } from 'node:fs';
import validator from 'gltf-validator';
import { beforeAll, describe, expect, test } from 'vitest';
import { buildFoot, DEFAULT_FOOT, decodeGlb, type Foot, type Mesh, prepareAnatomy } from '../../../src/anatomy';
import { modelFiles } from '../../../src/cli/model-files';
import { readContent } from '../../../src/cli/read-content';
import { readShape } from '../../../src/cli/read-shape';
import { BONE_IDS } from '../../../src/ids';

const shipped = (name: string) =>
  new Uint8Array(readFileSync(new URL(`../../../public/models/${name}`, import.meta.url)));
const file = shipped('foot-right.glb');
/** Of its own, so that no other test has given it triangles. */
const shape = readShape();
let foot: Foot;
beforeAll(async () => {
  await prepareAnatomy();
  foot = buildFoot(shape, DEFAULT_FOOT, 'standing');
}, 60_000);

describe('the model file', () => {
  test('is what the builder makes now, byte for byte, right, left and fine (else: npm run model)', async () => {
    const files = await modelFiles(shape, readContent());
    expect([...files.keys()]).toEqual([
      'foot-right.glb',
      'foot-left.glb',
      'foot-right-fine.glb',
      'foot-right-sections.json',
    ]);
    for (const [name, bytes] of files) expect(Buffer.compare(bytes, shipped(name)), name).toBe(0);
  }, 60_000);

  test('has no errors, warnings or remarks in the Khronos validator', async () => {
    for (const name of ['foot-right.glb', 'foot-left.glb', 'foot-right-fine.glb']) {
      const { issues } = await validator.validateBytes(shipped(name));
      expect(issues.messages, name).toEqual([]);
    }
  });

  test('comes back as the foot that was written, in millimetres', () => {
    const read = decodeGlb(file);
    expect([...read.bones.keys()]).toEqual([...BONE_IDS]);
    const made = new Map<string, Mesh>([...foot.bones, ...foot.leg, ['outline', foot.outline]]);
    for (const [id, mesh] of [...read.bones, ...read.leg, ['outline', read.outline] as const]) {
      expect(mesh.indices).toEqual(made.get(id)?.indices);
      const worst = mesh.positions.reduce(
        (w, p, i) => Math.max(w, Math.abs(p - (made.get(id)?.positions[i] ?? 1e9))),
        0,
      );
      expect(worst).toBeLessThan(6e-4);
    }
  });

  test('anything else is refused', () => {
    expect(() => decodeGlb(new Uint8Array(40))).toThrow(RangeError);
    expect(() => decodeGlb(file.subarray(0, 10))).toThrow(RangeError);
  });
});
