/**
 * The explanation as it leaves the project: what may be told and nothing else. The app draws from newtons and megapascals of one run;
 * here stress is a multiple, force is in body weights and only where it may have a size, and what the pads carry is told of all together.
 */
import { type Contributor, LEAST_REFERENCE_MPA, type LoadBands, type PartBand, type StationBand } from '../mechanics';
import type { Spread } from '../mechanics/foot/types';
import type { Peak, Station, StationTable } from '../mechanics/types';
import { sizeMayBeTold, tooManyBeyond } from './how-computes';
import type { ExplainedLoads, Explanation } from './types';

type StationForces =
  | 'axialN'
  | 'shearDorsalN'
  | 'shearLateralN'
  | 'bendingUpDownNmm'
  | 'bendingSidewaysNmm'
  | 'torsionNmm';
export interface ToldStation
  extends Omit<Station, StationForces | 'tensionMPa' | 'compressionMPa' | 'field' | 'section'> {
  /** Times `stressOf`; null outside beam theory, and where the bone has no measure. */
  readonly tension: number | null;
  readonly compression: number | null;
}
interface ToldPeak extends Omit<Peak, 'mpa'> {
  readonly times: number | null;
}
export interface ToldTable extends Omit<StationTable, 'stations' | 'peakTension' | 'peakCompression'> {
  readonly stations: readonly ToldStation[];
  readonly peakTension: ToldPeak;
  readonly peakCompression: ToldPeak;
}

/** In body weights; null where forces have no size. */
type BodyWeights = Spread | null;
interface ToldBands
  extends Omit<
    LoadBands,
    'ratio' | 'fascia' | 'achilles' | 'tibia' | 'legAlong' | 'legFrontal' | 'parts' | 'stations'
  > {
  /** Null where only more and less may be told. */
  readonly ratio: Spread | null;
  readonly fascia: BodyWeights;
  readonly achilles: BodyWeights;
  readonly tibia: BodyWeights;
  readonly legAlong: BodyWeights;
  readonly parts: readonly (Omit<PartBand, 'forceN'> & { readonly bodyWeights: BodyWeights })[];
  readonly stations: readonly ({ readonly sMm: number } & StationBand['ofMost'])[];
}
/** A change's sizes are null where it may have none. */
interface ToldContributor extends Omit<Contributor, 'ratio' | 'shift'> {
  readonly ratio: Spread | null;
  readonly shift: Omit<Contributor['shift'], 'mm'> & { readonly mm: Spread | null };
}

export interface ToldLoads extends Omit<ExplainedLoads, 'told' | 'referenceMPa' | 'bands' | 'contributors'> {
  /** What a stress is told as a multiple of: the bone's largest pull in the reference task, or in this run itself. */
  readonly stressOf: 'reference' | 'itself';
  readonly flags: ExplainedLoads['told']['flags'];
  readonly sidewaysShare: number;
  readonly tables: readonly ToldTable[];
  readonly bands: ToldBands | null;
  readonly contributors: readonly ToldContributor[] | null;
}

export interface ToldExplanation extends Omit<Explanation, 'stations' | 'loads'> {
  readonly stations: ToldTable | null;
  readonly loads: ToldLoads | null;
}

const tableAsTold = (table: StationTable, referenceMPa: number): ToldTable => {
  const times = (mpa: number): number | null => (referenceMPa < LEAST_REFERENCE_MPA ? null : mpa / referenceMPa);
  const peak = ({ mpa, ...at }: Peak): ToldPeak => ({ ...at, times: times(mpa) });
  return {
    bone: table.bone,
    heldMm: table.heldMm,
    peakTension: peak(table.peakTension),
    peakCompression: peak(table.peakCompression),
    stations: table.stations.map(
      ({ sMm, tensionMPa, tensionAtRad, compressionMPa, compressionAtRad, outsideBeamTheory }) => ({
        sMm,
        tension: outsideBeamTheory ? null : times(tensionMPa),
        tensionAtRad,
        compression: outsideBeamTheory ? null : times(compressionMPa),
        compressionAtRad,
        outsideBeamTheory,
      }),
    ),
  };
};

const bandsAsTold = (bands: LoadBands, { told, ranksOnly, forcesRank }: ExplainedLoads): ToldBands => {
  const { ratio, fascia, achilles, tibia, legAlong, legFrontal: _moment, parts, stations, ...rest } = bands;
  const weights = (force: Spread): BodyWeights =>
    forcesRank
      ? null
      : { told: force.told / told.weightN, low: force.low / told.weightN, high: force.high / told.weightN };
  return {
    ...rest,
    ratio: ranksOnly ? null : ratio,
    fascia: weights(fascia),
    achilles: weights(achilles),
    tibia: weights(tibia),
    legAlong: weights(legAlong),
    parts: parts.map(({ forceN, ...part }) => ({ ...part, bodyWeights: weights(forceN) })),
    stations: stations.map(({ sMm, ofMost, ofReference }) => ({ sMm, ...(ranksOnly ? ofMost : ofReference) })),
  };
};

const contributorAsTold = (contributor: Contributor, ranksOnly: boolean): ToldContributor => {
  const { ratio, shift, ...rest } = contributor;
  const { mm, ...ways } = shift;
  const placed = !ranksOnly && !contributor.ranks && !tooManyBeyond(contributor);
  return {
    ...rest,
    ratio: !ranksOnly && sizeMayBeTold(contributor) ? ratio : null,
    shift: { ...ways, mm: placed ? mm : null },
  };
};

const loadsAsTold = (loads: ExplainedLoads): ToldLoads => {
  const { told, referenceMPa, bands, contributors, ...rest } = loads;
  return {
    ...rest,
    stressOf: loads.ranksOnly ? 'itself' : 'reference',
    flags: told.flags,
    sidewaysShare: told.sidewaysShare,
    tables: told.tables.map((table, i) => tableAsTold(table, referenceMPa[i] ?? 0)),
    bands: bands === null ? null : bandsAsTold(bands, loads),
    contributors: contributors?.map((each) => contributorAsTold(each, loads.ranksOnly)) ?? null,
  };
};

export const asTold = ({ stations, loads, ...rest }: Explanation): ToldExplanation => {
  const told = loads === null ? null : loadsAsTold(loads);
  return { ...rest, stations: told?.tables.find(({ bone }) => bone === stations?.bone) ?? null, loads: told };
};
