/** Between-study spread against published and library values, on the data of an interlaboratory comparison. */
import { betweenVariance } from '../../../src/recovery/pooling';
import { wilsonInterval } from '../../../src/recovery/rates';
import { against } from '../../tools/against';

const VALUES = [61.0, 61.4, 62.21, 62.3, 62.34, 62.6, 62.7, 62.84, 65.9];
const VARIANCES = [0.2025, 1.21, 0.09, 0.2025, 0.3844, 0.5625, 0.0676, 0.0225, 1.8225];

against(
  {
    source: 'Kacker 2004, Metrologia 41:132',
    where: 'table 1, first row, as in the tests of statsmodels',
    how: 'second hand',
  },
  'Paule and Mandel: standard deviation between nine laboratories',
  () => ({
    expected: 0.8399,
    got: Math.sqrt(betweenVariance(VALUES, VARIANCES)),
    tolerance: 6e-5,
    why: 'printed to four places',
  }),
);
against(
  { source: 'statsmodels 0.15.0, combine_effects(method_re="pm")', where: 'the same data', how: 'read' },
  'Paule and Mandel: variance between nine laboratories',
  () => ({ expected: 0.7053953093, got: betweenVariance(VALUES, VARIANCES), tolerance: 1e-9, why: 'iterated in both' }),
);

/** The dossier's event block: counts and Wilson's 95 % interval in whole percent. */
const EVENTS = [
  ['cast failure, Mologne 2005', 8, 18, '25-66'],
  ['screw failure, Mologne 2005', 1, 19, '1-25'],
  ['refracture after surgery, Ekstrand 2013', 7, 28, '13-43'],
  ['refracture without, Ekstrand 2013', 5, 9, '27-81'],
  ['screw failure, Larson 2002', 6, 15, '20-64'],
  ["refracture, O'Malley 2016", 3, 10, '11-60'],
] as const;
const whole = (share: number): string => (100 * share).toFixed(0);
for (const [of, count, all, expected] of EVENTS)
  against(
    { source: of, where: 'clinical.md 6.5, clinical-2.md 3.3, intervals derived there', how: 'second hand' },
    `${count} of ${all}: 95 % interval, percent`,
    () => {
      const { low, high } = wilsonInterval(count, all, 1.959963984540054);
      return { expected, got: `${whole(low)}-${whole(high)}` };
    },
  );
