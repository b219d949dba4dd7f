/** What question 2 computes: which model speaks, what the frame of the foot finds, and how far that can be trusted. */
import { type ActivityId, BONE_IDS, type BoneId, type InjuryId, idOf, type MechanismId, type RegionId } from '../ids';
import { type BeyondTheory, ENOUGH_AGREEMENT, type LoadBands, type LoadFlag, ranksOnly } from '../mechanics';
import type { Spread } from '../mechanics/foot/types';
import type { StationTable } from '../mechanics/types';
import type { Quantity, Unit } from '../units';
import { agreed, statedBy } from './agreed';
import { compute, message } from './build';
import { axisOn, type Context, zoneAtStation } from './context';
import type { BoneFace } from './load-messages';
import { activityIn, bandsFor, type LoadRun, REFERENCE_ACTIVITY, rayOf, referenceRun, toldLoads } from './loads';
import { tenth } from './place';
import { plateauAsTold, plateauInBands, type Stretch, stretchesOf } from './stretches';

export const howUnknown = compute('how.unknown', () => message('howUnknown', {}));
export const mechanismUsual = compute('how.usual', ({ content }, inputs: { readonly injury: InjuryId }) => {
  const injury = content.injuries.find((i) => i.id === inputs.injury);
  if (injury === undefined) throw new RangeError(`no injury ${inputs.injury}`);
  return message('mechanismUsual', { injury: inputs.injury, mechanisms: injury.mechanisms });
});
export const modelOf = compute('how.model', ({ content }, inputs: { readonly mechanism: MechanismId }) => {
  const mechanism = content.mechanisms.find((m) => m.id === inputs.mechanism);
  if (mechanism === undefined) throw new RangeError(`no mechanism ${inputs.mechanism}`);
  const { model } = mechanism;
  return model === 'beam stress'
    ? message('modelApplies', { mechanism: mechanism.id, model })
    : message('modelMissing', { mechanism: mechanism.id, model });
});

/** A run and the bone it is asked about. */
export interface BoneRun extends LoadRun {
  readonly bone: BoneId;
}

/** Throws RangeError when the frame finds no answer: the caller has asked before. */
export const tableOf = (context: Context, run: BoneRun): StationTable => {
  const told = toldLoads(context, run);
  const table = 'loads' in told ? told.loads.tables.find((t) => t.bone === run.bone) : undefined;
  if (table === undefined) throw new RangeError(`no stations for ${run.bone}`);
  return table;
};

/** Whether the told run is beyond what may be stated as a size. */
export const ranking = (context: Context, run: LoadRun): boolean => {
  return [run, referenceRun(run)].some((each) => {
    const told = toldLoads(context, each);
    return 'loads' in told && ranksOnly(told.loads.flags);
  });
};

export const bandsOf = (context: Context, run: BoneRun): LoadBands => {
  const ray = rayOf(run.bone);
  const bands = ray === null ? null : bandsFor(context, run, ray);
  if (bands === null) throw new RangeError(`no bands for ${run.bone}`);
  return bands;
};

/** A size is told only where the told run and enough of the draws may be stated as one. */
export const tooManyBeyond = ({ beyond }: Pick<BeyondTheory, 'beyond'>): boolean => beyond > 1 - ENOUGH_AGREEMENT;
/** A size of a change: within the theory, and not with a band that says more as well as less. */
export const sizeMayBeTold = (found: BeyondTheory & { readonly ratio: Spread }): boolean =>
  !found.ranks && !tooManyBeyond(found) && !(found.ratio.low < 1 && found.ratio.high > 1);
/** Forces of the task alone ask nothing of the reference. */
export const tooManyBeyondItself = ({ beyondItself }: Pick<LoadBands, 'beyondItself'>): boolean =>
  beyondItself > 1 - ENOUGH_AGREEMENT;
export const forcesRank = (context: Context, run: BoneRun): boolean => {
  const told = toldLoads(context, run);
  return 'problem' in told || ranksOnly(told.loads.flags) || tooManyBeyondItself(bandsOf(context, run));
};
export const rankingInBands = (context: Context, run: BoneRun): boolean =>
  ranking(context, run) || tooManyBeyond(bandsOf(context, run));

const FACES: readonly BoneFace[] = ['top', 'topOuter', 'outer', 'soleOuter', 'sole', 'soleInner', 'inner', 'topInner'];
/** Which side of the bone an angle points to: 0 up, a quarter turn outwards. */
export const faceOf = (rad: number): BoneFace => {
  const eighth = Math.round(rad / (Math.PI / 4));
  return FACES[((eighth % 8) + 8) % 8] ?? 'top';
};
const faceAt = ({ stations }: StationTable, sMm: number, angle: 'tensionAtRad' | 'compressionAtRad'): BoneFace =>
  faceOf(stations.reduce((a, b) => (Math.abs(b.sMm - sMm) < Math.abs(a.sMm - sMm) ? b : a))[angle]);

