/** What the station with the largest pull carries over the draws: the table of stations in words, told by the same rule. */
import {
  LEAST_REFERENCE_MPA,
  type SignedSpread,
  STATION_FORCES,
  STATION_STRESSES,
  type StationBand,
  signMayBeTold,
} from '../mechanics';
import type { StationForce, StationStress } from '../mechanics/foot/types';
import type { Quantity, Unit } from '../units';
import { agreed } from './agreed';
import { compute, message } from './build';
import type { Context } from './context';
import { type BoneRun, bandsOf, forcesRank, rankingInBands, spread, tableOf } from './how-computes';
import type { StationNumber } from './load-messages';
import { REFERENCE_ACTIVITY, referenceRun } from './loads';
import { tenth } from './place';

/** In words in N mm: of the outer rays in quiet standing one decimal of a N m would say nothing. */
const MOMENTS: readonly StationForce[] = ['bendUp', 'bendSide', 'torsion'];

const told = (band: SignedSpread, unit: Unit): { value: Quantity; agreed: StationNumber['agreed'] } => ({
  value: spread(band, unit),
  agreed: agreed(band.share),
});

const force = (station: StationBand, of: StationForce): StationNumber => ({
  of,
  ...(MOMENTS.includes(of) ? told(station.forces[of], 'N mm') : told(station.forces[of], 'N')),
});

/** Null where the bone is hardly pulled in the reference: then no stress has a measure. */
const stressesOf = (context: Context, run: BoneRun, rank: boolean) => {
  if (rank) return 'ofMost' as const;
  const { peakTension } = tableOf(context, { ...referenceRun(run), bone: run.bone });
  return peakTension.mpa < LEAST_REFERENCE_MPA ? null : ('ofReference' as const);
};

/** Whether the table of stations has any number at all. */
export const hasStationNumbers = (context: Context, run: BoneRun): boolean =>
  !forcesRank(context, run) || stressesOf(context, run, rankingInBands(context, run)) !== null;

export const loadStation = compute('how.loadStation', (context, inputs: BoneRun) => {
  const bands = bandsOf(context, inputs);
  const { stations, peakTension } = tableOf(context, inputs);
  const at = stations.findIndex(({ sMm }) => sMm === peakTension.sMm);
  const station = bands.stations[at];
  if (station === undefined) throw new RangeError('the bands have no station where the pull is largest');
  const rank = rankingInBands(context, inputs);
  const measure = stressesOf(context, inputs, rank);
  const forces = forcesRank(context, inputs) ? [] : STATION_FORCES;
  const stresses: readonly StationStress[] = measure === null ? [] : STATION_STRESSES;
  const asTold = bands.stations.flatMap((band, i) => [
    ...forces.map((of) => band.forces[of]),
    ...(measure === null || stations[i]?.outsideBeamTheory !== false ? [] : stresses.map((of) => band[measure][of])),
  ]);
  return message('loadStation', {
    activity: inputs.activity,
    reference: rank ? null : REFERENCE_ACTIVITY,
    at: { value: tenth(peakTension.sMm), unit: 'mm' },
    numbers: [
      ...forces.map((of) => force(station, of)),
      ...(measure === null
        ? []
        : stresses.map((of): StationNumber => ({ of, ...told(station[measure][of], 'times') }))),
    ],
    open: asTold.filter((band) => !signMayBeTold(band)).length,
    all: asTold.length,
    draws: bands.draws,
  });
});
