/** The five questions as the divisions of a foot-rule: the navigation, and the one ornament. */
import type { MouseEvent } from 'react';
import { QUESTION_IDS, type QuestionId } from '../../ids';
import { usePages, useSession } from '../context';
import { RuleTicks } from './RuleTicks';

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
              <RuleTicks />
              <span className="rule-number">{index + 1}</span>
              <span className="rule-title">{say(`question.${id}`)}</span>
            </a>
          </li>
        ))}
      </ol>
    </nav>
  );
};
