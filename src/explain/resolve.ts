/**
 * What an explanation goes by: facts and what-if folded into one answer per subject, with the status it rests on. A class
 * follows from the place only when exactly one class fits; nothing here is a guess.
 */
import type { Claim, Fact, Facts, Place, SingleSubject, Subject, SubjectValue } from '../cases/schema';
import { bonesOf, homeOn, homesOf } from '../content/look-up';
import type { Content, Injury } from '../content/schema';
import type { ActivityId, BoneId, ClaimId, InjuryId, Level, MechanismId, OptionId, RegionId } from '../ids';
import type { IsoDate } from '../units';
import { healsBadly } from './healing-said';
import type { ClaimTag } from './messages';
import { standsApart } from './stands-apart';
import type { WhatIf } from './types';

export type KnownStatus = 'confirmed' | 'reported' | 'inferred';
export interface Known<T> {
  readonly value: T;
  readonly status: KnownStatus;
  readonly claims: readonly ClaimId[];
  readonly whatIf: boolean;
}

export const tagOf = (known: Known<unknown>): ClaimTag => ({ status: known.status, claims: known.claims });

const STRENGTH: readonly KnownStatus[] = ['confirmed', 'reported', 'inferred'];
/** The weaker of statuses: what a statement resting on all of them can claim. */
export const weakest = (...statuses: readonly KnownStatus[]): KnownStatus =>
  statuses.reduce((a, b) => (STRENGTH.indexOf(b) > STRENGTH.indexOf(a) ? b : a), 'confirmed' as KnownStatus);

/** A stated fact as a known value; null when it is not stated or contradicted. */
export const knownOf = <S extends Subject>(fact: Fact<S>): Known<SubjectValue<S>> | null =>
  fact.state === 'stated' ? { value: fact.value, status: fact.status, claims: fact.claims, whatIf: false } : null;

const override = <T>(value: T): Known<T> => ({ value, status: 'inferred', claims: [], whatIf: true });

export interface Resolved {
  readonly bone: Known<BoneId> | null;
  readonly place: Known<Place> | null;
  readonly mechanism: Known<MechanismId> | null;
  readonly level: Known<Level> | null;
  readonly massKg: Known<number> | null;
  readonly activity: Known<ActivityId> | null;
  readonly option: Known<OptionId> | null;
  readonly start: (Known<IsoDate> & { readonly from: 'treatment' | 'injury' }) | null;
  /** A break anew since the treatment in force began: weeks counted before it no longer hold, and `start` is null. */
  readonly brokenAgain: Known<IsoDate> | null;
  /** Healing that is slow or has stopped since then: weeks of those who healed as planned are not this person's. */
  readonly healsBadly: ReturnType<typeof healsBadly>;
  /** Claims that name one bone and a part or class of another: no bone is known then. */
  readonly clash: { readonly stated: BoneId; readonly implied: BoneId; readonly claims: readonly ClaimTag[] } | null;
  /** The same, where one of the two is only reported and the other confirmed: told, and the confirmed one holds. */
  readonly overruled:
    | (NonNullable<Resolved['clash']> & {
        /** What is left out. */
        readonly fact: 'bone' | 'place' | 'injury';
      })
    | null;
}

type Treatment = Extract<Claim, { subject: 'treatment' }>;
const knownStatus = (claim: Claim): KnownStatus | null => (claim.status === 'ruledOut' ? null : claim.status);

/**
 * The treatment in force: of those since the last break anew, where one followed it, the last that is confirmed; a later mere report
 * does not undo it. Where none is confirmed, the last.
 */
export const currentTreatment = (facts: Facts): Treatment | null => {
  const stated = facts.treatments.filter((t) => t.status !== 'ruledOut');
  const again = facts.followUps.filter(({ value }) => value.finding === 'broken again').at(-1)?.value.on;
  const since = stated.filter(({ value }) => again !== undefined && value.on !== undefined && value.on >= again);
  const inQuestion = since.length > 0 ? since : stated;
  return inQuestion.filter(({ status }) => status === 'confirmed').at(-1) ?? inQuestion.at(-1) ?? null;
};

const brokenAgainIn = (facts: Facts): Resolved['brokenAgain'] => {
  const last = facts.followUps.filter(({ value }) => value.finding === 'broken again').at(-1);
  const status = last === undefined ? null : knownStatus(last);
  if (last === undefined || status === null) return null;
  const treated = currentTreatment(facts)?.value.on;
  if (treated !== undefined && treated >= last.value.on) return null;
  return { value: last.value.on, status, claims: [last.id], whatIf: false };
};

