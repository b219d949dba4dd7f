/** Any shape of foot inside the bounds that are checked. */
import fc from 'fast-check';
import { DEFAULT_FOOT, FORM_BOUNDS, type FootForm } from '../../../src/anatomy';

/** Evenly: a double of fast-check is spread over its bits, and its numbers prefer the ends: nearly every shape would lie there. */
const within = (measure: keyof FootForm): fc.Arbitrary<number> => {
  const [low, high] = FORM_BOUNDS[measure];
  return fc.noBias(fc.integer({ min: 0, max: 1000 })).map((n) => low + ((high - low) * n) / 1000);
};

export const anyForm: fc.Arbitrary<FootForm> = fc.record({
  arch: within('arch'),
  hindfootDeg: within('hindfootDeg'),
  adductusDeg: within('adductusDeg'),
  halluxDeg: within('halluxDeg'),
  firstRayMm: within('firstRayMm'),
});

/** So many of them, the same on every run. */
export const sampleForms = (count: number): readonly FootForm[] =>
  fc.sample(anyForm, { seed: 20_261_128, numRuns: count });

/** Lengths of feet that are looked at, mm. */
export const LENGTHS_MM = [200, 320] as const;

/** So many of them of any length too, the same on every run. */
export const sampleLengths = (count: number): readonly { readonly lengthMm: number; readonly form: FootForm }[] => {
  const lengthMm = fc.noBias(fc.integer({ min: LENGTHS_MM[0], max: LENGTHS_MM[1] }));
  return fc.sample(fc.record({ lengthMm, form: anyForm }), { seed: 20_261_129, numRuns: count });
};

/** The feet at the ends of every measure at once. */
export const cornerForms: readonly FootForm[] = Object.entries(FORM_BOUNDS).reduce<FootForm[]>(
  (forms, [measure, ends]) => forms.flatMap((form) => ends.map((end) => ({ ...form, [measure]: end }))),
  [DEFAULT_FOOT],
);

export const formInWords = (form: FootForm): string =>
  Object.entries(form)
    .filter(([name]) => name in FORM_BOUNDS)
    .map(([name, value]) => `${name} ${(value as number).toFixed(2)}`)
    .join(', ');
