/** Sources that say different things of one matter: each side with its source and mark, and what is done about it here. */
import { useMemo } from 'react';
import type { Contradiction } from '../../content/schema';
import { contradictionSides } from '../../wording';
import { usePages, useSession } from '../context';
import { Known, markWordKey, Runs } from '../parts/Runs';

/** A patient is told what follows; who says what is for those who ask how it is known. */
export const ContradictionItem = ({ contradiction }: { readonly contradiction: Contradiction }) => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  const sides = useMemo(() => contradictionSides(content, contradiction), [content, contradiction]);
  return (
    <>
      <p className="contradiction-topic">{contradiction.topic}</p>
      {reader !== 'patient' && (
        <ul className="contradiction-sides">
          {sides.map((side) => (
            <li key={`${side.source}${side.says}`}>
              {side.says} <Runs runs={side.figures} />
              {side.figures.length > 0 && ' '}
              <span className="small-print">
                {side.source}. <Known mark={side.mark}>{say(markWordKey(side.mark))}</Known>
              </span>
            </li>
          ))}
        </ul>
      )}
      <p>
        <b>{say('contradictions.weDo')}</b> {contradiction.weDo[reader]}
      </p>
    </>
  );
};
