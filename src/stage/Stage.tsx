/** The 3D figure: reads the session, sends commands. Loaded lazily; the pages around it work without it. */
import { type ReactNode, useCallback, useEffect, useMemo, useRef, useState, useSyncExternalStore } from 'react';
import type { Angle } from '../anatomy/angles';
import type { Foot } from '../anatomy/types';
import { tappedAt } from '../explain/find';
import { QUESTION_IDS, type RegionId } from '../ids';
import type { Session, SessionState, ViewId } from '../session/types';
import { NARROW_PX } from './camera/framing';
import { openingOf } from './camera/views';
import type { Engine, Picked, Showing } from './engine';
import { OverlaySvg } from './overlay/OverlaySvg';
import { Controls } from './parts/Controls';
import { FigureFoot } from './parts/FigureFoot';
import { Grip } from './parts/Grip';
import { PenTools } from './pen/PenTools';
import { Pointer } from './pen/Pointer';
import { usePen } from './pen/use-pen';
import { showingOf, sideText } from './showing';
import './stage.css';
import { useEngine } from './use-engine';
import { useFitAgain } from './use-fit-again';
import { useGestures } from './use-gestures';
import { useLook } from './use-look';
import { stageSay } from './words';

/** Letters for a patient at arm's length. */
const LARGER = { wide: 1.35, narrow: 1.08 } as const;
/** A plate of this width holds labels of the usual size; larger text makes them larger only where the plate has the room. */
const LEAST_FOR_USUAL_PX = 420;

export interface StageProps {
  readonly session: Session;
  /** A right foot, in any pose. The left foot is its mirror image, made while drawing. */
  readonly foot: Foot;
  /** The measure that was asked for, once it is taken of this foot. */
  readonly measured: Angle | null;
  /** For a patient at arm's length: larger labels, thicker contour, no handle on the break. */
  readonly large?: boolean;
  /** Id of the text that describes the picture. */
  readonly describedBy?: string;
  /** Stands with the controls: the way to the list of keys and gestures. */
  readonly help?: ReactNode;
}

export const Stage = ({ session, foot, measured, large = false, describedBy, help }: StageProps) => {
  const state = useSyncExternalStore(session.subscribe, session.getState);
  const [surface, setSurface] = useState<HTMLDivElement | null>(null);
  const [root, setRoot] = useState<HTMLElement | null>(null);
  const [dragMm, setDragMm] = useState<number | null>(null);
  const { engine, failed, size, canvas } = useEngine(surface, foot);
  const { tokens, measure, textScale } = useLook(surface, state.theme, size);
  const say = useMemo(() => stageSay(state.content.words), [state.content.words]);
  const { question, reader, selectedBone, quiz, content, view, near, viewTick, walkStop, stale, lookAlike, strand } =
    state;
  const { seeking, lit: places } = state;
  const card = content.cards.find(({ id }) => id === seeking?.card) ?? null;
  const parts = seeking?.card === null ? seeking.parts : null;
  const tapped = useMemo(() => tappedParts(content, selectedBone, parts), [content, selectedBone, parts]);
  // The walk is over the plain foot, and so are a search and a page that teaches: nothing of the case stands in its picture.
  const isPlain = walkStop !== null || seeking !== null || places !== null;
  /** Somebody asked for this view of a bone, and comes back to it. */
  const isPosed = walkStop !== null || card !== null || places !== null;
  const inQuiz = quiz !== null;
  const explanation = isPlain ? null : state.explanation;
  const narrow = size !== null && size.width < NARROW_PX;
  const larger = Math.max(
    large ? LARGER[narrow ? 'narrow' : 'wide'] : 1,
    Math.min((size?.width ?? 0) / LEAST_FOR_USUAL_PX, textScale),
  );
  /** A patient at arm's length is shown few names and no Latin; so is a plate without the room for more. */
  const crowded = large || (size !== null && size.width < NARROW_PX * larger);

  const showing = useMemo(() => {
    if (tokens === null || measure === null) return null;
    const labelPx = (narrow ? 14 : 15) * larger;
    const contourPx = large ? 2.6 : 1.9;
    return showingOf({
      foot,
      content,
      explanation,
      question,
      reader,
      selectedBone,
      quiz,
      lit: places ?? tapped,
      dragMm,
      measured,
      lookAlike,
      strand,
      card,
      tokens,
      measure,
      labelPx,
      contourPx,
      narrow: crowded,
    });
  }, [
    foot,
    content,
    explanation,
    question,
    reader,
    selectedBone,
    quiz,
    places,
    tapped,
    dragMm,
    measured,
    lookAlike,
    strand,
    card,
    tokens,
    measure,
    narrow,
    crowded,
    larger,
    large,
  ]);

  // The hand's preview ends when the explanation has caught up with it.
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is the new explanation that ends the preview
  useEffect(() => setDragMm(null), [explanation]);

  useBreakSign(engine, session);
  useReady(root, engine, isPlain || (explanation !== null && !stale), showing);

  useEffect(() => {
    if (engine === null || size === null || showing === null) return;
    engine.show(showing);
    engine.setSize(size);
  }, [engine, size, showing]);

  const animated = useCallback(() => !matchMedia('(prefers-reduced-motion: reduce)').matches, []);
  const look = useCallback(
    (to: ViewId, nearBone?: boolean) => engine?.look(to, animated(), nearBone),
    [engine, animated],
  );
  const lit = quiz?.litBone ?? null;
  const own = inQuiz ? { view: 'outer' as const, near: false } : openingOf(question, explanation, narrow);
  const opening = isPosed ? view : own.view;
  const opensNear = isPosed || own.near;
  // What is asked about must be in sight.
  const open = useCallback(
    () => look(lit === null ? opening : (engine?.viewOf(lit) ?? opening), opensNear || undefined),
    [look, opening, opensNear, lit, engine],
  );

  // Each question opens with its own view; a named view asked for by command goes before it until the next question.
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new question moves even where both open alike; the quiz takes the labels' room and gives it back
  useEffect(open, [open, question, inQuiz]);
  const lastTick = useRef(viewTick);
  useEffect(() => {
    if (lastTick.current === viewTick) return;
    lastTick.current = viewTick;
    look(view, near || undefined);
  }, [look, view, near, viewTick]);

  useFitAgain(engine, foot, animated);
  // Lines that come later than their view, as they are measured on another foot, are brought onto the plate as well.
  const measuredId = measured?.id ?? null;
  useEffect(() => {
    if (measuredId !== null) engine?.fitAgain(animated());
  }, [engine, measuredId, animated]);

  const wishes = useMemo(
    () => ({
      onPick: (picked: Picked | null) => {
        const { quiz: asking, seeking: search } = session.getState();
        const bone = picked?.bone ?? null;
        if (asking?.picking === true) {
          if (bone !== null) session.commands.pickForQuiz(bone);
        } else if (picked === null || search === null) session.commands.selectBone(bone);
        else session.commands.selectBone(bone, tappedAt(foot, content, picked.bone, picked.point));
      },
      onLook: (to: ViewId) => session.commands.lookFrom(to),
      onReset: open,
    }),
    [session, open, foot, content],
  );
  const pen = usePen(engine, `${state.caseTick} ${isPlain} ${seeking?.card}`);
  useEffect(() => engine?.setStrokes(pen.strokes), [engine, pen.strokes]);
  const gestures = useGestures(engine, surface, wishes, pen);
  const figure = walkStop !== null ? walkStop + 1 : seeking === null ? QUESTION_IDS.indexOf(question) + 1 : 1;

  return (
    <figure className="stage" ref={setRoot} data-ready="false" data-large={large || undefined}>
      <div
        className="stage-picture"
        ref={setSurface}
        role="application"
        aria-label={`${say('stage.label')}. ${say('stage.keys')}`}
        aria-describedby={describedBy}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the picture takes the keys of the standards while it has focus
        tabIndex={0}
        data-tool={pen.tool}
        {...gestures}
      >
        {failed ? (
          <p className="stage-none">{say('stage.noPicture')}</p>
        ) : (
          <>
            <canvas ref={canvas} className="stage-canvas" />
            {engine !== null && <Overlay engine={engine} caseShown={explanation !== null} />}
            {pen.tool === 'pointer' && <Pointer surface={surface} />}
          </>
        )}
      </div>
      {engine !== null && !large && quiz === null && question === 'where' && explanation?.breakAt != null && (
        <Grip engine={engine} session={session} breakAt={explanation.breakAt} foot={foot} onDrag={setDragMm} />
      )}
      <FigureFoot
        engine={engine}
        say={say}
        figure={figure}
        side={isPlain ? say('stage.plain') : sideText(explanation, say)}
        held={foot.pose === 'standing' ? null : say(`foot.pose.${foot.pose}`)}
        note={narrow ? null : say('stage.outlineNote')}
      >
        {help}
        {engine !== null && <PenTools pen={pen} say={say} />}
        {engine !== null && <Controls engine={engine} say={say} onReset={wishes.onReset} />}
      </FigureFoot>
    </figure>
  );
};

