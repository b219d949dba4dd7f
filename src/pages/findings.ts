/** Picks findings of one kind out of an Explanation, with their typed arguments. */
import type { MessageId, MessageOf } from '../explain/messages';
import type { Explanation, Finding } from '../explain/types';

export type FindingOf<K extends MessageId> = Finding & { readonly message: MessageOf<K> };

const isOf =
  <K extends MessageId>(id: K) =>
  (finding: Finding): finding is FindingOf<K> =>
    finding.message.id === id;

export const findingsOf = <K extends MessageId>(explanation: Explanation | null, id: K): readonly FindingOf<K>[] =>
  (explanation?.questions ?? []).flatMap((question) => question.findings.filter(isOf(id)));
