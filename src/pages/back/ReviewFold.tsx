/** What a review looks at: what opens the next stage, what a follow-up could find, and the odds then where there are any. */
import { wordFinding } from '../../wording';
import { usePages, useSession } from '../context';
import { findingsOf, isToldTo } from '../findings';
import { Disclosure } from '../parts/Disclosure';
import { Runs } from '../parts/Runs';

export const ReviewFold = () => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const explanation = useSession((state) => state.explanation);
  const reader = useSession((state) => state.reader);
  const moves = [
    ...findingsOf(explanation, 'stageAtReview'),
    ...findingsOf(explanation, 'reviewMove'),
    ...findingsOf(explanation, 'reviewPoints'),
  ].filter(isToldTo(reader));
  if (explanation === null || moves.length === 0) return null;
  return (
    <Disclosure title={say('review.title')}>
      <ul className="plain">
        {moves.map((finding) => (
          <li key={finding.id}>
            <Runs runs={wordFinding(content, explanation, finding, reader).runs} />
          </li>
        ))}
      </ul>
    </Disclosure>
  );
};
