/** Two plates of the same view under one hand. Loaded when it is asked for; without a picture the words around it stay. */
import { useCallback, useMemo, useState } from 'react';
import type { Theme, ViewId } from '../../session/types';
import type { Engine } from '../engine';
import { Controls } from '../parts/Controls';
import '../stage.css';
import type { Content } from '../types';
import { stageSay } from '../words';
import { linked } from './linked';
import { PairPlate, type PlateOfPair } from './PairPlate';
import './pair.css';

export interface PairProps {
  readonly plates: readonly [PlateOfPair, PlateOfPair];
  readonly content: Content;
  readonly theme: Theme;
  readonly view: ViewId;
  /** Increases each time the view is asked for. */
  readonly viewTick: number;
  readonly onLook: (view: ViewId) => void;
  /** Id of the text that says how the two differ. */
  readonly describedBy: string;
}

export const Pair = ({ plates, content, theme, view, viewTick, onLook, describedBy }: PairProps) => {
  const say = useMemo(() => stageSay(content.words), [content.words]);
  const [first, setFirst] = useState<Engine | null>(null);
  const [second, setSecond] = useState<Engine | null>(null);
  const inMirror = plates[0].mirrored !== plates[1].mirrored;
  const hands = useMemo(
    () =>
      first === null || second === null
        ? null
        : ([linked(first, second, inMirror), linked(second, first, inMirror)] as const),
    [first, second, inMirror],
  );
  // There is no bone in question to come close to.
  const look = useCallback(
    (to: ViewId) => {
      if (to !== 'close') onLook(to);
    },
    [onLook],
  );
  const shared = { content, theme, say, view, viewTick, describedBy, onLook: look };
  return (
    <>
      <div className="pair-plates">
        <PairPlate
          {...shared}
          plate={plates[0]}
          other={plates[1].foot}
          handled={hands?.[0] ?? null}
          onEngine={setFirst}
        />
        <PairPlate
          {...shared}
          plate={plates[1]}
          other={plates[0].foot}
          handled={hands?.[1] ?? null}
          onEngine={setSecond}
        />
      </div>
      {hands !== null && <Controls engine={hands[0]} say={say} onReset={() => look(view)} />}
    </>
  );
};