/** The parts of a bone where it was tapped, as places to light; null where only the bone is known. */
const tappedParts = (
  { regions }: SessionState['content'],
  bone: SessionState['selectedBone'],
  parts: readonly RegionId[] | null,
): SessionState['lit'] => {
  const tiling = (parts ?? []).filter((part) => regions.some(({ id, kind }) => id === part && kind === 'zone'));
  return bone === null || tiling.length === 0 ? null : tiling.map((region) => ({ bone, region }));
};

/** Labels of a case that is no longer open are gone with it, and not only when the next frame is drawn. */
const Overlay = ({ engine, caseShown }: { readonly engine: Engine; readonly caseShown: boolean }) => {
  const frame = useSyncExternalStore(engine.subscribe, engine.getFrame);
  if (frame === null) return null;
  const ofCase = frame.showing.scene.explanation !== null;
  if (ofCase && !caseShown) return null;
  const { marks, labels, gone } = frame.overlay;
  return <OverlaySvg marks={marks} labels={labels} gone={gone} colours={frame.tokens.colours} />;
};

/** What the key beside the picture has to show, told to those who draw it. */
const useBreakSign = (engine: Engine | null, session: Session): void => {
  useEffect(() => {
    if (engine === null) return;
    const tell = (): void => {
      const sign = engine.frame?.breakSign ?? null;
      if (session.getState().breakSign !== sign) session.commands.drewBreak(sign);
    };
    tell();
    return engine.subscribe(tell);
  }, [engine, session]);
};

/** Attributes that tests wait for: `data-ready` once the fine frame of what is now asked for is on the screen. */
const useReady = (root: HTMLElement | null, engine: Engine | null, current: boolean, showing: Showing | null): void => {
  useEffect(() => {
    if (root === null || engine === null) return;
    const tell = (): void => {
      const { frame } = engine;
      if (frame !== null) {
        root.dataset.frames = String(frame.count);
        root.dataset.triangles = String(frame.triangles);
        root.dataset.drawCalls = String(frame.calls);
      }
      root.dataset.ready = String(current && frame?.atRest === true && frame.showing === showing);
    };
    tell();
    return engine.subscribe(tell);
  }, [root, engine, current, showing]);
};
