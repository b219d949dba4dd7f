/** Hand it over: paper size, the tick of the one who has read a draft, print. The sheet below is what comes out. */
import { useEffect, useId, useMemo, useState } from 'react';
import { handoutOf, stillOf } from '../../telling';
import { type Figure, usePages, useSession } from '../context';
import { NothingYet, useNothingKnown } from '../parts/NothingYet';
import { ProblemPanel } from '../parts/ProblemPanel';
import { Sheet } from './Sheet';

const PAPERS = ['a4', 'letter'] as const;
type Paper = (typeof PAPERS)[number];

const useFigure = (): Figure | null => {
  const { drawFigure } = usePages();
  const content = useSession((state) => state.content);
  const explanation = useSession((state) => state.explanation);
  const [figure, setFigure] = useState<Figure | null>(null);
  useEffect(() => {
    if (explanation === null) return;
    let gone = false;
    void drawFigure(stillOf(content, explanation, 'where')).then((drawn) => {
      if (!gone) setFigure(drawn);
    });
    return () => {
      gone = true;
    };
  }, [content, explanation, drawFigure]);
  return figure;
};

export const HandoutPage = () => {
  const { say } = usePages();
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
              disabled={handout === null || (draft && !read)}
              onClick={() => window.print()}
            >
              {say('hand.print')}
            </button>
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
