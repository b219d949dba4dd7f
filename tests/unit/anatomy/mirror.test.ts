import { describe, expect, test } from 'vitest';
import { meshVolume, mirrorFoot } from '../../../src/anatomy';
import { modelFoot } from '../../tools/model-foot';

describe('the left foot', () => {
  const right = modelFoot();
  const left = mirrorFoot(right);

  test('is the mirror of the right one: still outward, joints mirrored with it, and back again', () => {
    expect(left.side).toBe('left');
    for (const [id, mesh] of left.bones) {
      expect(meshVolume(mesh)).toBeGreaterThan(0);
      expect(mesh.positions[0]).toBe(-(right.bones.get(id)?.positions[0] ?? 0));
    }
    for (const [id, j] of left.joints) {
      const other = right.joints.get(id);
      expect(j.centre).toEqual([-(other?.centre[0] ?? 0), other?.centre[1], other?.centre[2]]);
      expect(j.normal[0]).toBe(-(other?.normal[0] ?? 0));
    }
    expect(mirrorFoot(left)).toEqual(right);
  });
});
