/** The five questions as the divisions of a foot-rule: the navigation, and the one ornament. */
import type { MouseEvent } from 'react';
import { QUESTION_IDS, type QuestionId } from '../../ids';
import { usePages, useSession } from '../context';

const TICKS = [1, 2, 3, 4, 5, 6, 7] as const;

const Ticks = () => (
  <svg className="rule-ticks" viewBox="0 0 8 1" preserveAspectRatio="none" aria-hidden="true" focusable="false">
    {TICKS.map((x) => (
      <path key={x} d={`M${x} 0V1`} vectorEffect="non-scaling-stroke" />
    ))}
  </svg>
);

export const FootRule = () => {
  const { say, hrefOf, session } = usePages();
  const question = useSession((state) => state.question);
  const follow = (event: MouseEvent, id: QuestionId) => {
    if (event.metaKey || event.ctrlKey || event.shiftKey) return;
    event.preventDefault();
    session.commands.ask(id);
  };
  return (
    <nav className="rule" aria-label={say('rule.label')}>
      <ol>
        {QUESTION_IDS.map((id, index) => (
          <li key={id}>
            <a
              href={hrefOf({ question: id })}
              aria-current={id === question ? 'step' : undefined}
              onClick={(event) => follow(event, id)}
            >
              <Ticks />
              <span className="rule-number">{index + 1}</span>
              <span className="rule-title">{say(`question.${id}`)}</span>
            </a>
          </li>
        ))}
      </ol>
    </nav>
  );
};
