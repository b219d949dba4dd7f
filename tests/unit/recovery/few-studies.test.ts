/** Student's t against its closed forms, and how much few studies widen an interval. */
import { describe, expect, test } from 'vitest';
import { normalQuantile } from '../../../src/recovery/distributions';
import { tQuantile, widerBy } from '../../../src/recovery/few-studies';

describe("Student's t", () => {
  test.each([0.6, 0.75, 0.9, 0.975, 0.999])('with one and two degrees of freedom, in closed form: %d', (share) => {
    const a = 2 * share - 1;
    expect(tQuantile(share, 1)).toBeCloseTo(Math.tan((Math.PI * a) / 2), 6);
    expect(tQuantile(share, 2)).toBeCloseTo(a * Math.sqrt(2 / (1 - a * a)), 6);
  });

  test('with four, by its distribution in closed form', () => {
    // F(t) = 1/2 + 3/8 s (1 - s^2 / 12) with s = t / sqrt(1 + t^2 / 4)
    const t = tQuantile(0.9, 4);
    const s = t / Math.sqrt(1 + t ** 2 / 4);
    expect(0.5 + (3 / 8) * s * (1 - s ** 2 / 12)).toBeCloseTo(0.9, 6);
  });
});

describe('an interval from few studies', () => {
  test('is wider than the normal, less so with each study more, and the normal in the end', () => {
    expect(widerBy(3)).toBeCloseTo(1.885618 / 1.281552, 5);
    const widths = [2, 3, 4, 6, 10, 30, 1000].map(widerBy);
    expect(widths).toEqual([...widths].sort((a, b) => b - a));
    expect(widths.at(-1)).toBeCloseTo(1, 2);
    expect(widths.at(-1) ?? 0).toBeGreaterThan(1);
  });

  test('keeps its tenth and ninetieth where t has them', () => {
    expect(widerBy(5) * normalQuantile(0.9)).toBeCloseTo(tQuantile(0.9, 4), 12);
  });

  test('one study tells nothing between studies', () => {
    expect(() => widerBy(1)).toThrow(RangeError);
  });
});
