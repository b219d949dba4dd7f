/** What every record of content/ is made of: ids, marks, evidence, review, the three tellings, figures. */
import * as v from 'valibot';
import {
  type AttachmentId,
  type CautionId,
  type JointId,
  READERS,
  type SourceId,
  type StageId,
  type StudyId,
  type VesselId,
} from '../ids';
import { id } from '../ids/schema';
import { isoDate, text } from '../units/schema';

export const jointId = id<JointId>();
export const vesselId = id<VesselId>();
export const attachmentId = id<AttachmentId>();
export const stageId = id<StageId>();
export const studyId = id<StudyId>();
export const sourceId = id<SourceId>();
export const cautionId = id<CautionId>();

/** How surely a figure or statement was read. Weakest last. */
export const MARKS = ['seen', 'weak', 'common practice', 'from memory'] as const;
export const mark = v.picklist(MARKS);
export type Mark = v.InferOutput<typeof mark>;

/** A source and how surely it was read: stands beside every statement and figure. `common practice` needs no source. */
export const evidence = v.strictObject({ source: v.nullable(sourceId), mark });
export type Evidence = v.InferOutput<typeof evidence>;

/** A review covers exactly the text it saw: `hash` is of the file's records, so that any change resets it. */
export const review = v.variant('state', [
  v.strictObject({ state: v.literal('not reviewed') }),
  v.strictObject({ state: v.literal('reviewed'), role: text(80), on: isoDate, hash: text(64) }),
]);
export type Review = v.InferOutput<typeof review>;

/** The same fact in three tellings. */
export const tellings = v.strictObject({ patient: text(600), broadcast: text(600), study: text(900) });
export type Tellings = v.InferOutput<typeof tellings>;

/** Whom a text is told; absent: everybody. A patient is spared what only adds to a figure told already. */
export const toldReaders = v.optional(v.pipe(v.array(v.picklist(READERS)), v.minLength(1)));

/** A number as content states it. */
export const figure = v.strictObject({
  value: v.pipe(v.number(), v.finite()),
  low: v.optional(v.pipe(v.number(), v.finite())),
  high: v.optional(v.pipe(v.number(), v.finite())),
  unit: v.picklist([
    'mm',
    'N',
    'MPa',
    'GPa',
    'N/mm',
    'N m/rad',
    'microstrain',
    'body weight',
    'deg',
    'share',
    'week',
    'kg',
    'count',
    'day',
    'power',
  ]),
  evidence,
  note: v.optional(text(400)),
});
export type Figure = v.InferOutput<typeof figure>;
