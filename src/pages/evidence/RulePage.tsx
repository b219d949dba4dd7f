/**
 * A rule that decides on a film, as teaching: its steps in words, the places of two of them lit on the foot, how well it was found to
 * work, and a look-up of what it is not for. For those who learn or speak; a patient's screen has none of it.
 */
import { lazy, Suspense } from 'react';
import { usePages, useSession } from '../context';
import { Draft } from '../foot/Draft';
import './evidence.css';

const Body = lazy(async () => ({ default: (await import('./RuleBody')).RuleBody }));

export const RulePage = () => {
  const { say, hrefOf } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  if (reader === 'patient')
    return (
      <>
        <h1 className="question-title" tabIndex={-1}>
          {say('rule.notHere')}
        </h1>
        <p>{say('rule.forOthers')}</p>
        <p>
          <a className="button" href={hrefOf({ page: 'explain' })}>
            {say('bar.explain')}
          </a>
        </p>
      </>
    );
  return (
    <>
      <p className="question-count">{say('rule.kicker')}</p>
      {content.decisionRules.map((rule) => (
        <div key={rule.id} className="rule-page">
          <h1 className="question-title" tabIndex={-1}>
            {rule.term}
          </h1>
          <p className="one-sentence">{rule.what[reader]}</p>
          <p className="small-print">{say('rule.teaching')}</p>
          <Suspense fallback={<p role="status">{say('note.working')}</p>}>
            <Body rule={rule} />
          </Suspense>
        </div>
      ))}
      <Draft file="decision-rules.yaml" />
    </>
  );
};
