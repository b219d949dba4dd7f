import { describe, expect, test } from 'vitest';
import { boneAxis, inBone } from '../../../../src/anatomy';
import { canalOf } from '../../../../src/anatomy/inside';
import type { BoneId } from '../../../../src/ids';
import { fineFoot, footOf, shape, tubed } from '../../../tools/inside-material';
import { barMesh } from '../../../tools/tubes';

/** An even tube of 1.5 mm. */
const even = tubed([
  { name: 'metaphysis', at: 0.2, cortex: '1.5' },
  { name: 'neck', at: 0.8, cortex: '1.5' },
]);
const waisted = (waist: number) =>
  footOf(
    barMesh({
      lengthMm: 60,
      semi: (u) => [waist + 6 * (u - 0.6) ** 2, waist + 2 + 6 * (u - 0.6) ** 2],
      around: 72,
      along: 60,
      from: [0, 20, 0],
    }),
  );

describe('canalOf', () => {
  test('a waisted bar under 1.5 mm: the isthmus is at the waist, as wide as is left there', () => {
    const { stations, isthmus } = canalOf(waisted(5), 'metatarsal5', even);
    expect(isthmus?.share).toBeCloseTo(0.6, 6);
    expect(isthmus?.canal?.acrossMm).toBeCloseTo(7, 1);
    expect(isthmus?.canal?.upDownMm).toBeCloseTo(11, 1);
    for (const side of ['dorsal', 'plantar', 'medial', 'lateral'] as const)
      expect(isthmus?.canal?.cortexMm[side]).toBeCloseTo(1.5, 1);
    const [, y] = isthmus?.canal?.centre ?? [0, 0, 0];
    expect(y).toBeCloseTo(20, 2);
    expect(stations.every((s, i) => s.sMm > (stations[i - 1]?.sMm ?? 0))).toBe(true);
  });

  test('closed at the waist: no isthmus', () => {
    const { stations, isthmus } = canalOf(waisted(1.4), 'metatarsal5', even);
    expect(isthmus).toBeNull();
    expect(stations.some((s) => s.canal === null)).toBe(true);
    expect(stations.some((s) => s.canal !== null)).toBe(true);
  });

  test.each([
    [
      'wider than the bone',
      [13, 13, 13],
      /metatarsal5 at 59 % of its length: a canal of [\d.]+ by [\d.]+ mm does not fit a bone of/,
    ],
    ['of no width', [0, 0, 0], /metatarsal5 at 59 % of its length: a canal needs widths above 0 mm/],
    ['that is no number', [Number.NaN, Number.NaN, Number.NaN], /a canal needs widths above 0 mm/],
  ] as const)('a canal %s is refused by bone and place, and makes no numbers', (_, across, says) => {
    const canals = shape.inside.canals.map((canal) => ({
      ...canal,
      widths: canal.widths.map((w) => (w.bone === 'metatarsal5' ? { ...w, across } : w)),
    }));
    const wrong = { ...shape, inside: { ...shape.inside, canals } } as typeof shape;
    expect(() => canalOf(fineFoot(), 'metatarsal5', wrong)).toThrow(says);
  });

  test('a bone that is no tube has no canal', () => {
    expect(() => canalOf(fineFoot(), 'calcaneus', shape)).toThrow('calcaneus has no canal');
  });

  const metatarsals: BoneId[] = ['metatarsal1', 'metatarsal2', 'metatarsal3', 'metatarsal4', 'metatarsal5'];
  test.each(metatarsals)('%s: open from base to head, on the axis of the shaft, thickest in the middle', (bone) => {
    const foot = fineFoot();
    const { stations, isthmus } = canalOf(foot, bone, shape);
    const axis = boneAxis(foot, bone);
    expect(stations.every((s) => s.canal !== null)).toBe(true);
    expect(isthmus?.share).toBeGreaterThan(0.4);
    expect(isthmus?.share).toBeLessThan(0.8);
    const wallAt = (share: number): number => {
      const near = stations.reduce((a, b) => (Math.abs(b.share - share) < Math.abs(a.share - share) ? b : a));
      return Math.min(...Object.values(near.canal?.cortexMm ?? { none: Number.NaN }));
    };
    expect(wallAt(0.55)).toBeGreaterThan(1.4 * wallAt(0.15));
    expect(wallAt(0.55)).toBeGreaterThan(1.2 * wallAt(0.9));
    for (const s of stations.filter((at) => at.share > 0.4 && at.share < 0.8)) {
      const { sMm } = inBone(axis, s.canal?.centre ?? axis.origin);
      expect(sMm).toBeCloseTo(s.sMm, 4);
    }
  });
});
