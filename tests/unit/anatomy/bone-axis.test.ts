import { describe, expect, test } from 'vitest';
import { boneAxis, fromBone, inBone, stationOf } from '../../../src/anatomy/bone-axis';
import { mirrored, tubeFoot } from '../../tools/tubes';

describe('boneAxis', () => {
  const foot = tubeFoot();
  const axis = boneAxis(foot, 'metatarsal5');

  test('runs along the bar, from its proximal to its distal end', () => {
    expect(axis.axis[2]).toBeCloseTo(1, 6);
    expect(axis.lengthMm).toBeCloseTo(70, 4);
    expect(axis.origin[2]).toBeCloseTo(75, 4);
    expect(stationOf(axis, [-35, 12, 145])).toBeCloseTo(70, 4);
  });

  test('dorsal points up and lateral away from the middle of the body, on either foot', () => {
    expect(axis.dorsal[1]).toBeCloseTo(1, 6);
    expect(axis.lateral[0]).toBeCloseTo(-1, 6);
    const left = boneAxis(mirrored(foot), 'metatarsal5');
    expect(left.dorsal[1]).toBeCloseTo(1, 6);
    expect(left.lateral[0]).toBeCloseTo(1, 6);
  });

  test('a point goes into the bone frame and back', () => {
    const p = [-31, 14.5, 101] as const;
    const q = inBone(axis, p);
    const back = fromBone(axis, q.sMm, q.dorsalMm, q.lateralMm);
    for (const i of [0, 1, 2] as const) expect(back[i]).toBeCloseTo(p[i], 9);
    expect(q.lateralMm).toBeCloseTo(-4, 4);
  });

  test('a bone the foot lacks is an error that names it', () => {
    expect(() => boneAxis(foot, 'talus')).toThrow('talus');
  });
});
