/** Arbitrary ids and days of a case. */
import fc from 'fast-check';

export const anyId = fc.stringMatching(/^[a-z][A-Za-z0-9]{0,8}(-[A-Za-z0-9]{1,8}){0,2}$/);
export const anyDate = fc
  .date({ min: new Date('1990-01-01T00:00:00Z'), max: new Date('2040-12-31T00:00:00Z'), noInvalidDate: true })
  .map((d) => d.toISOString().slice(0, 10));
