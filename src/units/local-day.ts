import type { IsoDate } from '.';

const two = (n: number): string => String(n).padStart(2, '0');

/** The calendar day of a moment where this device is: late in the evening UTC may already be tomorrow. */
export const localDay = (at: Date): IsoDate =>
  `${String(at.getFullYear()).padStart(4, '0')}-${two(at.getMonth() + 1)}-${two(at.getDate())}` as IsoDate;
