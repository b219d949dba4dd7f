/** Question 2: how did it break? What is said of it, which kind of model speaks for it, and what ours finds when it does. */
import type { Mechanism } from '../content/schema';
import type { ActivityId, InjuryId, MechanismId, RegionId } from '../ids';
import { type BeamRun, beamOf, evidenceOfBeam, faceAt } from './beam';
import { compute, find, givenOf, message } from './build';
import { factFindings, manyFindings } from './claims';
import { ZONED_BONE, zoneAtStation } from './context';
import type { ClaimTag } from './messages';
import { tenth } from './place';
import { tagOf } from './resolve';
import type { Situation } from './situation';
import { textFinding } from './texts';
import type { Finding } from './types';

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

interface Assumed {
  readonly massAssumed: boolean;
  readonly activityAssumed: boolean;
}

/** Tenths for stresses below 10 MPa would pretend; whole MPa. */
const whole = (value: number): number => Math.round(value);

export const beamPeaks = compute('how.beamPeaks', (context, inputs: BeamRun & Assumed) => {
  const { foot, table } = beamOf(context, inputs);
  const { peakTension: pull, peakCompression: push } = table;
  const band = ([a, b]: readonly [number, number]): readonly [number, number] => [
    whole(Math.min(Math.abs(a), Math.abs(b))),
    whole(Math.max(Math.abs(a), Math.abs(b))),
  ];
  return message('beamPeaks', {
    activity: inputs.activity,
    activityAssumed: inputs.activityAssumed,
    mass: { value: inputs.massKg, unit: 'kg' },
    massAssumed: inputs.massAssumed,
    tension: { value: whole(pull.mpa), unit: 'MPa', lowHigh: band(pull.lowHighMPa) },
    tensionFromTip: { value: tenth(pull.sMm), unit: 'mm' },
    tensionRegion: zoneAtStation(foot, pull.sMm),
    tensionSide: faceAt(table, pull.sMm, 'tensionAtRad'),
    compression: { value: whole(Math.abs(push.mpa)), unit: 'MPa', lowHigh: band(push.lowHighMPa) },
    compressionFromTip: { value: tenth(push.sMm), unit: 'mm' },
    compressionRegion: zoneAtStation(foot, push.sMm),
    compressionSide: faceAt(table, push.sMm, 'compressionAtRad'),
  });
});

/** Where the model's largest pull falls, against where breaks of this class are found. Computed, either way. */
export const beamAgainstBreaks = compute(
  'how.beamAgainstBreaks',
  (context, inputs: BeamRun & { readonly injury: InjuryId }) => {
    const injury = context.content.injuries.find((i) => i.id === inputs.injury);
    if (injury === undefined) throw new RangeError(`no injury ${inputs.injury}`);
    const { foot, table } = beamOf(context, inputs);
    const peakRegion = zoneAtStation(foot, table.peakTension.sMm);
    const occursRegion = injury.occursAt.region;
    return message(peakRegion === occursRegion ? 'beamAgrees' : 'beamDisagrees', {
      peakAt: { value: tenth(table.peakTension.sMm), unit: 'mm' },
      peakRegion,
      occursRegion,
      injury: injury.id,
      edge: table.peakTension.atEdgeOfTheory,
    });
  },
);
export const beamLeavesOut = compute('how.beamLeavesOut', (_, inputs: { readonly region: RegionId }) =>
  message('beamLeavesOut', inputs),
);

export const outsideBeam = compute('how.outsideBeam', (context, inputs: BeamRun) => {
  const stretches: { from: { value: number; unit: 'mm' }; to: { value: number; unit: 'mm' } }[] = [];
  let open = false;
  for (const station of beamOf(context, inputs).table.stations) {
    const at = { value: tenth(station.sMm), unit: 'mm' } as const;
    const last = stretches.at(-1);
    if (station.outsideBeamTheory && open && last !== undefined) last.to = at;
    else if (station.outsideBeamTheory) stretches.push({ from: at, to: at });
    open = station.outsideBeamTheory;
  }
  return message('outsideBeam', { stretches });
});

