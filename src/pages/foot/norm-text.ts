/** Values and usual values of a measure in words. A figure keeps one decimal where its source gave one; a limit is never a usual value. */
import type { Angle } from '../../anatomy/angles';
import type { Norm } from '../../anatomy/angles/schema';
import type { Say } from '../words';

type Unit = Angle['unit'];
const WORD: Readonly<Record<Unit, string>> = {
  deg: 'foot.degrees',
  mm: 'foot.millimetres',
  share: 'foot.percent',
};

/** As it is printed: a share in per cent. */
const shown = (value: number, unit: Unit): number => (unit === 'share' ? 100 * value : value);
/** A rounded -0.3 is 0 and not -0. */
const fixed = (value: number, decimals: number): string => value.toFixed(decimals).replace(/^-(0(\.0)?)$/, '$1');

const decimalsOf = (unit: Unit): number => (unit === 'mm' ? 1 : 0);

/** A measured value as the figure that is printed of it. */
export const printed = (value: number, unit: Unit): number => Number(fixed(shown(value, unit), decimalsOf(unit)));

/** A printed figure with its unit. */
export const figureText = (say: Say, figure: number, unit: Unit): string =>
  say(WORD[unit], { value: fixed(figure, decimalsOf(unit)) });

/** The value measured on a foot: whole degrees and per cent, tenths of a millimetre. */
export const valueText = (say: Say, value: number, unit: Unit): string => figureText(say, printed(value, unit), unit);

/** The range of a norm, its mean (with its spread for who reads that), or the limit it sets. */
export const normText = (say: Say, { mean, sd, low, high }: Norm, unit: Unit, withSpread: boolean): string => {
  const whole = [mean, sd, low, high].every(
    (figure) => figure === undefined || Number.isInteger(Math.round(10 * shown(figure, unit)) / 10),
  );
  const text = (figure: number): string =>
    say(WORD[unit], { value: fixed(shown(figure, unit), whole && unit !== 'mm' ? 0 : 1) });
  if (mean !== undefined)
    return sd === undefined || !withSpread
      ? say('foot.mean', { mean: text(mean) })
      : say('foot.meanSd', { mean: text(mean), sd: text(sd) });
  if (low !== undefined && high !== undefined) return say('foot.range', { low: text(low), high: text(high) });
  if (high !== undefined) return say('foot.below', { value: text(high) });
  if (low !== undefined) return say('foot.above', { value: text(low) });
  throw new RangeError('a norm without a figure');
};
