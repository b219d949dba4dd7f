/** For every finding of a question: how far to trust it, from what it was made, who published it, and its limits. */
import type { QuestionId } from '../../ids';
import { findingsFor, wordFinding } from '../../wording';
import { usePages, useSession } from '../context';
import { inStages } from '../how/told-beside';
import { Runs } from '../parts/Runs';
import { Basis } from './Basis';
import '../evidence/troubles.css';

export const HowDoYouKnow = ({ question }: { readonly question: QuestionId }) => {
  const { say, hrefOf } = usePages();
  const content = useSession((state) => state.content);
  const explanation = useSession((state) => state.explanation);
  const reader = useSession((state) => state.reader);
  if (explanation === null) return null;
  return (
    <>
      <p className="sources-link">
        <a href={hrefOf({ page: 'sources' })}>{say('evidence.link')}</a>
      </p>
      <ol className="bases">
        {findingsFor(explanation, question, reader)
          .filter(({ id }) => !inStages(id))
          .map((finding) => (
            <li key={finding.id}>
              <p className="basis-of">
                <Runs runs={wordFinding(content, explanation, finding, reader).runs} />
              </p>
              <Basis explanation={explanation} finding={finding} />
            </li>
          ))}
      </ol>
    </>
  );
};
