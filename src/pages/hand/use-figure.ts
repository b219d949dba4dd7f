/** The figure of the handout and how far it has come: it takes seconds, and a page printed before would have a hole in it. */
import { useCallback, useEffect, useMemo, useState } from 'react';
import { figureMadeOf, stillOf } from '../../telling';
import { type Figure, usePages, useSession } from '../context';

export type FigureState = 'coming' | 'drawn' | 'none';

export interface ShownFigure {
  readonly figure: Figure | null;
  readonly state: FigureState;
  readonly onDone: (drawn: boolean) => void;
}

const COMING = { figure: null, state: 'coming' } as const;

export const useFigure = (): ShownFigure => {
  const { drawFigure, session } = usePages();
  const content = useSession((state) => state.content);
  const explanation = useSession((state) => state.explanation);
  const [figure, setFigure] = useState<Pick<ShownFigure, 'figure' | 'state'>>(COMING);
  const madeOf = useMemo(
    () => (explanation === null ? null : JSON.stringify(figureMadeOf(content, explanation))),
    [content, explanation],
  );
  useEffect(() => {
    // The figure of another explanation is not left standing beside the words of this one; one that would be drawn alike stays, so
    // that a band of the loads that comes late takes no figure off the page.
    setFigure(COMING);
    const { explanation } = session.getState();
    if (madeOf === null || explanation === null) return;
    let gone = false;
    void drawFigure(stillOf(content, explanation, 'where')).then((figure) => {
      if (!gone) setFigure({ figure, state: figure === null ? 'none' : 'coming' });
    });
    return () => {
      gone = true;
    };
  }, [content, madeOf, session, drawFigure]);
  const onDone = useCallback(
    (drawn: boolean) => setFigure(({ figure }) => ({ figure, state: drawn ? 'drawn' : 'none' })),
    [],
  );
  return { ...figure, onDone };
};
