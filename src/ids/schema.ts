/** Schemas of ids, shared by content and case files. */
import * as v from 'valibot';
import {
  type ActivityId,
  AGE_BANDS,
  BONE_IDS,
  type CardId,
  type CodeId,
  type FactorId,
  type InjuryId,
  LEVELS,
  type MechanismId,
  type OptionId,
  type RegionId,
  SKELETON_IDS,
  type StrandId,
  type TroubleId,
  type VesselEdgeId,
} from '.';

/** Letters and digits, words joined by hyphens; bone ids keep their camel case. */
const ID = /^[a-z][A-Za-z0-9]*(-[A-Za-z0-9]+)*$/;

export const id = <T extends string>() =>
  v.pipe(
    v.string('expected an id'),
    v.maxLength(60, 'an id has at most 60 characters'),
    v.regex(ID, 'expected an id: letters and digits, words joined by hyphens'),
    v.transform((s) => s as T),
  );

export const boneId = v.picklist(BONE_IDS);
export const skeletonId = v.picklist(SKELETON_IDS);
export const regionId = id<RegionId>();
export const injuryId = id<InjuryId>();
export const mechanismId = id<MechanismId>();
export const optionId = id<OptionId>();
export const activityId = id<ActivityId>();
export const factorId = id<FactorId>();
export const cardId = id<CardId>();
export const codeId = id<CodeId>();
export const strandId = id<StrandId>();
export const troubleId = id<TroubleId>();
/** Two ids joined: an edge of the graph of vessels. */
export const vesselEdgeId = v.pipe(
  v.string('expected an edge'),
  v.maxLength(121, 'an edge has at most 121 characters'),
  v.regex(/^[a-zA-Z0-9-]+>[a-zA-Z0-9-]+$/, 'expected an edge: parent>child, or vessel>place'),
  v.transform((s) => s as VesselEdgeId),
);
export const ageBand = v.picklist(AGE_BANDS);
export const level = v.picklist(LEVELS);
