/** One of two pictures: the plain foot, drawn as on the stage, with its side, its scale and the lines of a measure. */
import { type ReactNode, useCallback, useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import type { Angle } from '../../anatomy/angles';
import type { Foot } from '../../anatomy/types';
import type { Theme, ViewId } from '../../session/types';
import { degrees } from '../../units';
import type { Engine, Showing } from '../engine';
import { OverlaySvg } from '../overlay/OverlaySvg';
import { ScaleBar } from '../parts/ScaleBar';
import { NOTHING_ASKED, showingOf } from '../showing';
import type { Content } from '../types';
import { useEngine } from '../use-engine';
import { type Handled, useGestures } from '../use-gestures';
import { useLook } from '../use-look';
import type { StageSay } from '../words';

export interface PlateOfPair {
  /** A right foot; drawn as its mirror image when `mirrored`. */
  readonly foot: Foot;
  readonly mirrored: boolean;
  /** The letter of the side, as it is put on films. */
  readonly letter: string;
  /** What the picture is, in a few words. */
  readonly name: string;
  /** The same with its stamp and the side in words. */
  readonly caption: ReactNode;
  readonly whatIf: boolean;
  readonly measured: Angle | null;
}

interface PairPlateProps {
  readonly plate: PlateOfPair;
  /** The foot in the other picture: both are framed alike, so that they have one scale. */
  readonly other: Foot;
  readonly content: Content;
  readonly theme: Theme;
  readonly say: StageSay;
  readonly view: ViewId;
  readonly viewTick: number;
  readonly describedBy: string;
  readonly handled: Handled | null;
  readonly onEngine: (engine: Engine | null) => void;
  readonly onLook: (view: ViewId) => void;
}

/** Nobody draws on these. */
const NO_PEN = { down: () => false, move: () => false, up: () => false };
const LABEL_PX = 15;
const CONTOUR_PX = 1.9;

const useShowing = (
  { foot, mirrored, measured }: PlateOfPair,
  content: Content,
  { tokens, measure }: ReturnType<typeof useLook>,
): Showing | null =>
  useMemo(() => {
    if (tokens === null || measure === null) return null;
    const whole = showingOf({
      ...NOTHING_ASKED,
      foot,
      content,
      measured,
      tokens,
      measure,
      labelPx: LABEL_PX,
      contourPx: CONTOUR_PX,
      narrow: true,
    });
    // Shapes are compared here: names in both margins would leave the feet no room.
    return { ...whole, labels: [], mirrored };
  }, [foot, mirrored, measured, content, tokens, measure]);

/** Attributes that tests wait for and read. */
const useTold = (root: HTMLElement | null, engine: Engine | null, showing: Showing | null): void => {
  useEffect(() => {
    if (root === null || engine === null) return;
    const tell = (): void => {
      const { frame } = engine;
      if (frame !== null) {
        root.dataset.azimuth = degrees(frame.camera.azimuthRad).toFixed(1);
        root.dataset.mmPerPx = frame.camera.mmPerPx.toFixed(4);
        root.dataset.frames = String(frame.count);
      }
      root.dataset.ready = String(frame?.atRest === true && frame.showing === showing);
    };
    tell();
    return engine.subscribe(tell);
  }, [root, engine, showing]);
};

export const PairPlate = (props: PairPlateProps) => {
  const { plate, other, content, theme, say, view, viewTick, describedBy, handled, onEngine, onLook } = props;
  const [surface, setSurface] = useState<HTMLDivElement | null>(null);
  const [root, setRoot] = useState<HTMLElement | null>(null);
  const { engine, failed, size, canvas } = useEngine(surface, plate.foot, other);
  const showing = useShowing(plate, content, useLook(surface, theme, size));

  useEffect(() => onEngine(engine), [engine, onEngine]);
  useEffect(() => {
    if (engine === null || size === null || showing === null) return;
    engine.show(showing);
    engine.setSize(size);
  }, [engine, size, showing]);
  useTold(root, engine, showing);

  const open = useCallback(
    () => engine?.look(view, !matchMedia('(prefers-reduced-motion: reduce)').matches),
    [engine, view],
  );
  // biome-ignore lint/correctness/useExhaustiveDependencies: the same side can be asked for again
  useEffect(open, [open, viewTick]);

  const wishes = useMemo(() => ({ onPick: () => undefined, onLook, onReset: () => onLook(view) }), [onLook, view]);
  const gestures = useGestures(handled, surface, wishes, NO_PEN);

  return (
    <figure className="stage pair-plate" ref={setRoot} data-ready="false" data-what-if={plate.whatIf || undefined}>
      <figcaption>{plate.caption}</figcaption>
      <div
        className="stage-picture"
        ref={setSurface}
        role="application"
        aria-label={`${plate.name}. ${say('pair.keys')}`}
        aria-describedby={describedBy}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the picture takes the keys of the standards while it has focus
        tabIndex={0}
        {...gestures}
      >
        {failed ? (
          <p className="stage-none">{say('pair.noPicture')}</p>
        ) : (
          <>
            <canvas ref={canvas} className="stage-canvas" />
            {engine !== null && <Overlay engine={engine} />}
            <span className="pair-letter" aria-hidden="true">
              {plate.letter}
            </span>
          </>
        )}
      </div>
      {engine !== null && <PlateFoot engine={engine} say={say} />}
    </figure>
  );
};

const Overlay = ({ engine }: { readonly engine: Engine }) => {
  const frame = useSyncExternalStore(engine.subscribe, engine.getFrame);
  if (frame === null) return null;
  const { marks, labels, gone } = frame.overlay;
  return <OverlaySvg marks={marks} labels={labels} gone={gone} colours={frame.tokens.colours} />;
};

const PlateFoot = ({ engine, say }: { readonly engine: Engine; readonly say: StageSay }) => {
  const frame = useSyncExternalStore(engine.subscribe, engine.getFrame);
  if (frame === null) return null;
  return (
    <div className="stage-foot">
      <span className="pair-view">{say(frame.view === null ? 'pair.turned' : `stage.view.${frame.view}`)}</span>
      <ScaleBar mmPerPx={frame.camera.mmPerPx} />
    </div>
  );
};
