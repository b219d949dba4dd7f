/**
 * Shapes of feet spread evenly over the bounds. fast-check spreads a double over its bits, so that nearly all shapes of `anyForm`
 * are nought but for one or two measures at an end; these lie in between as well.
 */
import fc from 'fast-check';
import { FORM_BOUNDS, type FootForm } from '../../../src/anatomy';

const evenly = (measure: keyof FootForm): fc.Arbitrary<number> => {
  const [low, high] = FORM_BOUNDS[measure];
  return fc.integer({ min: 0, max: 1000 }).map((n) => low + ((high - low) * n) / 1000);
};

const evenForm: fc.Arbitrary<FootForm> = fc.record({
  arch: evenly('arch'),
  hindfootDeg: evenly('hindfootDeg'),
  adductusDeg: evenly('adductusDeg'),
  halluxDeg: evenly('halluxDeg'),
  firstRayMm: evenly('firstRayMm'),
});

/** So many of them, the same on every run. */
export const evenForms = (count: number): readonly FootForm[] =>
  fc.sample(evenForm, { seed: 20_261_128, numRuns: count });

export const formInWords = (form: FootForm): string =>
  Object.entries(form)
    .map(([name, value]) => `${name} ${(value as number).toFixed(2)}`)
    .join(', ');
