/** Puts the screens, the 3D figure and the makers of pictures together. */
import { lazy, type ReactNode, Suspense, useCallback, useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import type { Angle } from '../anatomy/angles';
import type { Foot } from '../anatomy/types';
import type { Side } from '../ids';
import { DEMOS, HelpButton, makeSay, PagesProvider, type PagesValue, PICTURE_WORDS_ID, Rescue, Shell } from '../pages';
import type { Session } from '../session/types';
import type { Still } from '../telling';
import { bodyNotes } from '../wording';
import { useAddress } from './address';
import { demoCase } from './demos';
import type { Feet } from './feet';
import { PairFigure } from './PairFigure';
import { StageGuard } from './StageGuard';

// Asked for at once, so that the figure's code arrives while the model file and the explanation are still on their way. A
// failure is met where the figure is drawn; lazy asks again then.
const early = import('../stage').catch(() => null);
const Stage = lazy(async () => ({ default: ((await early) ?? (await import('../stage'))).Stage }));

/** How long a short message stays, ms: about the time to read it twice. */
const MESSAGE_MS = 6000;

interface FigureProperties {
  readonly session: Session;
  readonly feet: Feet;
  readonly foot: Foot | null;
  readonly large: boolean;
  readonly what: string;
  readonly waiting: ReactNode;
  readonly none: ReactNode;
}

const nothing = (): (() => void) => () => undefined;

/** Lines of a measure lie on the foot they were taken of: while another is measured there are none. */
const useMeasured = (session: Session, { measures }: Feet): Angle | null => {
  const asked = useSyncExternalStore(session.subscribe, () => session.getState().angle);
  const { angles, state } = useSyncExternalStore(asked === null ? nothing : measures.follow, measures.get);
  return state === 'current' ? (angles.find(({ id }) => id === asked) ?? null) : null;
};

const Figure = ({ session, feet, foot, large, what, waiting, none }: FigureProperties) => {
  const measured = useMeasured(session, feet);
  return foot === null ? (
    waiting
  ) : (
    <StageGuard instead={none} what={what} foot={foot}>
      <Suspense fallback={waiting}>
        <Stage
          session={session}
          foot={foot}
          measured={measured}
          large={large}
          describedBy={PICTURE_WORDS_ID}
          help={large ? null : <HelpButton />}
        />
      </Suspense>
    </StageGuard>
  );
};

const usePictures = (session: Session, feet: Feet) => {
  /** Every telling is made of the case alone: on the standing foot of its explanation, whatever is tried on the screen. */
  const input = useCallback(
    async (text: Still) => {
      const { content, explanation, reader } = session.getState();
      if (explanation === null) return null;
      const foot = await feet.standing(explanation.foot);
      return { foot, content, explanation, reader, text, question: text.question };
    },
    [session, feet],
  );
  const orNothing = useCallback(async <T,>(draw: () => Promise<T | null>): Promise<T | null> => {
    try {
      return await draw();
    } catch (failure) {
      console.warn(failure);
      return null;
    }
  }, []);
  const drawStill = useCallback(
    (text: Still) =>
      orNothing(async () => {
        const given = await input(text);
        return given === null ? null : (await import('../render')).renderStill(given);
      }),
    [input, orNothing],
  );
  const drawFigure = useCallback(
    (text: Still) =>
      orNothing(async () => {
        const given = await input(text);
        return given === null ? null : (await import('../render')).renderFigure(given);
      }),
    [input, orNothing],
  );
  const saveModel = useCallback(
    (kind: 'glb' | 'stl', side: Side | null) =>
      orNothing(async () => {
        const { content, whatIf: tried } = session.getState();
        const [notes, whatIf] = [bodyNotes(content), Object.keys(tried).length > 0];
        const foot = await feet.exact();
        return (await import('../render')).modelFile({ kind, foot, side, whatIf, notes });
      }),
    [session, feet, orNothing],
  );
  return { drawStill, drawFigure, saveModel };
};

export const App = ({ session, feet }: { readonly session: Session; readonly feet: Feet }) => {
  const { address, go, hrefOf } = useAddress(session);
  const foot = useSyncExternalStore(feet.subscribe, feet.getFoot);
  const say = useMemo(() => makeSay(session.getState().content.words), [session]);
  const { drawStill, drawFigure, saveModel } = usePictures(session, feet);
  const [message, setMessage] = useState('');
  const [help, setHelp] = useState(false);
  useEffect(() => {
    if (message === '') return;
    const timer = setTimeout(() => setMessage(''), MESSAGE_MS);
    return () => clearTimeout(timer);
  }, [message]);
  const value: PagesValue = {
    session,
    say,
    address,
    go,
    hrefOf,
    announce: setMessage,
    stage: (
      <Figure
        session={session}
        feet={feet}
        foot={foot}
        large={address.page === 'show'}
        what={address.question}
        waiting={<div className="plate-waiting" />}
        none={
          <div className="plate-waiting">
            <p>{say('stage.noPicture')}</p>
          </div>
        }
      />
    ),
    plates: (pair) => (
      <PairFigure
        session={session}
        feet={feet}
        pair={pair}
        waiting={<p className="pair-waiting">{say('pair.drawing')}</p>}
        none={<p className="pair-waiting">{say('pair.noFeet')}</p>}
      />
    ),
    measureFoot: feet.film,
    foot,
    measures: feet.measures,
    drawStill,
    drawFigure,
    saveModel,
    help,
    setHelp,
    demoCase: (id) => {
      const demo = DEMOS.find((each) => each === id);
      return demo === undefined ? null : demoCase(demo);
    },
  };
  return (
    <Rescue session={session} say={say}>
      <PagesProvider value={value}>
        <Shell message={message} />
      </PagesProvider>
    </Rescue>
  );
};
