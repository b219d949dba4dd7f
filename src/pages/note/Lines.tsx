/** Sentences in a list; a claim has its stamp before it and its status word after it. */
import type { Sentence } from '../../wording/types';
import { useWords } from '../context';
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

const StatusLine = ({ sentence }: { readonly sentence: Sentence }) => {
  const say = useWords();
  return (
    <span className="claim-status" aria-hidden="true">
      {say(`stamp.${sentence.stamp ?? 'inferred'}.line`)}
    </span>
  );
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
