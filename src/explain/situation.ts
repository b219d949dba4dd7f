/** Everything one run goes by, worked out once: what is known, the foot, where the break lies on it, its class. */
import type { Foot, FootParameters } from '../anatomy/types';
import type { Facts } from '../cases/schema';
import { homesOf } from '../content/look-up';
import type { Content, Injury } from '../content/schema';
import { AGE_BANDS, type AgeBand, type InjuryId, type RegionId } from '../ids';
import { givenOf } from './build';
import { type Context, contextOf } from './context';
import type { ClaimTag, Given } from './messages';
import { parametersOf } from './parameters';
import { locate } from './place';
import {
  classesIn,
  factsHeld,
  injuryFrom,
  type Known,
  knownOf,
  type Resolved,
  resolve,
  tagOf,
  valuesOf,
  weakest,
} from './resolve';
import type { BreakAt, WhatIf } from './types';

export interface Situation {
  readonly context: Context;
  readonly facts: Facts;
  readonly whatIf: WhatIf;
  readonly known: Resolved;
  readonly parameters: FootParameters;
  /** The foot's shape is an override and not the person's. */
  readonly shapeWhatIf: boolean;
  readonly region: Known<RegionId> | null;
  /** Null too where a joint came apart, or may have: no line of a break is drawn there. */
  readonly breakAt: BreakAt | null;
  /** Status and claims of bone and place together. */
  readonly breakTag: ClaimTag;
  readonly injury: Known<InjuryId> | null;
  readonly injuryRecord: Injury | null;
  readonly classesRuledOut: readonly InjuryId[];
  /** The class known is of a joint and not of a broken bone. */
  readonly ofJoint: boolean;
  readonly given: Given;
  /** The class that is stated does not live where the break is stated to be: whatever follows of it is open. */
  readonly placeAgainstClass: boolean;
}

/** The standing right foot that an explanation of these facts is made on. Built once and kept. */
export const footOfCase = (content: Content, facts: Facts, whatIf: WhatIf, given?: Foot): Foot =>
  contextOf(content, given).footFor(parametersOf(facts, whatIf));

export const situationOf = (content: Content, facts: Facts, whatIf: WhatIf, foot?: Foot): Situation => {
  const context = contextOf(content, foot);
  const known = resolve(content, facts, whatIf);
  const parameters = parametersOf(facts, whatIf);
  const { bone, place } = known;
  const at = bone === null || place === null ? null : locate(context.footFor(parameters), bone.value, place.value);
  const status = bone === null || place === null ? 'inferred' : weakest(bone.status, place.status);
  const claims = [...new Set([...(bone?.claims ?? []), ...(place?.claims ?? [])])];
  const whatIfPlace = place?.whatIf ?? false;
  const region: Known<RegionId> | null = at === null ? null : { value: at.region, status, claims, whatIf: whatIfPlace };
  const injury =
    known.clash === null
      ? injuryFrom(content, factsHeld(facts, known.overruled), region, known.mechanism?.value ?? null)
      : null;
  const injuryRecord = injury === null ? null : (content.injuries.find((i) => i.id === injury.value) ?? null);
  const placeAgainstClass = injuryRecord !== null && region !== null && !homesOf(injuryRecord).includes(region.value);
  const classesRuledOut = facts.injury.ruledOut.flatMap((c) => (c.subject === 'injury' ? [c.value] : []));
  const mayBeJoint =
    injuryRecord === null
      ? at !== null &&
        facts.direction.state !== 'stated' &&
        classesIn(content, at.region, classesRuledOut).some((i) => i.kind === 'joint')
      : injuryRecord.kind === 'joint';
  const breakTag: ClaimTag = { status, claims };
  const fixed = whatIfPlace ? null : at === null ? null : breakTag;
  return {
    context,
    facts,
    whatIf,
    known,
    parameters,
    shapeWhatIf: whatIf.footShape !== undefined || whatIf.foot !== undefined,
    region,
    breakAt:
      at === null || bone === null || mayBeJoint
        ? null
        : {
            bone: bone.value,
            sMm: at.sMm,
            region: at.region,
            precision: at.precision,
            status,
            whatIf: whatIfPlace,
            direction: knownOf(facts.direction)?.value ?? 'notStated',
          },
    breakTag,
    injury,
    injuryRecord,
    classesRuledOut,
    ofJoint: injuryRecord?.kind === 'joint',
    placeAgainstClass,
    given:
      facts.injury.state === 'contradiction' ||
      facts.place.state === 'contradiction' ||
      known.clash !== null ||
      placeAgainstClass
        ? 'contradiction'
        : givenOf(
            fixed,
            injury === null || injury.whatIf ? null : tagOf(injury),
            fixed === null && bone !== null ? tagOf(bone) : null,
          ),
  };
};

/** Driving, smoking and the norms of adults are nothing to a child. */
export const isUnder12 = ({ facts: { ageBand } }: Pick<Situation, 'facts'>): boolean =>
  ageBand.state === 'stated' && ageBand.value === 'under 12';

/** Bones of the foot may still have open growth plates: so young, by any of the ages that somebody stands by. */
export const mayGrow = ({ facts: { ageBand } }: Pick<Situation, 'facts'>): boolean =>
  valuesOf<'ageBand'>(ageBand).some((age) => age === 'under 12' || age === '12-17');

/** For what is said of an age alone; where ages differ the youngest, of whom more care is taken. */
export const youngestOf = ({ ageBand }: Facts): AgeBand | null => {
  const stated = valuesOf<'ageBand'>(ageBand);
  return AGE_BANDS.find((age) => stated.includes(age)) ?? null;
};
