/** Question 2: how did it break? What is said of it, which kind of model speaks for it, and what the frame finds when it does. */
import type { Mechanism } from '../content/schema';
import type { ActivityId } from '../ids';
import { find, givenOf } from './build';
import { factFindings, manyFindings } from './claims';
import { factorTexts } from './factor-texts';
import { type Assumed, type BoneRun, howUnknown, mechanismUsual, modelOf } from './how-computes';
import { loadFindings } from './how-loads';
import { rayOf } from './loads';
import { ASSUMED_MASS_KG } from './mass';
import type { ClaimTag } from './messages';
import { repeatedFinding } from './repeated';
import { REPEATED_LOAD } from './repeated-load';
import { tagOf } from './resolve';
import type { Situation } from './situation';
import { textFinding } from './texts';
import type { BandsAsked, Finding } from './types';

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

/** What the frame is run with for this case; null when the way of breaking, or the bone, is none that it can speak for. */
export const loadRunOf = (s: Situation): (BoneRun & Assumed) | null => {
  const cause = causeOf(s);
  const bone = s.known.bone?.value;
  if (
    s.ofJoint ||
    bone === undefined ||
    rayOf(bone) === null ||
    cause === null ||
    cause.mechanism.model !== 'beam stress'
  )
    return null;
  const { activity, massKg } = s.known;
  const stated: ActivityId | undefined = s.whatIf.activity ?? activity?.value;
  // What the way of breaking usually goes with is an assumption of ours.
  const named = stated ?? cause.mechanism.activity ?? undefined;
  const chosen = named ?? s.context.content.activities[0]?.id;
  if (chosen === undefined) return null;
  const task = s.context.content.activities.find(({ id }) => id === chosen);
  return {
    foot: s.parameters,
    bone,
    activity: chosen,
    massKg: massKg?.value ?? ASSUMED_MASS_KG,
    carriedKg: s.whatIf.carriedKg ?? 0,
    soleBending: s.whatIf.soleBending ?? 0,
    // Only where a source says what speed does to the task: what is tried in running says nothing of walking.
    speed: task?.speed === undefined ? null : (s.whatIf.speed ?? null),
    tiltDeg: s.whatIf.tiltDeg ?? null,
    massAssumed: massKg === null,
    activityAssumed: stated === undefined,
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

export const howFindings = (s: Situation, bands: BandsAsked): readonly Finding[] => {
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
  const run = loadRunOf(s);
  if (run !== null) found.push(...loadFindings(s, run, bands));
  if (cause?.mechanism.id === REPEATED_LOAD) found.push(repeatedFinding(s));
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
  return [...found, ...factorTexts(s, 'how')];
};
