/** Question 4: what each support and a screw does to the load on this bone. Ensembles only when asked for. */

import type { BoneId } from '../ids';
import { CASE_FIGURES, SUPPORTS, type SupportId } from '../mechanics';
import { find } from './build';
import { activityIn, REFERENCE_ACTIVITY, rayOf } from './loads';
import { ASSUMED_MASS_KG } from './mass';
import type { Situation } from './situation';
import * as computes from './support-computes';
import { FLAT_ACTIVITY, fixationIn, type SupportRun, supportsFor } from './support-loads';
import type { Finding, Shown } from './types';

const runOf = (s: Situation): SupportRun | null => {
  const bone = s.known.bone?.value;
  if (bone === undefined || rayOf(bone) === null) return null;
  return { foot: s.parameters, bone, massKg: s.known.massKg?.value ?? ASSUMED_MASS_KG };
};

const sharedOf = (s: Situation) => {
  const { content } = s.context;
  return {
    depth: 'more',
    models: ['frame', 'drawnFoot'],
    whatIf: s.shapeWhatIf || s.whatIf.massKg !== undefined,
    evidence: [
      ...content.frame.map((record) => record.figure.evidence),
      ...[REFERENCE_ACTIVITY, FLAT_ACTIVITY].flatMap((id) => {
        const { figures } = activityIn(content, id);
        return CASE_FIGURES.map((name) => figures[name].evidence);
      }),
    ],
  } as const;
};
type Shared = ReturnType<typeof sharedOf>;

const publishedOf = (s: Situation, support: SupportId): readonly Finding[] =>
  (s.context.content.loadFactors.find((f) => f.id === support)?.published ?? []).map((each, index) =>
    find(s.context, 'options', {
      id: `support.${support}.published.${index + 1}`,
      depth: 'more',
      compute: computes.supportPublished,
      inputs: { support, index },
      evidence: [each.evidence],
      readers: ['broadcast', 'study'],
    }),
  );

const supportFindings = (s: Situation, run: SupportRun, shared: Shared): readonly Finding[] => {
  const found = supportsFor(s.context, run);
  const one = (support: SupportId): readonly Finding[] => [
    find(s.context, 'options', {
      ...shared,
      id: `support.${support}`,
      compute: computes.support,
      inputs: { ...run, support },
    }),
    ...(support === 'boot'
      ? [find(s.context, 'options', { ...shared, id: 'supportStandIn', compute: computes.supportStandIn, inputs: {} })]
      : []),
    ...publishedOf(s, support),
  ];
  return SUPPORTS.filter((id) => found.some((f) => f.id === id)).flatMap(one);
};

/** A screw is an option of this class, or was put in. */
const screwInQuestion = (s: Situation): boolean => {
  const operative = new Set(s.context.content.options.filter((o) => o.kind === 'operative').map((o) => o.id));
  return (
    (s.injuryRecord?.options ?? []).some((id) => operative.has(id)) ||
    s.facts.treatments.some((claim) => operative.has(claim.value.option))
  );
};

const notModelled = ({ context }: Situation, bone: BoneId): readonly Finding[] => [
  find(context, 'options', {
    id: 'screwNotModelled',
    depth: 'more',
    compute: computes.screwNotModelled,
    inputs: { bone },
  }),
];

const screwFindings = (s: Situation, run: SupportRun, shared: Shared, bands: boolean): readonly Finding[] => {
  const { context, breakAt } = s;
  const fixation = fixationIn(context, run.bone);
  const { bone, foot } = run;
  if (fixation === null) return notModelled(s, bone);
  if (!bands) return [];
  const figures = Object.values(fixation).flatMap((f) =>
    typeof f === 'object' && 'evidence' in f ? [f.evidence] : [],
  );
  const metals = fixation.materials.flatMap((m) => [m.young.evidence, m.yields.evidence]);
  const shows: readonly Shown[] = [{ kind: 'bone', bone }];
  const length = find(context, 'options', {
    ...shared,
    id: 'screwLength',
    shows,
    models: ['drawnFoot'],
    compute: computes.screwLength,
    inputs: { bone, foot },
    evidence: [fixation.diameter.evidence, fixation.advisedLength.evidence, fixation.advisedShare.evidence],
  });
  if (breakAt === null || breakAt.bone !== bone) return [length];
  const at = { ...run, sMm: breakAt.sMm };
  if (!computes.screwAnswers(context, at)) return [length];
  const inBone = {
    ...shared,
    shows,
    inputs: at,
    claims: breakAt.whatIf ? [] : [s.breakTag],
    whatIf: shared.whatIf || breakAt.whatIf,
    evidence: [...shared.evidence, ...figures, ...metals],
  };
  return [
    find(context, 'options', { ...inBone, id: 'screwShare', compute: computes.screwShare }),
    find(context, 'options', { ...inBone, id: 'screwBridge', compute: computes.screwBridge }),
    length,
  ];
};

/** Of a bone that the frame does not know, and of a joint that came apart, only that no operation is modelled. */
export const supportsAndScrews = (s: Situation, bands: boolean): readonly Finding[] => {
  const run = s.ofJoint ? null : runOf(s);
  const bone = s.known.bone?.value;
  if (run === null) return bone !== undefined && screwInQuestion(s) ? notModelled(s, bone) : [];
  const shared = sharedOf(s);
  return [
    ...(bands
      ? supportFindings(s, run, shared)
      : [
          find(s.context, 'options', {
            id: 'supportPending',
            depth: 'more',
            compute: computes.supportPending,
            inputs: {},
            models: ['frame'],
          }),
        ]),
    ...(screwInQuestion(s) ? screwFindings(s, run, shared, bands) : []),
  ];
};
