/** Sentences in a list; a claim has its stamp before it and its status word after it. */
import type { Sentence } from '../../wording/types';
import { useSession, useWords } from '../context';
import { Runs } from '../parts/Runs';
import { Stamp } from '../parts/Stamp';

const WhatIfWord = () => {
  const say = useWords();
  return <span className="what-if-tag">{say('whatIf.tag')}</span>;
};

export const ClaimLines = ({ sentences }: { readonly sentences: readonly Sentence[] }) =>
  sentences.length === 0 ? null : (
    <ul className="claims">
      {sentences.map((sentence) => (
        <li key={sentence.finding} data-what-if={sentence.whatIf || undefined}>
          <Stamp kind={sentence.stamp ?? 'inferred'} />
          <span>
            <Runs runs={sentence.runs} />
            {sentence.whatIf && <WhatIfWord />}
            <StatusLine sentence={sentence} />
          </span>
        </li>
      ))}
    </ul>
  );

/** How it is known and from whom: the kinds of source behind the claims that this sentence tells. */
const StatusLine = ({ sentence }: { readonly sentence: Sentence }) => {
  const say = useWords();
  const explanation = useSession((state) => state.explanation);
  const claims = useSession((state) => state.file.claims);
  const finding = explanation?.questions
    .flatMap((question) => question.findings)
    .find((each) => each.id === sentence.finding);
  const stamp = sentence.stamp ?? 'inferred';
  const kinds = claims
    .filter((claim) => finding?.basis.claims.includes(claim.id))
    .map((claim) => say(`sourceKind.${claim.source.kind}`));
  const from = stamp === 'inferred' || kinds.length === 0 ? say(`stamp.${stamp}.line`) : [...new Set(kinds)].join('; ');
  return <span className="claim-status">{say('claim.statusLine', { status: say(`stamp.${stamp}`), from })}</span>;
};

export const Lines = ({ sentences }: { readonly sentences: readonly Sentence[] }) => (
  <ul className="lines">
    {sentences.map((sentence) => (
      <li key={sentence.finding} data-what-if={sentence.whatIf || undefined}>
        {sentence.stamp !== null && <Stamp kind={sentence.stamp} />}
        <span>
          <Runs runs={sentence.runs} />
          {sentence.whatIf && <WhatIfWord />}
        </span>
      </li>
    ))}
  </ul>
);
