/** What the frame of the foot says of this case, as findings: told values at once, bands and contributors when they are computed. */
import type { Evidence, LoadFactor } from '../content/schema';
import { pullAgainstBreaks, pullPending } from './against-breaks';
import { find } from './build';
import type { ModelLimit } from './confidence';
import type { Assumed, BoneRun } from './how-computes';
import * as computes from './how-computes';
import * as hangs from './how-hangs';
import { activityIn, evidenceOfLoads, toldLoads } from './loads';
import { tagOf } from './resolve';
import type { Situation } from './situation';
import { hasStationNumbers, loadStation } from './station-computes';
import { textFinding } from './texts';
import type { BandsAsked, Finding } from './types';

/** A speed counts only where the run has one. */
const WHAT_IFS = ['massKg', 'activity', 'carriedKg', 'soleBending', 'tiltDeg'] as const;

interface Shared {
  readonly depth: 'more';
  readonly shows: readonly [{ readonly kind: 'stations'; readonly bone: BoneRun['bone'] }];
  readonly models: readonly ModelLimit[];
  readonly whatIf: boolean;
  readonly evidence: readonly Evidence[];
}

/** Where the plateau lies against where such breaks are found; with what a beam leaves out when the two do not meet. */
const againstBreaks = (s: Situation, run: BoneRun, shared: Shared, bands: BandsAsked): readonly Finding[] => {
  const { context, injury } = s;
  if (injury === null) return [];
  const whatIf = shared.whatIf || injury.whatIf;
  const against = find(context, 'how', {
    ...shared,
    id: 'pullAgainstBreaks',
    compute: bands === 'none' ? pullPending : pullAgainstBreaks,
    inputs: { ...run, injury: injury.value },
    evidence: [...shared.evidence, ...(s.injuryRecord === null ? [] : [s.injuryRecord.occursAt.evidence])],
    claims: [tagOf(injury)],
    whatIf,
  });
  if (against.message.id !== 'pullDisagrees' && against.message.id !== 'pullSilent') return [against];
  const region = against.message.args.occursRegion;
  return [
    against,
    find(context, 'how', {
      id: 'beamLeavesOut',
      depth: 'more',
      shows: [{ kind: 'region', bone: run.bone, region }],
      compute: computes.beamLeavesOut,
      inputs: { region },
      evidence: [{ source: null, mark: 'common practice' }],
      whatIf,
    }),
  ];
};

const publishedOf = (s: Situation, factor: LoadFactor | undefined, whatIf: boolean): readonly Finding[] =>
  (factor?.published ?? []).map((each, index) =>
    find(s.context, 'how', {
      id: `contributor.${factor?.id}.published.${index + 1}`,
      depth: 'more',
      compute: hangs.contributorPublished,
      inputs: { contributor: factor?.id as never, index },
      evidence: [each.evidence],
      readers: ['broadcast', 'study'],
      whatIf,
    }),
  );

const contributorFindings = (s: Situation, run: BoneRun, shared: Shared): readonly Finding[] =>
  hangs.contributorIds(s.context, run).flatMap((id) => [
    find(s.context, 'how', {
      ...shared,
      id: `contributor.${id}`,
      compute: hangs.contributor,
      inputs: { ...run, contributor: id },
    }),
    ...publishedOf(
      s,
      s.context.content.loadFactors.find((f) => f.id === id),
      shared.whatIf,
    ),
  ]);

