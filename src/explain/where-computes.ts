/** What question 1 computes: the break on the drawn bone, its zone and border, neighbours, attachments, classes that fit. */
import type { Place } from '../cases/schema';
import { homeOn } from '../content/look-up';
import type { Bone } from '../content/schema';
import type { BoneId, CodeId, InjuryId, RegionId } from '../ids';
import { compute, message } from './build';
import { gapAgainst, type Measured, toldClassesOf } from './classes';
import { zoneNamed } from './context';
import { assembleCode, type CodeChoice, type CodeFacts, tellsDisplacement } from './icd10cm';
import type { ClaimTag, Given, MessageOf } from './messages';
import { locate, type OnFoot, tenth } from './place';
import { classesIn } from './resolve';

interface OnBone extends OnFoot {
  readonly bone: BoneId;
}

export const brokenHere = compute(
  'where.brokenHere',
  (context, inputs: OnFoot & { readonly claim: ClaimTag; readonly bone: BoneId; readonly place: Place }) => {
    const at = locate(context.footFor(inputs.foot), inputs.bone, inputs.place);
    return at === null
      ? message('boneHurt', { claim: inputs.claim, bone: inputs.bone })
      : message('brokenHere', { claim: inputs.claim, bone: inputs.bone, region: at.region });
  },
);
/** A joint that came apart: its part is named, and no bone is said to be broken. */
export const jointHurt = compute(
  'where.jointHurt',
  (context, inputs: OnFoot & { readonly claim: ClaimTag; readonly bone: BoneId; readonly place: Place }) => {
    const at = locate(context.footFor(inputs.foot), inputs.bone, inputs.place);
    if (at === null) throw new RangeError('the place is not on the bone');
    return message('jointHurt', { claim: inputs.claim, bone: inputs.bone, region: at.region });
  },
);
export const boneHurt = compute('where.boneHurt', (_, inputs: { readonly claim: ClaimTag; readonly bone: BoneId }) =>
  message('boneHurt', inputs),
);
export const boneClash = compute(
  'where.boneClash',
  (_, inputs: { readonly stated: BoneId; readonly implied: BoneId }) => message('boneClash', inputs),
);
export const nothingLocated = compute('where.nothing', (_, inputs: MessageOf<'nothingLocated'>['args']) =>
  message('nothingLocated', inputs),
);
export const sideDefault = compute('where.sideDefault', () => message('sideDefault', {}));

const ROWS: readonly Bone['group'][] = ['hindfoot', 'midfoot', 'forefoot', 'toes'];
/** Within the midfoot the navicular lies behind the cuneiforms, and the cuboid beside both. */
const WITHIN_MIDFOOT: Partial<Record<BoneId, number>> = { navicular: -0.4, cuboid: 0 };
const CUNEIFORMS = 0.4;
const BESIDE = 0.5;

export const neighbours = compute('where.neighbours', ({ content }, inputs: { readonly bone: BoneId }) => {
  const row = (id: BoneId): number => {
    const group = content.bones.find((b) => b.id === id)?.group ?? 'forefoot';
    const within = group === 'midfoot' ? (WITHIN_MIDFOOT[id] ?? CUNEIFORMS) : 0;
    return (group === 'sesamoids' ? ROWS.indexOf('forefoot') : ROWS.indexOf(group)) + within;
  };
  const joints = content.joints.filter((j) => j.articular && j.bones.includes(inputs.bone));
  const order = (id: BoneId): number => content.bones.find((b) => b.id === id)?.order ?? 0;
  const others = [...new Set(joints.flatMap((j) => j.bones.filter((b) => b !== inputs.bone)))];
  others.sort((a, b) => order(a) - order(b));
  const here = row(inputs.bone);
  return message('neighbours', {
    bone: inputs.bone,
    behind: others.filter((b) => row(b) < here - BESIDE),
    beside: others.filter((b) => Math.abs(row(b) - here) <= BESIDE),
    ahead: others.filter((b) => row(b) > here + BESIDE),
    joints: joints.map((j) => j.id),
  });
});

export const zoneBorder = compute('where.zoneBorder', (context, inputs: OnBone & { readonly region: RegionId }) => {
  const zone = zoneNamed(context.footFor(inputs.foot), inputs.bone, inputs.region);
  if (zone === null) throw new RangeError(`the drawn foot has no zone ${inputs.region}`);
  return message('zoneBorder', {
    region: inputs.region,
    from: { value: tenth(zone.fromMm), unit: 'mm' },
    to: { value: tenth(zone.toMm), unit: 'mm' },
    facet: inputs.region.startsWith('mt5-zone-'),
  });
});

export const breakDrawn = compute(
  'where.breakDrawn',
  (context, inputs: OnFoot & { readonly given: Given; readonly bone: BoneId; readonly place: Place }) => {
    const at = locate(context.footFor(inputs.foot), inputs.bone, inputs.place);
    if (at === null) throw new RangeError('the place is not on the bone');
    return message('breakDrawn', {
      given: inputs.given,
      bone: inputs.bone,
      region: at.region,
      fromTip: { value: at.sMm, unit: 'mm' },
      precision: at.precision,
    });
  },
);

