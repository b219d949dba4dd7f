/** Fetches two feet and the drawing of both, when it is asked for. A picture never stands under the words of another foot. */
import { lazy, type ReactNode, Suspense, useEffect, useState, useSyncExternalStore } from 'react';
import type { Foot, FootParameters } from '../anatomy/types';
import type { PlatePair } from '../pages';
import type { Session } from '../session/types';
import type { Feet } from './feet';
import { wantedOf } from './kept';
import { StageGuard } from './StageGuard';

const Pair = lazy(async () => ({ default: (await import('../stage/pair')).Pair }));

interface PairFigureProps {
  readonly session: Session;
  readonly feet: Feet;
  readonly pair: PlatePair;
  readonly waiting: ReactNode;
  readonly none: ReactNode;
}

type Made = { readonly of: string; readonly foot: Foot | 'failed' };

const keyOf = (parameters: FootParameters): string => wantedOf(parameters, 'standing').key;

/** The standing foot of these parameters; until it is built the one in the picture, where that is a preview of it. */
const useStanding = (feet: Feet, parameters: FootParameters): Foot | 'failed' | null => {
  const { standing } = feet;
  const shown = useSyncExternalStore(feet.subscribe, feet.getFoot);
  const [made, setMade] = useState<Made | null>(null);
  const of = keyOf(parameters);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the parameters are in the key
  useEffect(() => {
    let live = true;
    const tell = (foot: Foot | 'failed'): void => {
      if (live) setMade({ of, foot });
    };
    standing(parameters).then(tell, (failure: unknown) => {
      console.warn(failure);
      tell('failed');
    });
    return () => {
      live = false;
    };
  }, [standing, of]);
  if (made?.of === of) return made.foot;
  return shown !== null && shown.pose === 'standing' && keyOf(shown.parameters) === of ? shown : null;
};

export const PairFigure = ({ session, feet, pair, waiting, none }: PairFigureProps) => {
  const { content, theme } = useSyncExternalStore(session.subscribe, session.getState);
  const { plates, ...rest } = pair;
  const first = useStanding(feet, plates[0].parameters);
  const second = useStanding(feet, plates[1].parameters);
  if (first === 'failed' || second === 'failed') return none;
  if (first === null || second === null) return waiting;
  return (
    <StageGuard instead={none} what="pair" foot={first}>
      <Suspense fallback={waiting}>
        <Pair
          key={`${keyOf(first.parameters)} ${keyOf(second.parameters)}`}
          {...rest}
          content={content}
          theme={theme}
          plates={[
            { ...plates[0], foot: first },
            { ...plates[1], foot: second },
          ]}
        />
      </Suspense>
    </StageGuard>
  );
};
