/** The contradictions that concern this injury and this question, shown as contradictions. */
import type { QuestionId } from '../../ids';
import { usePages, useSession } from '../context';
import { findingsOf, isToldTo } from '../findings';
import { Disclosure } from '../parts/Disclosure';
import { ContradictionItem } from './ContradictionItem';
import './troubles.css';

export const ContradictionsFold = ({ question }: { readonly question: QuestionId }) => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const explanation = useSession((state) => state.explanation);
  const reader = useSession((state) => state.reader);
  const found = findingsOf(explanation, 'sourcesDisagree')
    .filter(isToldTo(reader))
    .filter(({ id }) => id.startsWith(`${question}.`))
    .flatMap(({ message }) => content.contradictions.filter(({ id }) => id === message.args.contradiction));
  if (found.length === 0) return null;
  return (
    <Disclosure title={say('contradictions.title')}>
      <ul className="contradictions">
        {found.map((contradiction) => (
          <li key={contradiction.id}>
            <ContradictionItem contradiction={contradiction} />
          </li>
        ))}
      </ul>
    </Disclosure>
  );
};
