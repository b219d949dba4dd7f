/** Sentences in a list; a claim has its stamp before it and its status word after it. */
import type { Finding } from '../../explain/types';
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
          <ClaimStamp sentence={sentence} />
          <span>
            <Runs runs={sentence.runs} />
            {sentence.whatIf && <WhatIfWord />}
            <StatusLine sentence={sentence} />
          </span>
        </li>
      ))}
    </ul>
  );

const useFinding = (sentence: Sentence): Finding | undefined => {
  const explanation = useSession((state) => state.explanation);
  return explanation?.questions.flatMap((question) => question.findings).find((each) => each.id === sentence.finding);
};

/** What nobody has stated was neither claimed nor inferred: it has no stamp. */
const ClaimStamp = ({ sentence }: { readonly sentence: Sentence }) => {
  const unknown = useFinding(sentence)?.confidence.level === 'unknown';
  return sentence.stamp === null && unknown ? <span /> : <Stamp kind={sentence.stamp ?? 'inferred'} />;
};

/** How it is known and from whom: the kinds of source behind the claims that this sentence tells. */
const StatusLine = ({ sentence }: { readonly sentence: Sentence }) => {
  const say = useWords();
  const claims = useSession((state) => state.file.claims);
  const finding = useFinding(sentence);
  if (sentence.stamp === null && finding?.confidence.level === 'unknown')
    return <span className="claim-status">{say('stamp.notStated')}</span>;
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
