/** Any shape of foot inside the bounds that are checked. */
import fc from 'fast-check';
import { FORM_BOUNDS } from '../../../src/anatomy';
import type { FootForm } from '../../../src/anatomy/types';

const within = (measure: keyof FootForm) => {
  const [min, max] = FORM_BOUNDS[measure];
  return fc.double({ min, max, noNaN: true });
};

export const anyForm: fc.Arbitrary<FootForm> = fc.record({
  arch: within('arch'),
  hindfootDeg: within('hindfootDeg'),
  adductusDeg: within('adductusDeg'),
  halluxDeg: within('halluxDeg'),
  firstRayMm: within('firstRayMm'),
});
