/** Measured points over how much there was to do, both axes in tenfolds: as an SVG to keep and in characters for the terminal. */
import { scaleLog } from 'd3-scale';
import { line } from 'd3-shape';

export interface Series {
  readonly name: string;
  /** One character for the terminal. */
  readonly mark: string;
  readonly points: readonly (readonly [x: number, y: number])[];
}
export interface Plot {
  readonly title: string;
  /** With their units. */
  readonly xLabel: string;
  readonly yLabel: string;
  readonly series: readonly Series[];
}

const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
const shown = (value: number): string => String(Number(value.toPrecision(3)));

/** What is measured lies within; throws RangeError where nothing is, or where a tenfold has no place for it. */
const reachOf = ({ series }: Plot, axis: 0 | 1): [number, number] => {
  const all = series.flatMap(({ points }) => points.map((point) => point[axis]));
  if (all.length === 0 || !all.every((value) => value > 0 && Number.isFinite(value)))
    throw new RangeError('a plot in tenfolds needs numbers above nothing');
  return [Math.min(...all), Math.max(...all)];
};
/** A little room at either end, and for one number alone a range at all. */
const widened = ([low, high]: readonly [number, number]): [number, number] => [low / 1.3, high * 1.3];
const yReachOf = (plot: Plot): [number, number] => widened(reachOf(plot, 1));
const xsOf = ({ series }: Plot): readonly number[] =>
  [...new Set(series.flatMap(({ points }) => points.map(([x]) => x)))].sort((a, b) => a - b);

/** Ones, twos and fives within: enough for one tenfold and not too many for four. */
const ticksOf = ([low, high]: readonly [number, number]): readonly number[] => {
  const all: number[] = [];
  for (let power = Math.floor(Math.log10(low)); power <= Math.ceil(Math.log10(high)); power++)
    for (const step of [1, 2, 5]) all.push(Number((step * 10 ** power).toPrecision(1)));
  const within = all.filter((tick) => tick >= low && tick <= high);
  const tens = within.filter((tick) => Number.isInteger(Number(Math.log10(tick).toFixed(9))));
  return within.length > 8 && tens.length > 1 ? tens : within;
};

const SIZE = { width: 720, height: 440, left: 80, right: 20, top: 52, bottom: 60 } as const;
const DASHES = ['', '6 4', '2 4', '10 3 2 3'];

export const svgOf = (plot: Plot): string => {
  const { width, height, left, right, top, bottom } = SIZE;
  const yReach = yReachOf(plot);
  const x = scaleLog(widened(reachOf(plot, 0)), [left, width - right]);
  const y = scaleLog(yReach, [height - bottom, top]);
  const path = line<readonly [number, number]>()
    .x(([at]) => x(at))
    .y(([, at]) => y(at));
  const text = (at: readonly [number, number], words: string, more = ''): string =>
    `<text x="${at[0].toFixed(1)}" y="${at[1].toFixed(1)}" ${more}>${escaped(words)}</text>`;
  const foot = height - bottom;
  const parts = [
    `<rect width="${width}" height="${height}" fill="#fff"/>`,
    text([left, 20], plot.title, 'font-weight="bold"'),
    ...ticksOf(yReach).flatMap((tick) => [
      `<path d="M${left} ${y(tick).toFixed(1)}H${width - right}" stroke="#ccc"/>`,
      text([left - 8, y(tick) + 4], shown(tick), 'text-anchor="end"'),
    ]),
    ...xsOf(plot).map((tick) => text([x(tick), foot + 18], shown(tick), 'text-anchor="middle"')),
    `<path d="M${left} ${top}V${foot}H${width - right}" fill="none" stroke="#000"/>`,
    text([(left + width - right) / 2, height - 16], plot.xLabel, 'text-anchor="middle"'),
    text([0, 0], plot.yLabel, `text-anchor="middle" transform="translate(20 ${(top + foot) / 2}) rotate(-90)"`),
    ...plot.series.flatMap(({ name, points }, i) => [
      `<path d="${path([...points])}" fill="none" stroke="#000" stroke-dasharray="${DASHES[i % DASHES.length]}"/>`,
      ...points.map(([a, b]) => `<circle cx="${x(a).toFixed(1)}" cy="${y(b).toFixed(1)}" r="3.5"/>`),
      // Each line is named at its middle, below it to the right: time only grows.
      ...points
        .slice(Math.floor((points.length - 1) / 2))
        .slice(0, 1)
        .map(([a, b]) => text([x(a) + 8, y(b) + 17], name)),
    ]),
  ];
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" font-family="sans-serif" font-size="13">\n${parts.join('\n')}\n</svg>\n`;
};

const COLUMNS = 60;
const ROWS = 16;

/** Later series are drawn over earlier ones where both have a point. */
export const textOf = (plot: Plot): string => {
  const yReach = yReachOf(plot);
  const x = scaleLog(widened(reachOf(plot, 0)), [0, COLUMNS - 1]);
  const y = scaleLog(yReach, [ROWS - 1, 0]);
  const grid = Array.from({ length: ROWS }, () => new Array<string>(COLUMNS).fill(' '));
  for (const { mark, points } of plot.series)
    for (const [a, b] of points) (grid[Math.round(y(b))] as string[])[Math.round(x(a))] = mark;
  const labels = new Map(ticksOf(yReach).map((tick) => [Math.round(y(tick)), shown(tick)]));
  const wide = Math.max(...[...labels.values()].map((label) => label.length));
  const rows = grid.map((cells, row) => `${(labels.get(row) ?? '').padStart(wide)} |${cells.join('').trimEnd()}`);
  const below = new Array<string>(COLUMNS + 4).fill(' ');
  for (const tick of xsOf(plot)) {
    const label = shown(tick);
    const from = Math.max(0, Math.round(x(tick)) - Math.floor(label.length / 2));
    [...label].forEach((character, i) => {
      below[from + i] = character;
    });
  }
  const pad = ' '.repeat(wide + 2);
  return [
    plot.title,
    `${plot.yLabel} over ${plot.xLabel}; ${plot.series.map(({ mark, name }) => `${mark} ${name}`).join(', ')}`,
    ...rows,
    `${' '.repeat(wide)} +${'-'.repeat(COLUMNS)}`,
    `${pad}${below.join('').trimEnd()}`,
  ].join('\n');
};
