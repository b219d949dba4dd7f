/** What the explanation says of one stage, by its parts: the findings that stand in the list of the stages. */
import type { Content, Evidence } from '../../content/schema';
import type { TextAddress } from '../../explain/messages';
import { textAt } from '../../explain/texts';
import type { Explanation, Finding } from '../../explain/types';
import type { Reader } from '../../ids';
import { useSession } from '../context';
import { isToldTo } from '../findings';

type Kind = TextAddress['kind'];
export type TextFinding<K extends Kind = Kind> = Finding & {
  readonly message: { readonly id: 'contentText'; readonly args: { readonly at: Extract<TextAddress, { kind: K }> } };
};

/** Of the stage with this number, as the way back counts it, what this reader is told. */
export const findingsOfStage = (explanation: Explanation | null, number: number, reader: Reader): readonly Finding[] =>
  (explanation?.questions ?? []).flatMap(({ id, findings }) =>
    id === 'back'
      ? findings.filter((finding) => finding.id.startsWith(`back.stage.${number}.`) && isToldTo(reader)(finding))
      : [],
  );

export const textsOf = <K extends Kind>(findings: readonly Finding[], kind: K): readonly TextFinding<K>[] =>
  findings.filter(
    (finding): finding is TextFinding<K> =>
      finding.message.id === 'contentText' && finding.message.args.at.kind === kind,
  );

export interface StageText {
  readonly text: string;
  readonly evidence: Evidence | null;
}

/** The text itself, without what would name its stage: that stands above it. */
export const bareText = (content: Content, finding: TextFinding, reader: Reader): StageText => {
  const found = textAt(content, finding.message.args.at);
  return { text: found?.tellings[reader] ?? '', evidence: found?.evidence ?? null };
};

export const useBareText = (): ((finding: TextFinding) => StageText) => {
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  return (finding) => bareText(content, finding, reader);
};
