/**
 * Codes of ICD-10-CM as they stand in the list of the fiscal year 2026, read in copies of `icd10cm_codes_2026.txt` and
 * `icd10cm_order_2026.txt`: stem, the characters that may follow it, and those of the visit. Only the stems that content uses.
 */
const FRACTURE = 'ABDGKPS';
const STRESS = 'ADGKPS';
const INJURY = 'ADS';

const LIST: readonly (readonly [stems: string, next: string, visits: string])[] = [
  ['S92.01 S92.02 S92.03 S92.04 S92.05 S92.06', '123456', FRACTURE],
  ['S92.11 S92.12 S92.13 S92.14 S92.15', '123456', FRACTURE],
  ['S92.19', '129', FRACTURE],
  ['S92.21 S92.22 S92.23 S92.24 S92.25', '123456', FRACTURE],
  ['S92.31 S92.32 S92.33 S92.34 S92.35', '123456', FRACTURE],
  ['S92.41 S92.42 S92.51 S92.52 S92.53', '123456', FRACTURE],
  ['S92.81', '129', FRACTURE],
  ['S93.32', '123456', INJURY],
  ['S93.52', '1234569', INJURY],
  ['S93.62', '129', INJURY],
  ['S99.00 S99.10', '129', FRACTURE],
  ['M84.37', '123456789', STRESS],
  ['M87.07', '123456789', ''],
  ['M92.6 M92.7', '012', ''],
];

export const codesOf2026 = (): ReadonlySet<string> =>
  new Set(
    LIST.flatMap(([stems, next, visits]) =>
      stems
        .split(' ')
        .flatMap((stem) =>
          [...next].flatMap((n) => (visits === '' ? [''] : [...visits]).map((v) => `${stem}${n}${v}`)),
        ),
    ),
  );
