/** Hand it over: paper size, the tick of the one who has read a draft, print. The sheet below is what comes out. */
import { useEffect, useId, useMemo, useState } from 'react';
import { handoutOf } from '../../telling';
import { usePages, useSession } from '../context';
import { useBands } from '../how/use-bands';
import { NothingYet, useNothingKnown } from '../parts/NothingYet';
import { ProblemPanel } from '../parts/ProblemPanel';
import { Sheet } from './Sheet';
import { type FigureState, useFigure } from './use-figure';

const PAPERS = ['a4', 'letter'] as const;
type Paper = (typeof PAPERS)[number];

const FIGURE_WORDS = {
  coming: 'hand.pictureComing',
  drawn: 'hand.pictureDrawn',
  none: 'hand.pictureNone',
} as const satisfies Record<FigureState, string>;

export const HandoutPage = () => {
  const { say } = usePages();
  useBands();
  const content = useSession((state) => state.content);
  const explanation = useSession((state) => state.explanation);
  const [paper, setPaper] = useState<Paper>('a4');
  const [read, setRead] = useState(false);
  const figure = useFigure();
  const id = useId();
  const handout = useMemo(
    () => (explanation === null ? null : handoutOf(content, explanation)),
    [content, explanation],
  );
  useEffect(() => {
    document.documentElement.dataset.paper = paper;
    return () => {
      delete document.documentElement.dataset.paper;
    };
  }, [paper]);
  const nothingKnown = useNothingKnown();
  const draft = handout !== null && handout.draftLine !== null;
  return (
    <div className="hand">
      <section className="hand-controls">
        <ProblemPanel />
        <p className="question-count">{say('hand.kicker')}</p>
        <h1 className="question-title" tabIndex={-1}>
          {say('hand.title')}
        </h1>
        {nothingKnown ? (
          <NothingYet page="hand" />
        ) : (
          <>
            <p>{say('hand.what')}</p>
            <p className="field">
              <label htmlFor={`${id}paper`}>{say('hand.paper')}</label>
              <select
                id={`${id}paper`}
                value={paper}
                onChange={(event) => setPaper(PAPERS.find((each) => each === event.currentTarget.value) ?? 'a4')}
              >
                {PAPERS.map((each) => (
                  <option key={each} value={each}>
                    {say(`hand.${each}`)}
                  </option>
                ))}
              </select>
            </p>
            {draft && (
              <label className="tick">
                <input type="checkbox" checked={read} onChange={(event) => setRead(event.currentTarget.checked)} />{' '}
                {say('hand.read')}
              </label>
            )}
            <button
              type="button"
              className="button button-main"
              disabled={handout === null || figure.state === 'coming' || (draft && !read)}
              onClick={() => window.print()}
            >
              {say('hand.print')}
            </button>
            <p role="status" className="small-print">
              {say(FIGURE_WORDS[figure.state])}
            </p>
            {draft && <p className="small-print">{say('hand.draftNote')}</p>}
          </>
        )}
      </section>
      {nothingKnown ? null : handout === null ? (
        <p>{say('note.working')}</p>
      ) : (
        <Sheet handout={handout} paper={paper} figure={figure} />
      )}
    </div>
  );
};
