/** How one finding is known: how surely, from what it was made, why it is no surer, and its sources. */
import { useMemo } from 'react';
import type { Explanation, Finding } from '../../explain/types';
import { confidenceWord, wordBasis } from '../../wording';
import { usePages, useSession } from '../context';
import { useOpenCalculation } from '../how/calculation';
import { Known, markWordKey } from '../parts/Runs';

interface Properties {
  readonly explanation: Explanation;
  readonly finding: Finding;
}

/** What the frame finds rests on all its figures: they stand with their sources in the tables of the calculation. */
const ofFrame = (finding: Finding): boolean =>
  finding.shows.some(({ kind }) => kind === 'stations') && finding.basis.compute.startsWith('how.');

const Sources = ({ explanation, finding }: Properties) => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  const { sources } = useMemo(
    () => wordBasis(content, explanation, finding, reader),
    [content, explanation, finding, reader],
  );
  if (sources.length === 0) return null;
  return (
    <ul className="sources">
      {sources.map((source) => (
        <li key={source.id}>
          {source.text} <Known mark={source.mark}>{say(markWordKey(source.mark))}</Known>
          {source.people.map((line) => (
            <p key={line} className="small-print">
              {line}
            </p>
          ))}
          <p className="small-print">{source.how}</p>
        </li>
      ))}
    </ul>
  );
};

export const Basis = ({ explanation, finding }: Properties) => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const open = useOpenCalculation();
  const { lines } = useMemo(() => wordBasis(content, explanation, finding), [content, explanation, finding]);
  return (
    <>
      <p className="confidence">{confidenceWord(finding.confidence.level)}</p>
      {lines.map((line) => (
        <p key={line} className="basis-line">
          {line}
        </p>
      ))}
      {open !== null && ofFrame(finding) ? (
        <p className="basis-line">
          <button type="button" className="linkish" onClick={open}>
            {say('calculation.openFrom')}
          </button>
        </p>
      ) : (
        <Sources explanation={explanation} finding={finding} />
      )}
    </>
  );
};
