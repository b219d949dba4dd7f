/** Ask it: ten questions on the bones for whoever learns, or three for the patient to see whether the explaining worked. */
import { useState } from 'react';
import { usePages } from '../context';
import { Quiz } from './Quiz';
import { TeachBack } from './TeachBack';

const KINDS = ['quiz', 'teachBack'] as const;

export const AskPage = () => {
  const { say } = usePages();
  const [kind, setKind] = useState<(typeof KINDS)[number]>('quiz');
  return (
    <>
      <p className="question-count">{say('ask.kicker')}</p>
      <h1 className="question-title" tabIndex={-1}>
        {say('ask.title')}
      </h1>
      <fieldset className="segments">
        <legend className="unseen">{say('ask.which')}</legend>
        {KINDS.map((each) => (
          <label key={each}>
            <input type="radio" name="ask-kind" checked={each === kind} onChange={() => setKind(each)} />
            <span>{say(`ask.${each}`)}</span>
          </label>
        ))}
      </fieldset>
      {kind === 'quiz' ? <Quiz /> : <TeachBack />}
    </>
  );
};