const startOf = (facts: Facts): Resolved['start'] => {
  const treatment = currentTreatment(facts);
  const on = treatment?.value.on;
  const status = treatment === null ? null : knownStatus(treatment);
  if (treatment !== null && on !== undefined && status !== null)
    return { value: on, status, claims: [treatment.id], whatIf: false, from: 'treatment' };
  const injury = knownOf(facts.injuryDate);
  return injury === null ? null : { ...injury, from: 'injury' };
};

/** The stated class as the content has it. */
const statedInjury = (
  content: Content,
  facts: Facts,
): { readonly known: Known<InjuryId>; readonly record: Injury } | null => {
  const known = knownOf(facts.injury);
  const record = known === null ? undefined : content.injuries.find((i) => i.id === known.value);
  return known === null || record === undefined ? null : { known, record };
};

/** The bone that a place or a class lies on, whichever is stated. Of a class of several bones it is the stated one. */
const impliedBone = (content: Content, facts: Facts, place: Known<Place> | null): Known<BoneId> | null => {
  if (place !== null && place.value.by === 'region') {
    const { region } = place.value;
    const record = content.regions.find((r) => r.id === region);
    if (record !== undefined) return { ...place, value: record.bone };
  }
  const injury = statedInjury(content, facts);
  if (injury === null) return null;
  const stated = knownOf(facts.bone);
  const own = stated !== null && bonesOf(injury.record).includes(stated.value) ? stated.value : injury.record.bone;
  return { ...injury.known, value: own };
};

/** Two bones that one stated class takes part in do not contradict each other. */
const inOneInjury = (content: Content, facts: Facts, ...bones: readonly BoneId[]): boolean => {
  const injury = statedInjury(content, facts);
  return injury !== null && bones.every((bone) => bonesOf(injury.record).includes(bone));
};

/** The bone is named by itself, by a class, or by a named part of it. A distance along an unnamed bone names none. */
const boneFrom = (content: Content, facts: Facts, place: Known<Place> | null): Known<BoneId> | null => {
  if (facts.bone.state === 'contradiction') return null;
  const implied = impliedBone(content, facts, place);
  const stated = knownOf<'bone'>(facts.bone);
  if (stated === null || implied === null || stated.value === implied.value) return stated ?? implied;
  // Both are bones of the stated class: the one whose part is named can be drawn.
  return implied;
};

/** The place is stated, or it is the home of the stated class on the stated bone. Two places that disagree are no place. */
const placeFrom = (content: Content, facts: Facts, whatIf: WhatIf): Known<Place> | null => {
  if (whatIf.place !== undefined) return override(whatIf.place);
  if (facts.place.state === 'contradiction') return null;
  const stated = knownOf<'place'>(facts.place);
  if (stated !== null) return stated;
  const injury = statedInjury(content, facts);
  if (injury === null) return null;
  const bone = knownOf(facts.bone)?.value ?? injury.record.bone;
  const takesPart = bonesOf(injury.record).includes(bone);
  const region = takesPart ? homeOn(content, injury.record, bone) : injury.record.region;
  return region === null ? null : { ...injury.known, value: { by: 'region', region } };
};

/** The fact that is left out where what is stated names two bones and one of the two is only reported: it takes back nothing confirmed. */
const overruledIn = (facts: Facts, clash: Resolved['clash']): NonNullable<Resolved['overruled']>['fact'] | null => {
  const [stated, implied] = clash?.claims ?? [];
  if (stated === undefined || implied === undefined) return null;
  const [sure, other] = [stated, implied].map(({ status }) => status === 'confirmed');
  if (sure === other) return null;
  if (other) return 'bone';
  const place = knownOf(facts.place);
  return place?.claims.some((id) => implied.claims.includes(id)) ? 'place' : 'injury';
};

export const resolve = (content: Content, facts: Facts, whatIf: WhatIf): Resolved => {
  const all = resolveAll(content, facts, whatIf);
  const fact = overruledIn(facts, all.clash);
  if (all.clash === null || fact === null) return all;
  const overruled = { ...all.clash, fact };
  return { ...resolveAll(content, factsHeld(facts, overruled), whatIf), overruled };
};

/** The facts without what a confirmed one overrules. */
export const factsHeld = (facts: Facts, overruled: Resolved['overruled']): Facts =>
  overruled === null ? facts : { ...facts, [overruled.fact]: { state: 'notStated', ruledOut: [] } };

