/** The library's distributions against another library, and the score of a log-normal against a third. */

import { idOf, type OptionId } from '../../../src/ids';
import { type Forecast, scoreOf } from '../../../src/recovery';
import { betaQuantile } from '../../../src/recovery/beta';
import { normalQuantile, shareAfter, shareBy } from '../../../src/recovery/distributions';
import { tQuantile } from '../../../src/recovery/few-studies';
import { against } from '../../tools/against';

const SCIPY = (where: string) => ({ source: 'SciPy 1.17.1, scipy.stats', where, how: 'read' }) as const;
const DIGITS = 'both libraries keep twelve digits here';
const relative = (expected: number) => ({ expected, tolerance: Math.abs(expected) * 1e-12, why: DIGITS });

const QUANTILES = [
  [0.001, -3.090232306167813],
  [0.1, -1.2815515655446004],
  [0.9, 1.2815515655446004],
  [0.975, 1.959963984540054],
] as const;
for (const [share, expected] of QUANTILES)
  against(SCIPY(`norm.ppf(${share})`), `normal quantile of ${share}`, () => ({
    ...relative(expected),
    got: normalQuantile(share),
  }));

const BETAS = [
  [0.1, 2.5, 17.5, 0.04319313183863647],
  [0.9, 2.5, 17.5, 0.22387144302175377],
  [0.1, 0.5, 24.5, 0.0003255125926123187],
  [0.9, 0.0526, 0.2105, 0.9663137922731674],
  [0.1, 40, 3, 0.8782072007365317],
] as const;
for (const [share, a, b, expected] of BETAS)
  against(SCIPY(`beta.ppf(${share}, ${a}, ${b})`), `beta quantile of ${share}, ${a} and ${b}`, () => ({
    expected,
    tolerance: Math.abs(expected) * 1e-9,
    why: 'found by iteration in both',
    got: betaQuantile(share, a, b),
  }));

const STUDENTS = [
  [0.9, 2, 1.8856180831641272],
  [0.9, 3, 1.637744353696209],
  [0.9, 7, 1.4149239276505086],
  [0.975, 2, 4.302652729749462],
  [0.99, 30, 2.457261542400591],
] as const;
for (const [share, freedom, expected] of STUDENTS)
  against(
    SCIPY(`t.ppf(${share}, ${freedom})`),
    `Student's t quantile of ${share}, ${freedom} degrees of freedom`,
    () => ({
      expected,
      tolerance: expected * 1e-6,
      why: 'by way of the beta quantile, found by iteration',
      got: tQuantile(share, freedom),
    }),
  );

const fit = { mu: 2, sigma: 0.4 };
against(SCIPY('lognorm.cdf(5, 0.4, scale=e^2)'), 'log-normal share by week 5', () => ({
  ...relative(0.1644318481348832),
  got: shareBy(fit, 5),
}));
against(SCIPY('lognorm.sf(60, 0.4, scale=e^2)'), 'log-normal share after week 60, far in the tail', () => ({
  expected: 8.21085745306166e-8,
  tolerance: 1e-17,
  why: 'ten digits of a small share',
  got: shareAfter(fit, 60),
}));
against(SCIPY('norm.cdf(-30)'), 'share thirty standard deviations late', () => ({
  expected: 4.906713927147908e-198,
  tolerance: 1e-209,
  why: 'eleven digits of what one less the rest would call 0',
  got: shareAfter({ mu: 0, sigma: 1 }, Math.exp(30)),
}));

const branches = (
  u: number,
  p: number,
  fits: readonly [Forecast['branches'][0]['time'], Forecast['branches'][0]['time']],
) =>
  [
    { name: 'uneventful', chance: u, time: fits[0] },
    { name: 'problem', chance: p, time: fits[1] },
    { name: 'notReturned', chance: 1 - u - p, time: null },
  ] as const;
const forecast = (of: Forecast<'sport'>['branches']): Forecast<'sport'> => ({
  endpoint: 'sport',
  option: idOf<OptionId>('screw'),
  branches: of,
  afterWeek: 0,
});
const sport = (week: number | 'never') => ({ endpoint: 'sport', week }) as const;

const pure = forecast(branches(1, 0, [{ mu: 0.1, sigma: 0.9 }, null]));
against(
  {
    source: 'R package scoringRules, test of crps_lnorm (Baran & Lerch 2015)',
    where: 'crps_lnorm(3, 0.1, 0.9)',
    how: 'read',
  },
  'score of a pure log-normal at week 3, horizon so far that nothing is left',
  () => ({
    expected: 1.13552645,
    got: scoreOf(pure, sport(3), 1e5).crps,
    tolerance: 1e-8,
    why: 'printed to eight places',
  }),
);

/** Closed form of Baran & Lerch 2015, Q J R Meteorol Soc 141:2289, written out as scoringRules does. */
const closed = (y: number, mu: number, sigma: number): number =>
  y * (2 * shareBy({ mu, sigma }, y) - 1) -
  2 *
    Math.exp(mu + sigma ** 2 / 2) *
    (shareBy({ mu: mu + sigma ** 2, sigma }, y) + shareBy({ mu: 0, sigma: 1 }, Math.exp(sigma / Math.SQRT2)) - 1);
for (const [y, mu, sigma] of [
  [12, 2, 0.4],
  [3, 2.5, 0.3],
  [40, 2, 0.9],
  [8, 2.079, 0.05],
] as const)
  against(
    {
      source: 'Baran & Lerch 2015, Q J R Meteorol Soc 141:2289',
      where: 'closed form, as in scoringRules',
      how: 'second hand',
    },
    `score of a log-normal (${mu}, ${sigma}) at week ${y}`,
    () => ({
      expected: closed(y, mu, sigma),
      got: scoreOf(forecast(branches(1, 0, [{ mu, sigma }, null])), sport(y), 1e5).crps,
      tolerance: 1e-7,
      why: 'integrated in steps to a horizon where less than this is left',
    }),
  );

const mixed = forecast(
  branches(0.72, 0.18, [
    { mu: Math.log(8), sigma: 0.5 },
    { mu: Math.log(8) + 0.5, sigma: 0.5 },
  ]),
);
for (const [week, expected] of [
  [12, 2.2414989680146906],
  ['never', 31.349084025996742],
] as const)
  against(
    { source: 'SciPy 1.17.1, scipy.integrate.quad', where: 'squared distance of curve and step, 0 to 52', how: 'read' },
    `score of two branches and who never returns, ${week === 'never' ? 'never back' : `back in week ${week}`}`,
    () => ({ expected, got: scoreOf(mixed, sport(week), 52).crps, tolerance: 1e-7, why: 'integrated in steps' }),
  );
