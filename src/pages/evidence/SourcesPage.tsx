/**
 * Where everything comes from: what the marks mean, then each source in use with what rests on it, where sources disagree, and what was
 * counted of troubles. The head stands at once; what is under it is no part of a first visit.
 */
import { lazy, Suspense } from 'react';
import { usePages, useSession } from '../context';
import { MARK_NAMES } from './mark-names';
import './evidence.css';

const Body = lazy(async () => ({ default: (await import('./SourcesBody')).SourcesBody }));

export const SourcesPage = () => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const draft = Object.values(content.reviews).some((review) => review.state !== 'reviewed');
  return (
    <div className="evidence">
      <p className="question-count">{say('evidence.kicker')}</p>
      <h1 className="question-title" tabIndex={-1}>
        {say('evidence.title')}
      </h1>
      <p className="one-sentence">{say('evidence.what')}</p>
      <dl className="evidence-marks">
        {MARK_NAMES.map((mark) => (
          <div key={mark}>
            <dt>{say(`mark.${mark}`)}</dt>
            <dd>{say(`evidence.mark.${mark}`)}</dd>
          </div>
        ))}
      </dl>
      {draft && <p className="small-print">{say('note.draft')}</p>}
      <Suspense fallback={<p role="status">{say('note.working')}</p>}>
        <Body />
      </Suspense>
    </div>
  );
};
