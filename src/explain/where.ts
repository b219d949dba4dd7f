/** Question 1: where is it? Bone and neighbours, zone and its border, the break as drawn, side, class and its name. */
import type { BoneId, InjuryId, RegionId } from '../ids';
import { find, givenOf } from './build';
import { factFindings, manyFindings } from './claims';
import { measuredIn, toldClassesOf } from './classes';
import { type Known, tagOf } from './resolve';
import { drawnSide } from './side';
import type { Situation } from './situation';
import { apartFindings } from './stands-apart';
import { textFinding } from './texts';
import type { Finding, Shown } from './types';
import { unfitMeasureFindings, unfitMeasures } from './unfit-measures';
import { codeFindings } from './where-codes';
import {
  attachedHere,
  boneClash,
  boneHurt,
  breakDrawn,
  brokenHere,
  classFits,
  classOpen,
  computedClass,
  jointHurt,
  neighbours,
  nothingLocated,
  placeAgainstClass,
  sideDefault,
  zoneBorder,
} from './where-computes';
import { classClashes, disputedMeasures, gapFindings, measureClashes, throughFindings } from './where-gap';

/** The line of the break, where one is drawn. */
const brokenShown = ({ breakAt }: Situation): readonly Shown[] => (breakAt === null ? [] : [{ kind: 'break' }]);

export const whereFindings = (s: Situation): readonly Finding[] => {
  const { context, facts } = s;
  const found: Finding[] = [];
  const shape = s.shapeWhatIf;
  const bone = s.known.bone;
  const place = s.known.place;
  const region = s.region;

  const { clash } = s.known;
  if (clash !== null) {
    found.push(
      find(context, 'where', {
        id: 'headline',
        depth: 'sentence',
        compute: boneClash,
        inputs: { stated: clash.stated, implied: clash.implied },
        claims: clash.claims,
        unsure: 'contradiction',
      }),
    );
  } else if (bone === null) {
    const disagree = [facts.bone, facts.place, facts.injury].some((fact) => fact.state === 'contradiction');
    const because = disagree ? 'contradiction' : 'notStated';
    found.push(
      find(context, 'where', {
        id: 'headline',
        depth: 'sentence',
        compute: nothingLocated,
        inputs: { disputed: disagree },
        unsure: because,
      }),
    );
  } else if (place === null || region === null) {
    found.push(
      find(context, 'where', {
        id: 'headline',
        depth: 'sentence',
        shows: [{ kind: 'bone', bone: bone.value }],
        compute: boneHurt,
        inputs: { claim: tagOf(bone), bone: bone.value },
        claims: [tagOf(bone)],
        whatIf: bone.whatIf,
      }),
    );
  } else {
    found.push(
      find(context, 'where', {
        id: 'headline',
        depth: 'sentence',
        shows: [
          { kind: 'bone', bone: bone.value },
          { kind: 'region', bone: bone.value, region: region.value },
          ...brokenShown(s),
        ],
        compute: s.ofJoint ? jointHurt : brokenHere,
        inputs: { foot: s.parameters, claim: s.breakTag, bone: bone.value, place: place.value },
        claims: [s.breakTag],
        models: ['drawnFoot'],
        whatIf: place.whatIf || shape,
      }),
    );
  }

  found.push(...factFindings(context, 'where', 'side', facts, { unstatedDepth: 'claim' }));
  if (drawnSide(facts).state !== 'stated')
    found.push(
      find(context, 'where', {
        id: 'sideDefault',
        depth: 'more',
        compute: sideDefault,
        inputs: {},
        unsure: 'notStated',
      }),
    );
  if (facts.bone.state === 'contradiction' || clash !== null)
    found.push(...factFindings(context, 'where', 'bone', facts));
  const told = place !== null && !place.whatIf && region !== null;
  found.push(
    ...factFindings(context, 'where', 'place', facts, {
      silent: facts.injury.state === 'stated',
      depth: told ? 'more' : 'claim',
    }),
  );
  found.push(...factFindings(context, 'where', 'injury', facts, { silent: true }));
  if (s.injury !== null && facts.injury.state !== 'stated' && region !== null)
    found.push(classFinding(s, s.injury, region));
  if (s.injury === null && region !== null && facts.injury.state === 'notStated')
    found.push(
      find(context, 'where', {
        id: 'classOpen',
        depth: 'claim',
        compute: classOpen,
        inputs: { region: region.value, ruledOut: s.classesRuledOut },
        claims: [tagOf(region)],
        unsure: 'notStated',
        whatIf: region.whatIf,
      }),
    );
  const { overruled } = s.known;
  if (overruled !== null)
    found.push(
      find(context, 'where', {
        id: 'overruled',
        depth: 'claim',
        compute: boneClash,
        inputs: { stated: overruled.stated, implied: overruled.implied },
        claims: overruled.claims,
        unsure: 'contradiction',
      }),
    );
  if (s.placeAgainstClass && region !== null && s.injury !== null)
    found.push(
      find(context, 'where', {
        id: 'placeAgainstClass',
        depth: 'claim',
        compute: placeAgainstClass,
        inputs: { stated: region.value, injury: s.injury.value },
        claims: [tagOf(region), tagOf(s.injury)],
        unsure: 'contradiction',
        whatIf: region.whatIf,
      }),
    );
  found.push(
    ...factFindings(context, 'where', 'direction', facts, {
      shows: brokenShown(s),
      silent: s.ofJoint || s.injuryRecord?.directionInName === true,
    }),
  );
  found.push(...factFindings(context, 'where', 'displacement', facts));
  const unfit = unfitMeasures(s);
  const disputed = disputedMeasures(facts);
  found.push(
    ...manyFindings(
      context,
      'where',
      facts.measures.filter((claim) => !disputed.has(claim.value.what) && !unfit.includes(claim)),
    ),
    ...measureClashes(s),
    ...unfitMeasureFindings(s),
  );
  found.push(
    ...manyFindings(
      context,
      'where',
      facts.ruledOut.filter((c) => c.subject === 'measure'),
    ).map((f) => ({ ...f, id: `${f.id}.ruledOut` as Finding['id'] })),
  );

  if (bone !== null) found.push(...boneDetail(s, bone));
  if (bone !== null && region !== null) found.push(...zoneDetail(s, bone.value, region));
  if (s.injury !== null) found.push(...classDetail(s, s.injury));
  return found;
};

