import { readFileSync } from 'node:fs';
import validator from 'gltf-validator';
import { beforeAll, describe, expect, test } from 'vitest';
import {
  buildFoot,
  DEFAULT_FOOT,
  decodeGlb,
  encodeGlb,
  type Foot,
  type Mesh,
  prepareAnatomy,
} from '../../../src/anatomy';
import { readShape } from '../../../src/cli/read-shape';
import { BONE_IDS } from '../../../src/ids';

const file = new Uint8Array(readFileSync(new URL('../../../public/models/foot-right.glb', import.meta.url)));
let foot: Foot;
beforeAll(async () => {
  await prepareAnatomy();
  foot = buildFoot(readShape(), DEFAULT_FOOT, 'standing');
}, 60_000);

describe('the model file', () => {
  test('is what the builder makes now, byte for byte (else: npm run model)', async () => {
    expect(Buffer.compare(await encodeGlb(foot), file)).toBe(0);
  });

  test('has no errors, warnings or remarks in the Khronos validator', async () => {
    const { issues } = await validator.validateBytes(file);
    expect(issues.messages).toEqual([]);
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
      expect(worst).toBeLessThan(1e-4);
    }
  });

  test('anything else is refused', () => {
    expect(() => decodeGlb(new Uint8Array(40))).toThrow(RangeError);
    expect(() => decodeGlb(file.subarray(0, 10))).toThrow(RangeError);
  });
});