/** What is attached within a zone: by the middle of its footprint on the drawn bone. */
export const attachedHere = compute('where.attached', (context, inputs: OnBone & { readonly region: RegionId }) => {
  const foot = context.footFor(inputs.foot);
  const here = context.content.attachments.filter(
    (a) =>
      a.bone === inputs.bone && locate(foot, inputs.bone, { by: 'region', region: a.region })?.region === inputs.region,
  );
  return message('attachedHere', { region: inputs.region, attachments: here.map((a) => a.id) });
});

export const classFits = compute(
  'where.classFits',
  (_, inputs: { readonly claim: ClaimTag; readonly injury: InjuryId; readonly region: RegionId }) =>
    message('classFits', inputs),
);
/** One class of an injury by its rules; throws RangeError when they do not all hold. */
export const computedClass = compute(
  'where.computedClass',
  ({ content }, inputs: { readonly injury: InjuryId; readonly index: number; readonly measured: Measured }) => {
    const record = content.injuries.find((i) => i.id === inputs.injury);
    const found = toldClassesOf(record ?? { kind: 'break', classification: [] }, inputs.measured).find(
      (c) => c.index === inputs.index,
    );
    if (found === undefined) throw new RangeError(`class ${inputs.index} of ${inputs.injury} does not hold`);
    return message('computedClass', { injury: inputs.injury, ...found });
  },
);
/** Its number in another list; throws RangeError where the content has none. */
export const alsoNumbered = compute('where.alsoNumbered', ({ content }, inputs: { readonly injury: InjuryId }) => {
  if (content.injuries.find((i) => i.id === inputs.injury)?.alsoNumbered === undefined)
    throw new RangeError(`no such number of ${inputs.injury}`);
  return message('alsoNumbered', inputs);
});
export const classOpen = compute(
  'where.classOpen',
  ({ content }, inputs: { readonly region: RegionId; readonly ruledOut: readonly InjuryId[] }) =>
    message('classOpen', {
      region: inputs.region,
      injuries: classesIn(content, inputs.region, inputs.ruledOut).map((i) => i.id),
    }),
);
export const placeAgainstClass = compute(
  'where.placeAgainstClass',
  ({ content }, inputs: { readonly stated: RegionId; readonly injury: InjuryId }) => {
    const injury = content.injuries.find((i) => i.id === inputs.injury);
    const bone = content.regions.find((r) => r.id === inputs.stated)?.bone;
    if (injury === undefined) throw new RangeError(`no injury ${inputs.injury}`);
    const expected = (bone === undefined ? null : homeOn(content, injury, bone)) ?? injury.region;
    return message('placeAgainstClass', { ...inputs, expected });
  },
);
export const code = compute(
  'where.code',
  (
    { content },
    inputs: CodeFacts &
      Pick<MessageOf<'code'>['args'], 'claim' | 'notConfirmed'> & {
        readonly injury: InjuryId;
        readonly code: CodeId;
        readonly choice: readonly CodeChoice[];
      },
  ) => {
    const { code: id, injury, choice, claim, notConfirmed, ...facts } = inputs;
    const record = content.codes.find((c) => c.id === id);
    if (record === undefined) throw new RangeError(`no code ${id}`);
    const { texts, ifReported, assumed } = assembleCode(record, facts);
    const visit = record.visit === 'injury' && facts.visit !== 'first' ? 'again' : facts.visit;
    const byReport =
      facts.displaced === false && tellsDisplacement(record) && notConfirmed.includes('displacement')
        ? assembleCode(record, { ...facts, displaced: null }).texts
        : null;
    return message('code', {
      injury,
      code: id,
      visit,
      claim,
      notConfirmed,
      unlessConfirmed: byReport,
      texts,
      ifReported,
      assumed: [...choice, ...assumed],
    });
  },
);
export const codesBeside = compute('where.codesBeside', ({ content }, inputs: { readonly injury: InjuryId }) =>
  message('codesBeside', {
    injury: inputs.injury,
    codes: content.injuries.find((i) => i.id === inputs.injury)?.codesBeside ?? [],
  }),
);
/** Throws RangeError where the content names none. */
export const codeOfGrowing = compute('where.codeOfGrowing', ({ content }, inputs: { readonly injury: InjuryId }) => {
  const code = content.injuries.find((i) => i.id === inputs.injury)?.codeOfGrowing;
  if (code === undefined) throw new RangeError(`no code of a growth plate for ${inputs.injury}`);
  return message('codeOfGrowing', { injury: inputs.injury, code });
});
export const codeAnew = compute('where.codeAnew', (_, inputs: MessageOf<'codeAnew'>['args']) =>
  message('codeAnew', inputs),
);
/** Throws RangeError where the gap and the word do not collide. */
export const gapAgainstWord = compute(
  'where.gapAgainstWord',
  ({ content }, inputs: { readonly injury: InjuryId; readonly measured: Measured }) => {
    const record = content.injuries.find((i) => i.id === inputs.injury);
    const against = record === undefined ? null : gapAgainst(record, inputs.measured);
    if (against === null) throw new RangeError(`no gap against what is said of ${inputs.injury}`);
    return message('gapAgainstWord', {
      gap: { value: against.gapMm, unit: 'mm' },
      from: { value: against.fromMm, unit: 'mm' },
      displaced: against.displaced,
    });
  },
);
