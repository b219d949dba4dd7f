/** The bench's plots: every point stands where its numbers put it, axes carry their units, and nothing is drawn of nothing. */
import { expect, it } from 'vitest';
import { type Plot, svgOf, textOf } from '../../bench/plot';

const plot: Plot = {
  title: 'growth <a & b>',
  xLabel: 'elements a ray',
  yLabel: 'time, ms',
  series: [
    {
      name: 'slow',
      mark: '#',
      points: [
        [12, 10],
        [24, 80],
        [48, 640],
      ],
    },
    {
      name: 'quick',
      mark: 'o',
      points: [
        [12, 1],
        [24, 2],
        [48, 4],
      ],
    },
  ],
};

it('draws a point for every measured one, names both axes with their units, and escapes words', () => {
  const svg = svgOf(plot);
  expect(svg.match(/<circle /g)).toHaveLength(6);
  for (const words of ['elements a ray', 'time, ms', 'slow', 'quick', 'growth &lt;a &amp; b&gt;'])
    expect(svg).toContain(words);
});

it('twice as much is as far apart everywhere, to the right and down', () => {
  const at = [...svgOf(plot).matchAll(/<circle cx="([\d.]+)" cy="([\d.]+)"/g)].map(([, x, y]) => [
    Number(x),
    Number(y),
  ]);
  const [a, b, c, d, e, f] = at as [number[], number[], number[], number[], number[], number[]];
  for (const k of [0, 1]) {
    expect((c[k] as number) - (b[k] as number)).toBeCloseTo((b[k] as number) - (a[k] as number), 0);
    expect((f[k] as number) - (e[k] as number)).toBeCloseTo((e[k] as number) - (d[k] as number), 0);
  }
  // Eight times is three times as far as twice.
  expect(((b[1] as number) - (a[1] as number)) / ((e[1] as number) - (d[1] as number))).toBeCloseTo(3, 1);
});

it('in the terminal the larger stands higher, under the numbers of its axis', () => {
  const rows = textOf(plot).split('\n');
  const first = (mark: string) => rows.slice(2).findIndex((row) => row.includes(mark));
  expect(first('#')).toBeLessThan(first('o'));
  expect(rows.join('\n').match(/^[^|]*\|.*#/gm)).toHaveLength(3);
  expect(rows.at(-1)?.trim().split(/\s+/)).toEqual(['12', '24', '48']);
  expect(rows[1]).toBe('time, ms over elements a ray; # slow, o quick');
});

it('refuses what has no place on such an axis', () => {
  for (const y of [0, -1, Number.NaN])
    expect(() => svgOf({ ...plot, series: [{ name: 'x', mark: 'x', points: [[1, y]] }] })).toThrow(RangeError);
  expect(() => textOf({ ...plot, series: [] })).toThrow(RangeError);
});
