/** Stretches along a bone that question 2 tells: the plateau of pull with its spread, and how far beam theory speaks. */
import type { LoadBands } from '../mechanics';
import type { Spread } from '../mechanics/foot/types';
import type { Station, StationTable } from '../mechanics/types';
import type { Quantity } from '../units';
import type { Plateau } from './load-messages';
import { tenth } from './place';

const mm = (value: number): Quantity => ({ value: tenth(value), unit: 'mm' });
/** Draws that all say the told place have no spread to tell. */
const withBand = ({ told, low, high }: Spread): Quantity => {
  const [from, to] = [tenth(Math.min(low, told)), tenth(Math.max(high, told))];
  return from === to ? mm(told) : { ...mm(told), lowHigh: [from, to] };
};

/** Ends of the stretch with nine tenths of the largest pull, each with where the inner eight tenths of the draws have it. */
export const plateauInBands = ({ plateauMm: [from, to] }: Pick<LoadBands, 'plateauMm'>): Plateau => ({
  from: withBand(from),
  to: withBand(to),
});

/** As the ensemble has it: a peak's own place is the cortex guess talking. */
const PLATEAU = 0.9;
/** The same of the told run alone. */
export const plateauAsTold = ({ stations, peakTension }: StationTable): Plateau => {
  const high = stations
    .filter((s) => !s.outsideBeamTheory && s.tensionMPa >= PLATEAU * peakTension.mpa)
    .map((s) => s.sMm);
  return { from: mm(Math.min(...high, peakTension.sMm)), to: mm(Math.max(...high, peakTension.sMm)) };
};

export interface Stretch {
  readonly outside: boolean;
  readonly fromMm: number;
  readonly toMm: number;
}

/** The whole bone, cut where beam theory begins or ends: half-way between the stations that differ, so that both sides meet there. */
export const stretchesOf = (
  stations: readonly Pick<Station, 'sMm' | 'outsideBeamTheory'>[],
  lengthMm: number,
): readonly Stretch[] => {
  const borders = stations.slice(1).flatMap((station, i) => {
    const before = stations[i];
    return before === undefined || before.outsideBeamTheory === station.outsideBeamTheory
      ? []
      : [{ atMm: (before.sMm + station.sMm) / 2, outside: station.outsideBeamTheory }];
  });
  const starts = [{ atMm: 0, outside: stations[0]?.outsideBeamTheory ?? true }, ...borders];
  return starts.map(({ atMm, outside }, i) => ({ outside, fromMm: atMm, toMm: starts[i + 1]?.atMm ?? lengthMm }));
};

/** From the first place of the theory to the last. */
export const spokenStretch = (stretches: readonly Stretch[]): Quantity => {
  const inside = stretches.filter(({ outside }) => !outside);
  const [from, to] = [mm(inside[0]?.fromMm ?? 0), mm(inside.at(-1)?.toMm ?? 0)];
  return { ...from, lowHigh: [from.value, to.value] };
};