/** Needs the ensemble. */
const bandFindings = (s: Situation, run: BoneRun, shared: Shared, all: boolean): readonly Finding[] => {
  const { context } = s;
  const strains = context.content.strains.map((record) => record.figure.evidence);
  return [
    find(context, 'how', { ...shared, id: 'loadRatio', compute: computes.loadRatio, inputs: run }),
    find(context, 'how', { ...shared, id: 'loadSide', compute: computes.loadSide, inputs: run }),
    find(context, 'how', { ...shared, id: 'loadMostOfFive', compute: computes.loadMostOfFive, inputs: run }),
    ...(computes.failingRatio(context, run.bone) === null
      ? []
      : [
          find(context, 'how', {
            ...shared,
            id: 'oneStep',
            compute: computes.oneStep,
            inputs: run,
            evidence: [...shared.evidence, ...strains],
          }),
        ]),
    ...(all ? contributorFindings(s, run, shared) : []),
    ...(computes.hasSensitivity(context, run)
      ? [find(context, 'how', { ...shared, id: 'loadSensitivity', compute: hangs.loadSensitivity, inputs: run })]
      : []),
    ...(hasStationNumbers(context, run)
      ? [
          find(context, 'how', {
            ...shared,
            id: 'loadStation',
            compute: loadStation,
            inputs: run,
            readers: ['broadcast', 'study'],
          }),
        ]
      : []),
    // Sizes: only where the run and enough of its draws are within what the theory may state.
    ...(computes.forcesRank(context, run)
      ? []
      : [find(context, 'how', { ...shared, id: 'loadForces', compute: computes.loadForces, inputs: run })]),
  ];
};

export const loadFindings = (s: Situation, given: BoneRun & Assumed, bands: BandsAsked): readonly Finding[] => {
  const { context } = s;
  const { massAssumed: _mass, activityAssumed: _activity, ...run } = given;
  const whatIf = s.shapeWhatIf || run.speed !== null || WHAT_IFS.some((name) => s.whatIf[name] !== undefined);
  const evidence = evidenceOfLoads(context.content, run);
  const told = toldLoads(context, run);
  const activity = { activity: run.activity };
  if ('problem' in told)
    return [
      find(context, 'how', {
        id: 'loadFails',
        depth: 'more',
        compute: computes.loadFails,
        inputs: run,
        models: ['frame'],
        whatIf,
        evidence,
      }),
    ];
  const shared: Shared = {
    depth: 'more',
    shows: [{ kind: 'stations', bone: run.bone }],
    models: ['frame', 'drawnFoot'],
    whatIf,
    evidence,
  };
  const mass = s.known.massKg;
  const claims = mass === null || mass.whatIf ? [] : [tagOf(mass)];
  const note = (id: string) => ({ id, depth: 'more', models: ['frame'], whatIf }) as const;
  return [
    find(context, 'how', {
      ...shared,
      id: 'loadPull',
      compute: computes.loadPull,
      inputs: { ...given, banded: bands !== 'none' },
      claims,
    }),
    ...againstBreaks(s, run, shared, bands),
    ...told.loads.flags.map((flag) =>
      find(context, 'how', {
        ...note(`loadFlagged.${flag}`),
        compute: computes.loadFlagged,
        inputs: { flag, ...activity },
      }),
    ),
    find(context, 'how', {
      ...shared,
      id: 'loadAlong',
      compute: computes.loadAlong,
      inputs: { ...run, banded: bands !== 'none' },
      readers: ['broadcast', 'study'],
    }),
    ...(bands !== 'none'
      ? bandFindings(s, run, shared, bands === 'all')
      : [find(context, 'how', { ...note('loadPending'), compute: computes.loadPending, inputs: {} })]),
    find(context, 'how', { ...shared, id: 'outsideBeam', compute: computes.outsideBeam, inputs: run }),
    ...textFinding(context, 'how', {
      id: 'activityText',
      at: { kind: 'activity', activity: run.activity },
      as: 'usual',
      whatIf: s.whatIf.activity !== undefined,
    }),
    find(context, 'how', { ...note('loadUnknown'), compute: computes.loadUnknown, inputs: activity }),
    ...(activityIn(context.content, run.activity).otherEdge === undefined
      ? []
      : [find(context, 'how', { ...note('otherEdge'), compute: computes.otherEdge, inputs: activity })]),
  ];
};