const classFinding = (s: Situation, injury: Known<InjuryId>, region: Known<RegionId>): Finding =>
  find(s.context, 'where', {
    id: 'class',
    depth: 'claim',
    compute: classFits,
    inputs: { claim: tagOf(injury), injury: injury.value, region: region.value },
    claims: [tagOf(injury)],
    models: ['placeRule'],
    whatIf: injury.whatIf,
  });

const boneDetail = (s: Situation, bone: Known<BoneId>): readonly Finding[] => {
  const joints = s.context.content.joints.filter((j) => j.articular && j.bones.includes(bone.value));
  return [
    ...textFinding(s.context, 'where', {
      id: 'bone',
      at: { kind: 'bone', bone: bone.value },
      shows: [{ kind: 'bone', bone: bone.value }],
    }),
    find(s.context, 'where', {
      id: 'neighbours',
      depth: 'more',
      shows: [...new Set(joints.flatMap((j) => j.bones))].map((b) => ({ kind: 'bone', bone: b }) as const),
      compute: neighbours,
      inputs: { bone: bone.value },
      evidence: joints.map((j) => j.evidence),
    }),
  ];
};

const zoneDetail = (s: Situation, bone: BoneId, region: Known<RegionId>): readonly Finding[] => {
  const { context } = s;
  const record = context.content.regions.find((r) => r.id === region.value);
  const evidence = record === undefined ? [] : [record.evidence];
  const shows = [{ kind: 'region', bone, region: region.value }] as const;
  const found: Finding[] = [
    find(context, 'where', {
      id: 'zoneBorder',
      depth: 'more',
      shows,
      compute: zoneBorder,
      inputs: { foot: s.parameters, bone, region: region.value },
      evidence,
      models: ['drawnFoot'],
      whatIf: s.shapeWhatIf || region.whatIf,
    }),
  ];
  if (s.breakAt !== null && s.known.place !== null)
    found.push(
      find(context, 'where', {
        id: 'breakDrawn',
        depth: 'more',
        shows: [{ kind: 'break' }],
        compute: breakDrawn,
        inputs: { foot: s.parameters, given: givenOf(s.breakTag), bone: s.breakAt.bone, place: s.known.place.value },
        claims: [s.breakTag],
        models: ['drawnFoot'],
        whatIf: s.breakAt.whatIf || s.shapeWhatIf,
      }),
    );
  const inputs = { foot: s.parameters, bone, region: region.value };
  const held = attachedHere.run(context, inputs);
  const ids = held.id === 'attachedHere' ? held.args.attachments : [];
  if (ids.length > 0)
    found.push(
      find(context, 'where', {
        id: 'attached',
        depth: 'more',
        shows,
        compute: attachedHere,
        inputs,
        evidence: context.content.attachments.filter((a) => ids.includes(a.id)).map((a) => a.evidence),
        models: ['drawnFoot'],
        whatIf: s.shapeWhatIf || region.whatIf,
      }),
    );
  return found;
};

