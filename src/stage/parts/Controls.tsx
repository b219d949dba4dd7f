/** Everything a hand can do on the picture, as buttons. */
import type { ReactNode } from 'react';
import { type Handled, ZOOM_STEP } from '../use-gestures';
import type { StageSay, StageWord } from '../words';

const TURN_PX = 30;

const Sign = ({ d }: { readonly d: string }): ReactNode => (
  <svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true" focusable="false">
    <path d={d} fill="none" stroke="currentColor" strokeWidth="1.8" strokeLinecap="round" strokeLinejoin="round" />
  </svg>
);

interface ControlsProps {
  readonly engine: Handled;
  readonly say: StageSay;
  readonly onReset: () => void;
}

export const Controls = ({ engine, say, onReset }: ControlsProps) => {
  const list: readonly { readonly word: StageWord; readonly d: string; readonly act: () => void }[] = [
    { word: 'stage.turnLeft', d: 'M16 6.5c-4-2-9-1-11.5 2.500M4 4.500v5h5', act: () => engine.orbit(-TURN_PX, 0) },
    { word: 'stage.turnRight', d: 'M4 6.500c4-2 9-1 11.5 2.500M16 4.500v5h-5', act: () => engine.orbit(TURN_PX, 0) },
    { word: 'stage.turnUp', d: 'M6.5 4c-2 4-1 9 2.5 11.500M4.5 16h5v-5', act: () => engine.orbit(0, TURN_PX) },
    { word: 'stage.turnDown', d: 'M6.5 16c-2-4-1-9 2.5-11.500M4.5 4h5v5', act: () => engine.orbit(0, -TURN_PX) },
    { word: 'stage.closer', d: 'M10 4v12M4 10h12', act: () => engine.zoom(ZOOM_STEP) },
    { word: 'stage.farther', d: 'M4 10h12', act: () => engine.zoom(1 / ZOOM_STEP) },
    { word: 'stage.whole', d: 'M3.5 7.500v-4h4M12.5 3.500h4v4M16.5 12.500v4h-4M7.5 16.500h-4v-4', act: onReset },
  ];
  return (
    <div className="stage-controls">
      {list.map(({ word, d, act }) => (
        <button key={word} type="button" onClick={act} aria-label={say(word)} title={say(word)}>
          <Sign d={d} />
        </button>
      ))}
    </div>
  );
};
