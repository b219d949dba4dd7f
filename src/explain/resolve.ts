/**
 * What an explanation goes by: facts and what-if folded into one answer per subject, with the status it rests on. A class
 * follows from the place only when exactly one class fits; nothing here is a guess.
 */
import type { Claim, Fact, Facts, Place, Subject, SubjectValue } from '../cases/schema';
import type { Content, Injury } from '../content/schema';
import type { ActivityId, BoneId, ClaimId, InjuryId, Level, MechanismId, OptionId, RegionId } from '../ids';
import type { IsoDate } from '../units';
import type { ClaimTag } from './messages';
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
  /** Claims that name one bone and a part or class of another: no bone is known then. */
  readonly clash: { readonly stated: BoneId; readonly implied: BoneId; readonly claims: readonly ClaimTag[] } | null;
}

type Treatment = Extract<Claim, { subject: 'treatment' }>;
const knownStatus = (claim: Claim): KnownStatus | null => (claim.status === 'ruledOut' ? null : claim.status);

/** The treatment in force: the last one that is not ruled out. */
export const currentTreatment = (facts: Facts): Treatment | null =>
  facts.treatments.filter((t) => t.status !== 'ruledOut').at(-1) ?? null;

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

/** The bone that a place or a class lies on, whichever is stated. */
const impliedBone = (content: Content, facts: Facts, place: Known<Place> | null): Known<BoneId> | null => {
  if (place !== null && place.value.by === 'region') {
    const { region } = place.value;
    const record = content.regions.find((r) => r.id === region);
    if (record !== undefined) return { ...place, value: record.bone };
  }
  const injury = knownOf(facts.injury);
  const record = injury === null ? undefined : content.injuries.find((i) => i.id === injury.value);
  return injury === null || record === undefined ? null : { ...injury, value: record.bone };
};

/** The bone is named by itself, by a class, or by a named part of it. A distance along an unnamed bone names none. */
const boneFrom = (content: Content, facts: Facts, place: Known<Place> | null): Known<BoneId> | null => {
  if (facts.bone.state === 'contradiction') return null;
  const stated = knownOf<'bone'>(facts.bone);
  if (stated !== null) return stated;
  return impliedBone(content, facts, place);
};

/** The place is stated, or it is the home of the stated class. Two places that disagree are no place. */
const placeFrom = (content: Content, facts: Facts, whatIf: WhatIf): Known<Place> | null => {
  if (whatIf.place !== undefined) return override(whatIf.place);
  if (facts.place.state === 'contradiction') return null;
  const stated = knownOf<'place'>(facts.place);
  if (stated !== null) return stated;
  const injury = knownOf(facts.injury);
  const record = injury === null ? undefined : content.injuries.find((i) => i.id === injury.value);
  return injury === null || record === undefined ? null : { ...injury, value: { by: 'region', region: record.region } };
};

export const resolve = (content: Content, facts: Facts, whatIf: WhatIf): Resolved => {
  const place = placeFrom(content, facts, whatIf);
  const treatment = currentTreatment(facts);
  const treatmentStatus = treatment === null ? null : knownStatus(treatment);
  const stated = knownOf(facts.bone);
  const implied = impliedBone(content, facts, place);
  const clash =
    stated !== null && implied !== null && stated.value !== implied.value
      ? { stated: stated.value, implied: implied.value, claims: [tagOf(stated), tagOf(implied)] }
      : null;
  const brokenAgain = brokenAgainIn(facts);
  return {
    clash,
    brokenAgain,
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

/** Classes that live in a region, less those that a claim rules out or whose ways of breaking exclude the stated one. */
export const classesIn = (
  content: Content,
  region: RegionId,
  ruledOut: readonly InjuryId[],
  mechanism: MechanismId | null,
): readonly Injury[] => {
  const here = content.injuries.filter((i) => i.region === region && !ruledOut.includes(i.id));
  const fitting = mechanism === null ? here : here.filter((i) => i.mechanisms.includes(mechanism));
  return fitting.length > 0 ? fitting : here;
};

/**
 * The class: as stated when it lives where the break is, or when no place is known; else the only class that fits the place.
 * A what-if moves the break, so the class follows it.
 */
export const injuryFrom = (
  content: Content,
  facts: Facts,
  region: Known<RegionId> | null,
  mechanism: MechanismId | null,
): Known<InjuryId> | null => {
  const stated = knownOf(facts.injury);
  const home = stated === null ? null : (content.injuries.find((i) => i.id === stated.value)?.region ?? null);
  if (stated !== null && (region === null || !region.whatIf || home === region.value)) return stated;
  if (region === null || facts.injury.state === 'contradiction') return null;
  const ruledOut = facts.injury.ruledOut.flatMap((c) => (c.subject === 'injury' ? [c.value] : []));
  const [only, ...others] = classesIn(content, region.value, ruledOut, mechanism);
  if (only === undefined || others.length > 0) return null;
  return { value: only.id, status: 'inferred', claims: region.claims, whatIf: region.whatIf };
};
