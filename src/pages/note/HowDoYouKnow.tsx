/** For every finding of a question: how far to trust it, from what it was made, who published it, and its limits. */
import type { QuestionId } from '../../ids';
import { confidenceWord, findingsFor, wordBasis, wordFinding } from '../../wording';
import { usePages, useSession } from '../context';
import { Known, markWordKey, Runs } from '../parts/Runs';

export const HowDoYouKnow = ({ question }: { readonly question: QuestionId }) => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const explanation = useSession((state) => state.explanation);
  const reader = useSession((state) => state.reader);
  if (explanation === null) return null;
  const findings = findingsFor(explanation, question, reader);
  return (
    <ol className="bases">
      {findings.map((finding) => {
        const basis = wordBasis(content, explanation, finding);
        return (
          <li key={finding.id}>
            <p className="basis-of">
              <Runs runs={wordFinding(content, explanation, finding, reader).runs} />
            </p>
            <p className="confidence">{confidenceWord(finding.confidence.level)}</p>
            {basis.lines.map((line) => (
              <p key={line} className="basis-line">
                {line}
              </p>
            ))}
            {basis.sources.length > 0 && (
              <ul className="sources">
                {basis.sources.map((source) => (
                  <li key={source.id}>
                    {source.text} <Known mark={source.mark}>{say(markWordKey(source.mark))}</Known>
                  </li>
                ))}
              </ul>
            )}
          </li>
        );
      })}
    </ol>
  );
};
