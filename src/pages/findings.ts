/** Picks findings of one kind out of an Explanation, with their typed arguments. */
import type { MessageId, MessageOf } from '../explain/messages';
import type { Explanation, Finding } from '../explain/types';
import type { Reader } from '../ids';

export type FindingOf<K extends MessageId> = Finding & { readonly message: MessageOf<K> };

const isOf =
  <K extends MessageId>(id: K) =>
  (finding: Finding): finding is FindingOf<K> =>
    finding.message.id === id;

export const findingsOf = <K extends MessageId>(explanation: Explanation | null, id: K): readonly FindingOf<K>[] =>
  (explanation?.questions ?? []).flatMap((question) => question.findings.filter(isOf(id)));

/** Whether a sentence is meant for this reader. Drawings and tables of figures are for whoever opens them. */
export const isToldTo =
  (reader: Reader) =>
  ({ readers }: Finding): boolean =>
    readers?.includes(reader) ?? true;

/** The model's largest pull held against where breaks of the class lie; null where no beam speaks. */
export const beamAgainstBreaks = (
  explanation: Explanation | null,
):
  | FindingOf<'pullPending'>
  | FindingOf<'pullAgrees'>
  | FindingOf<'pullDisagrees'>
  | FindingOf<'pullUnsure'>
  | FindingOf<'pullSilent'>
  | null =>
  findingsOf(explanation, 'pullPending')[0] ??
  findingsOf(explanation, 'pullAgrees')[0] ??
  findingsOf(explanation, 'pullDisagrees')[0] ??
  findingsOf(explanation, 'pullUnsure')[0] ??
  findingsOf(explanation, 'pullSilent')[0] ??
  null;