export const regionAt = (context: Context, run: BoneRun, sMm: number): RegionId | null =>
  zoneAtStation(context.footFor(run.foot), run.bone, sMm);

/** Of the bone in question: where beam theory speaks and where not, tip to head. */
export const beamStretches = (context: Context, run: BoneRun): readonly Stretch[] =>
  stretchesOf(tableOf(context, run).stations, axisOn(context.footFor(run.foot), run.bone).lengthMm);

export interface Assumed {
  readonly massAssumed: boolean;
  readonly activityAssumed: boolean;
}

export const loadPull = compute('how.loadPull', (context, inputs: BoneRun & Assumed & { readonly banded: boolean }) => {
  const table = tableOf(context, inputs);
  const { peakTension: pull, peakCompression: push } = table;
  const bands = inputs.banded ? bandsOf(context, inputs) : null;
  return message('loadPull', {
    activity: inputs.activity,
    activityAssumed: inputs.activityAssumed,
    mass: { value: inputs.massKg, unit: 'kg' },
    massAssumed: inputs.massAssumed,
    carried: { value: inputs.carriedKg, unit: 'kg' },
    pulledSide: faceAt(table, pull.sMm, 'tensionAtRad'),
    pressedSide: faceAt(table, push.sMm, 'compressionAtRad'),
    sideUnsure: bands !== null && !agreed(bands.direction.share).enough,
    pressedUnsure: bands !== null && !agreed(bands.pressed.share).enough,
    plateau: bands === null ? plateauAsTold(table) : plateauInBands(bands),
  });
});

/** Two figures: a ratio's third would pretend. */
export const two = (value: number): number => Number(value.toPrecision(2));
export const spread = ({ told, low, high }: Spread, unit: Unit, per = 1): Quantity => ({
  value: two(told / per),
  unit,
  lowHigh: [two(Math.min(low, told) / per), two(Math.max(high, told) / per)],
});
/** A ratio near one, told as a change in percent: whole percents. */
export const hundredths = ({ told, low, high }: Spread): Quantity => {
  const round = (value: number): number => Math.round(100 * value) / 100;
  return { value: round(told), unit: 'times', lowHigh: [round(Math.min(low, told)), round(Math.max(high, told))] };
};

/** The reference task held against itself: nothing is more or less, and nothing matters for it. */
const isReference = ({ sensitivity }: LoadBands): boolean => sensitivity.length === 0;
export const hasSensitivity = (context: Context, run: BoneRun): boolean => !isReference(bandsOf(context, run));

export const loadRatio = compute('how.loadRatio', (context, inputs: BoneRun) => {
  const bands = bandsOf(context, inputs);
  const more = statedBy(bands.more);
  return message('loadRatio', {
    bone: inputs.bone,
    activity: inputs.activity,
    reference: REFERENCE_ACTIVITY,
    ratio: spread(bands.ratio, 'times'),
    // A size of a told run that the draws contradict is none.
    ranking: rankingInBands(context, inputs) || more.agreed.contrary === true,
    same: isReference(bands),
    more: more.holds,
    agreed: more.agreed,
    draws: bands.draws,
    unsolved: bands.unsolved,
  });
});
export const loadSide = compute('how.loadSide', (context, inputs: BoneRun) => {
  const { direction } = bandsOf(context, inputs);
  return message('loadSide', { side: faceOf(direction.rad), agreed: agreed(direction.share) });
});
export const loadMostOfFive = compute('how.loadMostOfFive', (context, inputs: BoneRun) => {
  const { holds, agreed: sure } = statedBy(bandsOf(context, inputs).mostOfFive);
  return message('loadMostOfFive', { bone: inputs.bone, most: holds, agreed: sure });
});

export const beamLeavesOut = compute('how.beamLeavesOut', (_, inputs: { readonly region: RegionId }) =>
  message('beamLeavesOut', inputs),
);

export const outsideBeam = compute('how.outsideBeam', (context, inputs: BoneRun) => {
  const stretches = beamStretches(context, inputs).filter(({ outside }) => outside);
  const mm = (value: number): Quantity => ({ value: tenth(value), unit: 'mm' });
  return message('outsideBeam', {
    stretches: stretches.map(({ fromMm, toMm }) => ({ from: mm(fromMm), to: mm(toMm) })),
  });
});

const strainIn = (context: Context, id: string) => context.content.strains.find((s) => s.id === id)?.figure ?? null;

