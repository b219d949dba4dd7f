import { describe, expect, test } from 'vitest';
import { DEFAULT_FOOT, footParametersFor, H_BOUNDS_MM } from '../../../src/anatomy';
import { readShape } from '../../../src/cli/read-shape';

const { scale } = readShape();

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

  test('stay within the bounds the shape was checked for', () => {
    expect(footParametersFor({ heightCm: 40 }).heelToSecondHeadMm).toBe(H_BOUNDS_MM[0]);
    expect(footParametersFor({ heightCm: 260 }).heelToSecondHeadMm).toBe(H_BOUNDS_MM[1]);
  });
});
