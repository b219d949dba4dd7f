/** What not to say on air about this case: the general ones of the content, and those that follow from what is not known. */
import type { Content } from '../content/schema';
import type { Explanation } from '../explain/types';
import { cautionsFor } from '../wording';
import { TELLING_PHRASES as P } from './phrases';

export const doNotSayOf = (
  content: Pick<Content, 'cautions' | 'injuries'>,
  explanation: Explanation,
): readonly string[] => {
  const messages = new Set(explanation.questions.flatMap((q) => q.findings.map((finding) => finding.message.id)));
  const lines = [
    ...(explanation.side.state === 'stated' ? [] : [P['doNotSay.side']]),
    ...(explanation.part?.status === 'confirmed' && !explanation.part.whatIf ? [] : [P['doNotSay.diagnosis']]),
    ...(messages.has('howUnknown') ? [P['doNotSay.cause']] : []),
    P['doNotSay.person'],
    ...cautionsFor(content, explanation, 'broadcast')
      .filter((caution) => caution.kind === 'do not say')
      .map((caution) => caution.what.broadcast),
  ];
  return [...new Set(lines)];
};
