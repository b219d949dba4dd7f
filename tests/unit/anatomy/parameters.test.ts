import { describe, expect, test } from 'vitest';
import { DEFAULT_FOOT, footParametersFor, H_BOUNDS_MM, hOfFootLength, prepareAnatomy } from '../../../src/anatomy';
import { builtFoot, shape } from '../../tools/built-foot';
import { LONG } from '../../tools/long';

const { scale } = shape;

describe('foot parameters', () => {
  test('the figures in the code are those of the content', () => {
    expect(footParametersFor({ heightCm: 171 })).toEqual(footParametersFor({ heightCm: 171 }, scale));
    expect(DEFAULT_FOOT.heelToSecondHeadMm).toBe(scale.defaultHMm);
  });

  test('nothing known gives the default foot; shape and height change only themselves', () => {
    expect(footParametersFor({})).toEqual(DEFAULT_FOOT);
    expect(footParametersFor({ heightCm: null, footShape: null })).toEqual(DEFAULT_FOOT);
    expect(footParametersFor({ footShape: 'high' })).toEqual({ ...DEFAULT_FOOT, arch: 1 });
    expect(footParametersFor({ heightCm: 180 }).heelToSecondHeadMm).toBe(178);
  });

  test('the length a foot is said to have is that of what is drawn, within 1 %', async () => {
    await prepareAnatomy();
    for (const length of LONG ? [200, 250, 320] : [200, 320]) {
      const { outline } = builtFoot({ heelToSecondHeadMm: hOfFootLength(length) });
      const along = [...outline.positions].filter((_, i) => i % 3 === 2);
      expect(
        Math.abs(along.reduce((m, z) => Math.max(m, z)) - along.reduce((m, z) => Math.min(m, z)) - length),
      ).toBeLessThan(length / 100);
    }
  });

  test('lengths of the slider lie within what was checked', () => {
    expect(hOfFootLength(200)).toBeGreaterThan(H_BOUNDS_MM[0]);
    expect(hOfFootLength(320)).toBeLessThan(H_BOUNDS_MM[1]);
  });

  test('stay within the bounds the shape was checked for', () => {
    expect(footParametersFor({ heightCm: 40 }).heelToSecondHeadMm).toBe(H_BOUNDS_MM[0]);
    expect(footParametersFor({ heightCm: 260 }).heelToSecondHeadMm).toBe(H_BOUNDS_MM[1]);
  });
});
