/** Fetches two feet and the drawing of both, when it is asked for. A picture never stands under the words of another foot. */
import { lazy, type ReactNode, Suspense, useEffect, useState, useSyncExternalStore } from 'react';
import type { Foot } from '../anatomy/types';
import type { PlatePair } from '../pages';
import type { Session } from '../session/types';
import type { Feet } from './feet';
import { StageGuard } from './StageGuard';

const Pair = lazy(async () => ({ default: (await import('../stage/pair')).Pair }));

interface PairFigureProps {
  readonly session: Session;
  readonly feet: Feet;
  readonly pair: PlatePair;
  readonly waiting: ReactNode;
  readonly none: ReactNode;
}

type Made = { readonly of: string; readonly feet: readonly [Foot, Foot] | 'failed' };

const useFeet = ({ standing }: Feet, { plates: [first, second] }: PlatePair): Made['feet'] | null => {
  const [made, setMade] = useState<Made | null>(null);
  const of = JSON.stringify([first.parameters, second.parameters]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the shapes are in the key
  useEffect(() => {
    let live = true;
    Promise.all([standing(first.parameters), standing(second.parameters)]).then(
      (feet) => {
        if (live) setMade({ of, feet });
      },
      (failure: unknown) => {
        console.warn(failure);
        if (live) setMade({ of, feet: 'failed' });
      },
    );
    return () => {
      live = false;
    };
  }, [standing, of]);
  return made?.of === of ? made.feet : null;
};

export const PairFigure = ({ session, feet, pair, waiting, none }: PairFigureProps) => {
  const { content, theme } = useSyncExternalStore(session.subscribe, session.getState);
  const both = useFeet(feet, pair);
  if (both === null) return waiting;
  if (both === 'failed') return none;
  const { plates, ...rest } = pair;
  return (
    <StageGuard instead={none} what="pair" foot={both[0]}>
      <Suspense fallback={waiting}>
        <Pair
          key={both.map(({ parameters }) => JSON.stringify(parameters)).join(' ')}
          {...rest}
          content={content}
          theme={theme}
          plates={[
            { ...plates[0], foot: both[0] },
            { ...plates[1], foot: both[1] },
          ]}
        />
      </Suspense>
    </StageGuard>
  );
};
