/** Figures as rows of a table: value, range, unit, who stands behind them. */
import type { Content, Figure, FrameFigureRecord } from '../../content/schema';
import type { LoadBands } from '../../mechanics/foot/types';

export const GROUPS = ['ties', 'joints', 'pads', 'bone'] as const satisfies readonly FrameFigureRecord['group'][];
export const BASES = [
  'measured',
  'another model',
  'assumed',
  'calibrated',
] as const satisfies readonly FrameFigureRecord['basis'][];

const number = (value: number): string => String(value).replace('-', '−');

export const valueText = ({ value }: Figure): string => number(value);
/** Empty where a figure has no band. */
export const rangeText = ({ value, low = value, high = value }: Figure): string =>
  low === high ? '' : `${number(low)} … ${number(high)}`;

/**
 * Share of the spread of the answer; null until it is worked out, and for a figure without a band: nothing of it is drawn. `chance`
 * where it is not told from what an unrelated figure shows.
 */
export const spreadShare = (bands: LoadBands | null, id: string, figure: Figure): number | 'chance' | null => {
  const found = rangeText(figure) === '' ? undefined : bands?.sensitivity.find((each) => each.figure === id);
  if (found === undefined) return null;
  return found.standsOut ? found.share : 'chance';
};

export const shareText = (share: number | null): string => (share === null ? '–' : `${Math.round(100 * share)} %`);

/** How many figures of the frame rest on what, for the sentence above the table. */
export const countBases = (content: Content): Readonly<Record<FrameFigureRecord['basis'], number>> => {
  const count = (basis: FrameFigureRecord['basis']): number =>
    content.frame.filter((record) => record.basis === basis).length;
  return {
    measured: count('measured'),
    'another model': count('another model'),
    assumed: count('assumed'),
    calibrated: count('calibrated'),
  };
};