export const massRaises = compute('how.massRaises', (context, inputs: BeamRun & { readonly moreKg: number }) => {
  const now = beamOf(context, inputs).table.peakTension.mpa;
  const heavier = beamOf(context, { ...inputs, massKg: inputs.massKg + inputs.moreKg }).table.peakTension.mpa;
  return message('massRaises', {
    mass: { value: inputs.massKg, unit: 'kg' },
    more: { value: inputs.moreKg, unit: 'kg' },
    rise: { value: Math.round((heavier / now - 1) * 100) / 100, unit: 'share' },
  });
});

/** Body mass taken when none is stated; always said to be assumed. Common practice for a reference adult. */
const ASSUMED_MASS_KG = 70;
/** The step by which "what raises the load" is shown. */
const MASS_STEP_KG = 10;

interface Cause {
  readonly mechanism: Mechanism;
  /** As stated; null when it is only the usual one of the class. */
  readonly claim: ClaimTag | null;
}

/** The way of breaking to explain: as stated, else the first usual one of the class. */
const causeOf = (s: Situation): Cause | null => {
  const { content } = s.context;
  const stated = s.known.mechanism;
  const id = stated?.value ?? s.injuryRecord?.mechanisms[0];
  const mechanism = content.mechanisms.find((m) => m.id === id);
  return mechanism === undefined ? null : { mechanism, claim: stated === null ? null : tagOf(stated) };
};

/** Inputs of the beam for this case; null when the way of breaking is none that a beam can speak for. */
export const beamRunOf = (s: Situation): (BeamRun & Assumed) | null => {
  const cause = causeOf(s);
  if (s.known.bone?.value !== ZONED_BONE || cause === null || cause.mechanism.model !== 'beam stress') return null;
  const { activity, massKg } = s.known;
  const named: ActivityId | undefined = s.whatIf.activity ?? cause.mechanism.activity ?? activity?.value;
  const chosen = named ?? s.context.content.activities[0]?.id;
  if (chosen === undefined) return null;
  return {
    foot: s.parameters,
    activity: chosen,
    massKg: massKg?.value ?? ASSUMED_MASS_KG,
    massAssumed: massKg === null,
    activityAssumed: named === undefined,
    ...(s.whatIf.beamHeldToShare === undefined ? {} : { heldToShare: s.whatIf.beamHeldToShare }),
  };
};

const headline = (s: Situation, cause: Cause | null): readonly Finding[] => {
  const { context, facts } = s;
  if (facts.mechanism.state === 'stated')
    return factFindings(context, 'how', 'mechanism', facts, { depth: 'sentence' });
  const rest = factFindings(context, 'how', 'mechanism', facts, { unstatedDepth: 'claim' });
  if (s.injury === null || cause === null)
    return [
      find(context, 'how', { id: 'headline', depth: 'sentence', compute: howUnknown, inputs: {}, unsure: 'notStated' }),
      ...rest,
    ];
  return [
    find(context, 'how', {
      id: 'headline',
      depth: 'sentence',
      compute: mechanismUsual,
      inputs: { injury: s.injury.value },
      evidence: context.content.mechanisms
        .filter((m) => s.injuryRecord?.mechanisms.includes(m.id))
        .map((m) => m.evidence),
      claims: [tagOf(s.injury)],
      whatIf: s.injury.whatIf,
    }),
    ...rest,
  ];
};

