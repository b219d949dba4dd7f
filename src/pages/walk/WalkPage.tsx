/**
 * A walk from heel to toe, at the walker's own pace: ten stops over the plain foot, one sentence each. The words go on where the
 * picture cannot be drawn.
 */
import { useEffect } from 'react';
import { sourceLine } from '../../wording';
import { usePages, useSession } from '../context';
import { Draft } from '../foot/Draft';
import { boneName } from '../note/BoneList';
import { PageLink } from '../parts/Bar';
import { thenHeading } from '../parts/focus-onward';
import { PressButton } from '../parts/PressButton';
import { useWalkKeys } from './use-walk-keys';

export const WalkPage = () => {
  const { say, session, go } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  const at = useSession((state) => state.walkStop) ?? 0;
  const empty = useSession((state) => state.file.claims.length === 0);
  const { walkTo } = session.commands;
  useEffect(() => {
    walkTo(0);
    return () => walkTo(null);
  }, [walkTo]);
  const leave = () => go({ page: empty ? 'start' : 'explain' });
  const step = (by: 1 | -1) => {
    if (content.walk[at + by] !== undefined) walkTo(at + by);
  };
  useWalkKeys({ onNext: () => step(1), onBack: () => step(-1), onLeave: leave });
  const stop = content.walk[at];
  const bone = content.bones.find(({ id }) => id === stop?.bone);
  if (stop === undefined || bone === undefined) return null;
  const last = at === content.walk.length - 1;
  const source = content.sources.find(({ id }) => id === stop.evidence.source);
  return (
    <>
      <p className="question-count">{say('walk.count', { number: at + 1, of: content.walk.length })}</p>
      <div aria-live="polite">
        <h1 className="question-title" tabIndex={-1}>
          {boneName(bone, reader)}
        </h1>
        {reader === 'study' && (
          <p className="latin" lang="la">
            {bone.latin}
          </p>
        )}
        <p className="one-sentence">{stop.what[reader]}</p>
      </div>
      <p className="small-print">{source === undefined ? say('walk.practice') : sourceLine(source)}</p>
      <div className="row walk-steps">
        <PressButton off={at === 0} onPress={() => step(-1)}>
          {say('walk.back')}
        </PressButton>
        {last ? (
          <PageLink page="ask" className="button-main">
            {say('walk.quiz')}
          </PageLink>
        ) : (
          <button ref={thenHeading} type="button" className="button button-main" onClick={() => step(1)}>
            {say('walk.next')}
          </button>
        )}
        <button type="button" className="button" onClick={leave}>
          {say('walk.leave')}
        </button>
      </div>
      <p className="small-print">{say('walk.keys')}</p>
      <Draft file="walk.yaml" />
    </>
  );
};