const classDetail = (s: Situation, injury: Known<InjuryId>): readonly Finding[] => {
  const { context } = s;
  const at = (part: 'what' | 'nameCaveat') => ({ kind: 'injury', injury: injury.value, part }) as const;
  const record = s.injuryRecord;
  const tag = tagOf(injury);
  const shared = { whatIf: injury.whatIf, as: givenOf(tag), claims: [tag] } as const;
  const found: Finding[] = [
    ...textFinding(context, 'where', { id: 'className', at: at('what'), ...shared }),
    ...textFinding(context, 'where', { id: 'nameCaveat', at: at('nameCaveat'), ...shared }),
  ];
  const where = s.region === null ? null : { value: s.region.value, tag: s.breakTag };
  const measured = measuredIn(s.facts, where);
  found.push(...gapFindings(s, injury, measured), ...throughFindings(s, injury, measured));
  found.push(...classClashes(s, injury), ...apartFindings(s, injury));
  const computed = record === null ? [] : toldClassesOf(record, measured);
  for (const { index, claim, assumed } of computed)
    found.push(
      find(context, 'where', {
        id: `computedClass.${index + 1}`,
        depth: 'claim',
        compute: computedClass,
        inputs: { injury: injury.value, index, measured },
        evidence: record === null ? [] : [record.classification[index]].flatMap((c) => c?.evidence ?? []),
        claims: [claim],
        models: assumed.length === 0 ? [] : ['takenAsNone'],
        whatIf: injury.whatIf || (s.region?.whatIf ?? false),
      }),
    );
  record?.classification.forEach(({ rules }, index) => {
    // What a measure says of this very break is for everybody: beyond a limit a surgeon is asked, whoever reads. What we conclude is not.
    const own = rules?.some(({ by }) => by === 'measure')
      ? computed.find((each) => each.index === index && each.claim.status !== 'inferred')
      : undefined;
    found.push(
      ...textFinding(context, 'where', {
        id: `classification.${index + 1}`,
        at: { kind: 'classification', injury: injury.value, index },
        whatIf: injury.whatIf || (s.region?.whatIf ?? false),
        ...(own === undefined
          ? { readers: ['study'] as const }
          : { depth: 'claim' as const, as: givenOf(own.claim), claims: [own.claim] }),
      }),
    );
  });
  record?.tellApart.forEach((_, index) => {
    found.push(
      ...textFinding(context, 'where', {
        id: `tellApart.${index + 1}`,
        at: { kind: 'tellApart', injury: injury.value, index },
        whatIf: injury.whatIf,
      }),
    );
  });
  found.push(...codeFindings(s, injury));
  return found;
};