const beamFindings = (s: Situation): readonly Finding[] => {
  const run = beamRunOf(s);
  if (run === null) return [];
  const { context } = s;
  const { massAssumed: _mass, activityAssumed: _activity, ...beam } = run;
  const whatIf =
    s.shapeWhatIf ||
    s.whatIf.massKg !== undefined ||
    s.whatIf.activity !== undefined ||
    s.whatIf.beamHeldToShare !== undefined;
  const mass = s.known.massKg;
  const shows = [{ kind: 'stations', bone: ZONED_BONE }] as const;
  const evidence = evidenceOfBeam(context.content, run.activity);
  const shared = { depth: 'more', shows, models: ['beam', 'drawnFoot'], whatIf, evidence } as const;
  const claims = mass === null || mass.whatIf ? [] : [tagOf(mass)];
  const found: Finding[] = [
    find(context, 'how', { ...shared, id: 'beamPeaks', compute: beamPeaks, inputs: run, claims }),
  ];
  if (s.injury !== null) {
    const against = find(context, 'how', {
      ...shared,
      id: 'beamAgainstBreaks',
      compute: beamAgainstBreaks,
      inputs: { ...beam, injury: s.injury.value },
      evidence: [...evidence, ...(s.injuryRecord === null ? [] : [s.injuryRecord.occursAt.evidence])],
      claims: [tagOf(s.injury)],
      whatIf: whatIf || s.injury.whatIf,
    });
    found.push(against);
    if (against.message.id === 'beamDisagrees')
      found.push(
        find(context, 'how', {
          id: 'beamLeavesOut',
          depth: 'more',
          shows: [{ kind: 'region', bone: ZONED_BONE, region: against.message.args.occursRegion }],
          compute: beamLeavesOut,
          inputs: { region: against.message.args.occursRegion },
          evidence: [{ source: null, mark: 'common practice' }],
          whatIf: whatIf || s.injury.whatIf,
        }),
      );
  }
  found.push(
    find(context, 'how', { ...shared, id: 'outsideBeam', compute: outsideBeam, inputs: beam }),
    find(context, 'how', {
      ...shared,
      id: 'massRaises',
      compute: massRaises,
      inputs: { ...beam, moreKg: MASS_STEP_KG },
      claims,
    }),
    ...textFinding(context, 'how', {
      id: 'activityText',
      at: { kind: 'activity', activity: run.activity },
      as: 'usual',
      whatIf: s.whatIf.activity !== undefined,
    }),
  );
  return found;
};

export const howFindings = (s: Situation): readonly Finding[] => {
  const { context, facts } = s;
  const cause = causeOf(s);
  const claims = cause?.claim == null ? [] : [cause.claim];
  const found: Finding[] = [...headline(s, cause)];
  found.push(...factFindings(context, 'how', 'onset', facts, { unstatedDepth: 'claim' }));
  if (cause !== null)
    found.push(
      ...textFinding(context, 'how', {
        id: 'mechanismText',
        at: { kind: 'mechanism', mechanism: cause.mechanism.id },
        as: cause.claim === null ? 'usual' : givenOf(cause.claim),
        claims,
        whatIf: s.injury?.whatIf ?? false,
      }),
      find(context, 'how', {
        id: 'model',
        depth: 'more',
        compute: modelOf,
        inputs: { mechanism: cause.mechanism.id },
        evidence: [cause.mechanism.evidence],
        claims,
        whatIf: s.injury?.whatIf ?? false,
      }),
    );
  found.push(...beamFindings(s));
  for (const subject of ['activity', 'level', 'massKg', 'heightCm', 'footShape', 'ageBand'] as const)
    found.push(...factFindings(context, 'how', subject, facts, { silent: true, depth: 'more' }));
  found.push(...manyFindings(context, 'how', facts.riskFactors, 'more'));
  found.push(
    ...manyFindings(
      context,
      'how',
      facts.ruledOut.filter((c) => c.subject === 'riskFactor'),
      'more',
    ),
  );
  const named = new Set(facts.riskFactors.map((c) => c.value));
  const factors = [...named, ...(s.injuryRecord?.factors ?? []).filter((f) => !named.has(f))];
  factors.forEach((factor, i) => {
    found.push(...textFinding(context, 'how', { id: `factor.${i + 1}`, at: { kind: 'factor', factor } }));
  });
  return found;
};
