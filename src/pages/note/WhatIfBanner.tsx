/** A what-if never looks like the case: it says so above everything, and one button drops it. */
import { usePages, useSession } from '../context';
import { SideBySide } from '../pair/SideBySide';
import { thenHeading } from '../parts/focus-onward';

export const WhatIfBanner = () => {
  const { say, session, go } = usePages();
  const whatIf = useSession((state) => state.whatIf);
  if (Object.keys(whatIf).length === 0) return null;
  return (
    <section ref={thenHeading} className="what-if-banner" aria-label={say('whatIf.tag')}>
      <p>
        <b className="what-if-tag">{say('whatIf.tag')}</b> {say('whatIf.what')}
      </p>
      <div className="row">
        <button type="button" className="button button-main" onClick={() => session.commands.dropWhatIf()}>
          {say('whatIf.drop')}
        </button>
        <button type="button" className="button" onClick={() => go({ page: 'known' })}>
          {say('whatIf.keep')}
        </button>
        {(whatIf.foot !== undefined || whatIf.footShape !== undefined) && <SideBySide />}
      </div>
    </section>
  );
};
