/** Under a number: how it is known, on request. */
import type { Explanation, Finding } from '../../explain/types';
import { useWords } from '../context';
import { Basis } from '../note/Basis';

export const AskIt = ({ explanation, finding }: { readonly explanation: Explanation; readonly finding: Finding }) => {
  const say = useWords();
  return (
    <details className="ask-it">
      <summary>{say('note.how')}</summary>
      <Basis explanation={explanation} finding={finding} />
    </details>
  );
};
