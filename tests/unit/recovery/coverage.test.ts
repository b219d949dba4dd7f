import { describe, expect, test } from 'vitest';
import { coverageOf, type StudyLike } from '../../../src/recovery';
import { meanRow, rowOf, timeOf } from './rows';

const rows = (...means: readonly number[]): StudyLike[] => means.map((m, i) => meanRow(`s${i}`, m, m / 4, 20));
const checked = (studies: readonly StudyLike[]) => {
  const [coverage] = coverageOf(studies);
  if (coverage?.kind !== 'checked') throw new Error('not checked');
  return coverage;
};

describe('each study left out in turn', () => {
  test('four alike studies are each forecast by the others', () => {
    const { left, centresInside, peopleInside } = checked(rows(8, 8, 8, 8));
    expect(left.map((l) => l.centreInside)).toEqual([true, true, true, true]);
    expect(centresInside).toBe(4);
    // The same spread and a middle hardly unsure: a little over the 80 % that were promised.
    expect(peopleInside).toBeGreaterThan(0.8);
    expect(peopleInside).toBeLessThan(0.82);
  });

  test('by hand: the fourth of four alike studies', () => {
    /*
     * ln variance ln(1 + 1/16) = 0.0606246, mu 2.0491292. Three others: t of 2 is 1.885618 where the normal has 1.2815516,
     * squared ratio 2.164885. A person: 0.0606246 (1 + 2.164885/60) = 0.0628120, sd 0.2506233, times 1.2815516 is
     * 0.3211867: e^(2.0491292 -+ 0.3211867). The middle of 20: 0.0606246 (1/20 + 2.164885/60) = 0.0052187, sd
     * 0.0722403, times 1.2815516 is 0.0925796; the mean lies e^0.0303123 above: 8 e^-+0.0925796.
     */
    const [first] = checked(rows(8, 8, 8, 8)).left;
    expect(first?.personWeeks[0]).toBeCloseTo(Math.exp(2.0491292 - 0.3211867), 4);
    expect(first?.personWeeks[1]).toBeCloseTo(Math.exp(2.0491292 + 0.3211867), 4);
    expect(first?.centreWeeks[0]).toBeCloseTo(8 * Math.exp(-0.0925796), 4);
    expect(first?.centreWeeks[1]).toBeCloseTo(8 * Math.exp(0.0925796), 4);
  });

  test('a study unlike the others is a miss, and stays in the list', () => {
    const { left, centresInside, peopleInside } = checked(rows(8, 8.2, 7.9, 30));
    expect(left.map((l) => [l.arm.id, l.centreInside])).toEqual([
      ['s0', true],
      ['s1', true],
      ['s2', true],
      ['s3', false],
    ]);
    expect(centresInside).toBe(3);
    expect(left[3]?.peopleInside).toBeLessThan(0.01);
    expect(peopleInside).toBeLessThan(0.8);
  });

  test('three arms are too few, and that is said with their number', () => {
    expect(coverageOf([...rows(8, 9, 10), rowOf('bare', { time: timeOf() })])).toMatchObject([
      { endpoint: 'sport', kind: 'tooFew', fitted: 3 },
    ]);
  });

  test('endpoints and options are groups of their own; a group nobody may speak in is none', () => {
    const work = rows(2, 3, 2, 3).map((r) => ({ ...r, time: r.time && { ...r.time, endpoint: 'work' as const } }));
    const weak = rows(1).map((r) => ({
      ...r,
      mark: 'weak',
      time: r.time && { ...r.time, endpoint: 'union' as const },
    }));
    expect(coverageOf([...rows(8, 9, 10, 11), ...work, ...weak]).map((c) => [c.endpoint, c.kind])).toEqual([
      ['sport', 'checked'],
      ['work', 'checked'],
    ]);
  });
});
