/** Mean and spread from ranges and quartiles: the tables of the paper, and the rows of our dossier worked out again. */
import { weekBy } from '../../../src/recovery/distributions';
import {
  logNormalOf,
  meanFromQuartiles,
  meanFromRange,
  quartilesInSds,
  rangeInSds,
  sdFromRange,
} from '../../../src/recovery/estimators';
import { against } from '../../tools/against';

const WAN = 'Wan et al. 2014, BMC Med Res Methodol 14:135';
const LUO = 'Luo et al. 2018, Stat Methods Med Res 27:1785';

/** n, then the exact expected range of n normal values. The formula is Blom's approximation of it. */
const RANGES = [
  [2, 1.128],
  [5, 2.326],
  [10, 3.078],
  [20, 3.735],
  [25, 3.931],
  [30, 4.086],
  [40, 4.322],
  [50, 4.498],
] as const;
for (const [n, expected] of RANGES)
  against(
    { source: WAN, where: `table 1, n = ${n}`, how: 'read' },
    `range of ${n} people, standard deviations`,
    () => ({
      expected,
      got: rangeInSds(n),
      tolerance: n < 10 ? 0.052 : 0.016,
      why: 'formula 9 is an approximation of the table: 4.5 % long for two people, within half a percent from ten on',
    }),
  );

/** Q and the table's value for n = 4Q + 1. */
const QUARTILES = [
  [1, 0.99],
  [2, 1.144],
  [3, 1.206],
  [5, 1.26],
  [10, 1.303],
  [50, 1.34],
] as const;
for (const [q, expected] of QUARTILES)
  against(
    { source: WAN, where: `table 2, Q = ${q}, as kept in the R package meta`, how: 'second hand' },
    `quartiles of ${4 * q + 1} people, standard deviations`,
    () => ({
      expected,
      got: quartilesInSds(4 * q + 1),
      tolerance: 0.0045,
      why: 'formula 16 is an approximation of the table, half a percent off for five people',
    }),
  );

const MEANS = 'rule of thumb for the weights, as kept in the R package meta';
against({ source: LUO, where: MEANS, how: 'second hand' }, 'mean from quartiles 4, 6, 9 of 30 people', () => ({
  // (0.7 + 0.39 / 30) * 6.5 + (0.3 - 0.39 / 30) * 6
  expected: 0.713 * 6.5 + 0.287 * 6,
  got: meanFromQuartiles(4, 6, 9, 30),
  tolerance: 1e-12,
  why: 'the same sum',
}));
against({ source: LUO, where: MEANS, how: 'second hand' }, 'mean from range 2, 6, 20 of 81 people', () => ({
  // 81^0.75 = 27: 4/31 of the middle of the range, 27/31 of the median
  expected: (4 * 11 + 27 * 6) / 31,
  got: meanFromRange(2, 6, 20, 81),
  tolerance: 1e-12,
  why: 'the same sum',
}));

/** As printed: n, mean, SD or range; then mu, sigma and the weeks of 10, 50 and 90 % that the dossier worked out. */
interface Row {
  readonly of: string;
  readonly n: number;
  readonly mean: number;
  readonly spread: number | readonly [number, number];
  readonly fit: readonly [number, number];
  readonly weeks: readonly [number, number, number];
}
const ROWS: readonly Row[] = [
  { of: 'Watson 2020, play', n: 26, mean: 3.6, spread: [1.5, 6], fit: [1.233, 0.308], weeks: [2.3, 3.4, 5.1] },
  { of: 'J Hum Kinet 2021, screw first', n: 10, mean: 9.2, spread: 1.86, fit: [2.199, 0.2], weeks: [7, 9, 11.7] },
  {
    of: 'J Hum Kinet 2021, cast then screw',
    n: 6,
    mean: 17.5,
    spread: 2.5,
    fit: [2.852, 0.142],
    weeks: [14.4, 17.3, 20.8],
  },
  {
    of: 'J Hum Kinet 2021, nonunion first',
    n: 4,
    mean: 24.5,
    spread: 10.5,
    fit: [3.114, 0.411],
    weeks: [13.3, 22.5, 38.1],
  },
  { of: 'BOA 2012, play', n: 49, mean: 14.6, spread: [5, 34], fit: [2.591, 0.424], weeks: [7.7, 13.3, 23] },
  { of: 'Marecek 2016, clinical union', n: 27, mean: 8, spread: 2.6, fit: [2.029, 0.317], weeks: [5.1, 7.6, 11.4] },
  { of: 'Wright 2000, release', n: 6, mean: 8.5, spread: [5.5, 12], fit: [2.097, 0.292], weeks: [5.6, 8.1, 11.8] },
  { of: "O'Malley 1996, stage", n: 35, mean: 19, spread: [6, 52], fit: [2.801, 0.535], weeks: [8.3, 16.5, 32.7] },
  { of: 'Robertson 2019, sport', n: 16, mean: 9.1, spread: [4, 14], fit: [2.162, 0.304], weeks: [5.9, 8.7, 12.8] },
  { of: 'J Foot Ankle 2022, sport', n: 22, mean: 12.04, spread: 2.21, fit: [2.472, 0.182], weeks: [9.4, 11.8, 15] },
  { of: 'BMC 2017, sport', n: 39, mean: 53 / 7, spread: 22 / 7, fit: [1.945, 0.399], weeks: [4.2, 7, 11.7] },
  { of: 'BMC 2017, work', n: 39, mean: 17 / 7, spread: 12 / 7, fit: [0.685, 0.636], weeks: [0.9, 2, 4.5] },
  { of: 'Porter 2005, sport', n: 24, mean: 7.5, spread: [10 / 7, 12], fit: [1.953, 0.351], weeks: [4.5, 7.1, 11.1] },
];
for (const { of, n, mean, spread, fit, weeks } of ROWS) {
  const from = { source: of, where: 'clinical.md 6.5, clinical-2.md 3.3, derived there', how: 'second hand' } as const;
  const made = () => logNormalOf(mean, typeof spread === 'number' ? spread : sdFromRange(...spread, n));
  const kept = { tolerance: 5e-4, why: 'kept to three places' };
  against(from, `${of}: middle of ln weeks`, () => ({ expected: fit[0], got: made().mu, ...kept }));
  against(from, `${of}: spread of ln weeks`, () => ({ expected: fit[1], got: made().sigma, ...kept }));
  const printed = (share: number) => weekBy(made(), share).toFixed(1);
  against(from, `${of}: weeks of 10, 50 and 90 %`, () => ({
    expected: weeks.map((w) => w.toFixed(1)).join(' '),
    got: [0.1, 0.5, 0.9].map(printed).join(' '),
  }));
}
