/** The strip under the picture: figure number, side and view in words, controls, scale bar. */
import { type ReactNode, useSyncExternalStore } from 'react';
import type { ViewId } from '../../session/types';
import type { Engine, Frame } from '../engine';
import type { StageSay } from '../words';
import { ScaleBar } from './ScaleBar';

interface FigureFootProps {
  readonly engine: Engine | null;
  readonly say: StageSay;
  readonly figure: number;
  readonly side: string;
  /** How the foot is held, where it is not standing. */
  readonly held: string | null;
  readonly note: string | null;
  readonly children: ReactNode;
}

const NONE: Frame['overlay']['memory']['left'] = [];
const nothing = (): (() => void) => () => undefined;

export const FigureFoot = ({ engine, say, figure, side, held, note, children }: FigureFootProps) => {
  const mmPerPx = useSyncExternalStore(engine?.subscribe ?? nothing, () => engine?.getFrame()?.camera.mmPerPx ?? null);
  const view = useSyncExternalStore<ViewId | null>(
    engine?.subscribe ?? nothing,
    () => engine?.getFrame()?.view ?? null,
  );
  const left = useSyncExternalStore(
    engine?.subscribe ?? nothing,
    () => engine?.getFrame()?.overlay.memory.left ?? NONE,
  );
  return (
    <div className="stage-foot">
      <figcaption>
        <b>{say('stage.figure', { n: figure })}</b> {side}
        {view !== null && `, ${say(`stage.view.${view}`)}`}.{held !== null && <b> {held}.</b>}
        {note !== null && <small> {note}</small>}
        {left.length > 0 && <small> {say('stage.left', { names: left.map(({ text }) => text).join(', ') })}</small>}
      </figcaption>
      {children}
      {mmPerPx !== null && <ScaleBar mmPerPx={mmPerPx} />}
    </div>
  );
};