/** The ratio at which hard bone fails in one pull, from the strain measured in the bone when walking. Null where none was measured. */
export const failingRatio = (context: Context, bone: BoneId): Quantity | null => {
  const [walking, yields] = [strainIn(context, bone), strainIn(context, 'cortexYield')];
  if (walking === null || yields === null) return null;
  return {
    value: two(yields.value / walking.value),
    unit: 'times',
    lowHigh: [
      two((yields.low ?? yields.value) / (walking.high ?? walking.value)),
      two((yields.high ?? yields.value) / (walking.low ?? walking.value)),
    ],
  };
};

export const oneStep = compute('how.oneStep', (context, inputs: BoneRun) => {
  const factor = failingRatio(context, inputs.bone);
  if (factor === null) throw new RangeError(`no strain was measured in ${inputs.bone}`);
  const ratio = spread(bandsOf(context, inputs).ratio, 'times');
  const [low, high] = ratio.lowHigh ?? [ratio.value, ratio.value];
  const [least, most] = factor.lowHigh ?? [factor.value, factor.value];
  return message('oneStep', {
    activity: inputs.activity,
    reference: REFERENCE_ACTIVITY,
    ratio,
    factor,
    verdict: rankingInBands(context, inputs) ? 'ranking' : high < least ? 'below' : low > most ? 'above' : 'within',
  });
});

const N_MM_PER_N_M = 1000;

export const loadForces = compute('how.loadForces', (context, inputs: BoneRun) => {
  const { fascia, achilles, tibia } = bandsOf(context, inputs);
  const told = toldLoads(context, inputs);
  if ('problem' in told) throw new RangeError(told.problem.kind);
  const { weightN } = told.loads;
  return message('loadForces', {
    activity: inputs.activity,
    fascia: spread(fascia, 'body weight', weightN),
    achilles: spread(achilles, 'body weight', weightN),
    tibia: spread(tibia, 'body weight', weightN),
  });
});

const bare = ({ value, unit, lowHigh: [a, b] = [value, value] }: Quantity): Quantity => {
  const [one, other] = [Math.abs(a), Math.abs(b)];
  return { value: Math.abs(value), unit, lowHigh: [Math.min(one, other), Math.max(one, other)] };
};

/** The ratio goes in with the task and is told of every run; what comes out at the leg only where it may have a size. */
export const loadAlong = compute('how.loadAlong', (context, inputs: BoneRun & { readonly banded: boolean }) => {
  const told = toldLoads(context, inputs);
  if ('problem' in told) throw new RangeError(told.problem.kind);
  const { weightN, sidewaysShare } = told.loads;
  const bands = inputs.banded ? bandsOf(context, inputs) : null;
  const moment = bands === null ? null : spread(bands.legFrontal, 'N m', N_MM_PER_N_M);
  const [low, high] = moment?.lowHigh ?? [0, 0];
  const from = low > 0 ? 'turningOut' : high < 0 ? 'turningIn' : 'either';
  return message('loadAlong', {
    activity: inputs.activity,
    ratio: bands === null ? { value: two(sidewaysShare), unit: 'share' } : spread(bands.sideways, 'share'),
    leg:
      bands === null || moment === null || forcesRank(context, inputs)
        ? null
        : {
            along: spread(bands.legAlong, 'body weight', weightN),
            moment: from === 'either' ? moment : bare(moment),
            from,
          },
    banded: inputs.banded,
  });
});

export const loadFlagged = compute(
  'how.loadFlagged',
  (_, inputs: { readonly flag: LoadFlag; readonly activity: ActivityId }) => message('loadFlagged', inputs),
);
export const loadUnknown = compute('how.loadUnknown', (_, inputs: { readonly activity: ActivityId }) =>
  message('loadUnknown', inputs),
);
export const otherEdge = compute('how.otherEdge', ({ content }, inputs: { readonly activity: ActivityId }) => {
  const other = activityIn(content, inputs.activity).otherEdge;
  if (other === undefined) throw new RangeError(`${inputs.activity} has no other edge`);
  return message('otherEdge', { activity: inputs.activity, other: idOf<ActivityId>(other) });
});
export const loadFails = compute('how.loadFails', (context, inputs: LoadRun) => {
  const told = toldLoads(context, inputs);
  if (!('problem' in told)) throw new RangeError('the frame finds an answer');
  const { problem } = told;
  const { kind } = problem;
  const place = 'where' in problem ? problem.where : null;
  return message('loadFails', {
    problem: kind === 'centreOfPressureOutside' ? 'outside' : kind,
    at: kind === 'badFigure' ? problem.figure : (BONE_IDS.find((bone) => bone === place) ?? null),
    activity: inputs.activity,
  });
});
export const loadPending = compute('how.loadPending', () => message('loadPending', {}));