const resolveAll = (content: Content, facts: Facts, whatIf: WhatIf): Resolved => {
  const place = placeFrom(content, facts, whatIf);
  const treatment = currentTreatment(facts);
  const treatmentStatus = treatment === null ? null : knownStatus(treatment);
  const stated = knownOf(facts.bone);
  const implied = impliedBone(content, facts, place);
  const clash =
    stated !== null &&
    implied !== null &&
    stated.value !== implied.value &&
    !inOneInjury(content, facts, stated.value, implied.value)
      ? { stated: stated.value, implied: implied.value, claims: [tagOf(stated), tagOf(implied)] }
      : null;
  const brokenAgain = brokenAgainIn(facts);
  return {
    clash,
    overruled: null,
    brokenAgain,
    healsBadly: healsBadly(facts, currentTreatment(facts)?.value.on ?? null),
    place: clash === null ? place : null,
    bone: clash === null ? boneFrom(content, facts, place) : null,
    mechanism: knownOf(facts.mechanism),
    level: knownOf(facts.level),
    massKg: whatIf.massKg !== undefined ? override(whatIf.massKg) : knownOf(facts.massKg),
    activity: whatIf.activity !== undefined ? override(whatIf.activity) : knownOf(facts.activity),
    option:
      treatment === null || treatmentStatus === null
        ? null
        : { value: treatment.value.option, status: treatmentStatus, claims: [treatment.id], whatIf: false },
    start: brokenAgain === null ? startOf(facts) : null,
  };
};

/** Classes that live in a region, less those that a claim rules out. */
export const classesIn = (content: Content, region: RegionId, ruledOut: readonly InjuryId[]): readonly Injury[] =>
  content.injuries.filter((i) => homesOf(i).includes(region) && !ruledOut.includes(i.id));

/** Whether the place alone makes this class: one of its own classes is ruled by it. */
const placeDecides = ({ classification }: Injury, region: RegionId): boolean =>
  classification.some(({ rules }) => rules?.some((rule) => rule.by === 'place' && rule.region === region) ?? false);

/** Every value that somebody stands by, where claims differ too. */
export const valuesOf = <S extends SingleSubject>(fact: Fact<S>): readonly SubjectValue<S>[] =>
  fact.state === 'stated' ? [fact.value] : fact.state === 'contradiction' ? fact.values.map(({ value }) => value) : [];

/** Whether something that is stated of onset, way of breaking, direction or how far it stands apart is not of this class. */
const speaksAgainst = (injury: Injury, facts: Facts): boolean => {
  const { fits, mechanisms } = injury;
  const { onset, mechanism, direction } = facts;
  return (
    valuesOf<'mechanism'>(mechanism).some((way) => !mechanisms.includes(way)) ||
    valuesOf<'onset'>(onset).some((each) => !fits.onsets.includes(each)) ||
    valuesOf<'direction'>(direction).some((each) => fits.directions?.includes(each) === false) ||
    standsApart(injury, facts).length > 0
  );
};

/**
 * The class: as stated when it lives where the break is, or when no place is known; else the only class that fits the place, where
 * the place decides it or the way of breaking is one of its own, and nothing that is stated speaks against it. Elsewhere a bone can
 * break in ways that the content does not tell of. A what-if moves the break, so the class follows it, and the break comes about as it did.
 */
export const injuryFrom = (
  content: Content,
  facts: Facts,
  region: Known<RegionId> | null,
  mechanism: MechanismId | null,
): Known<InjuryId> | null => {
  const stated = knownOf(facts.injury);
  const record = statedInjury(content, facts)?.record ?? null;
  if (
    stated !== null &&
    (region === null || !region.whatIf || (record !== null && homesOf(record).includes(region.value)))
  )
    return stated;
  if (region === null || facts.injury.state === 'contradiction') return null;
  const ruledOut = facts.injury.ruledOut.flatMap((c) => (c.subject === 'injury' ? [c.value] : []));
  const way = mechanism ?? (region.whatIf ? (record?.mechanisms[0] ?? null) : null);
  const here = classesIn(content, region.value, ruledOut);
  const ofThisWay = way === null ? [] : here.filter((i) => i.mechanisms.includes(way));
  const [only, ...others] = ofThisWay.length > 0 ? ofThisWay : here;
  if (only === undefined || others.length > 0) return null;
  if (ofThisWay.length === 0 && !placeDecides(only, region.value)) return null;
  if (!region.whatIf && speaksAgainst(only, facts)) return null;
  return { value: only.id, status: 'inferred', claims: region.claims, whatIf: region.whatIf };
};
