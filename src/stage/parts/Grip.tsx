/**
 * The handle on the break: dragging it along the bone asks "what if it were here". The same is done by a slider in the pages,
 * so the handle itself is hidden from assistive technology.
 */
import { type PointerEvent, useRef, useSyncExternalStore } from 'react';
import { partAxis } from '../../anatomy/parts';
import type { Foot } from '../../anatomy/types';
import type { Session } from '../../session/types';
import type { Engine } from '../engine';
import type { BreakAt } from '../types';

/** Explanations are asked for no oftener than this while dragging. */
const EVERY_MS = 80;
/** Looking along the bone a hand cannot say where. */
const LEAST_PX_PER_MM = 0.4;

interface GripProps {
  readonly engine: Engine;
  readonly session: Session;
  readonly breakAt: BreakAt;
  readonly foot: Foot;
  readonly onDrag: (mm: number) => void;
}

interface Drag {
  readonly x: number;
  readonly y: number;
  readonly startMm: number;
  readonly lengthMm: number;
  asked: number;
  mm: number;
}

export const Grip = ({ engine, session, breakAt, foot, onDrag }: GripProps) => {
  const frame = useSyncExternalStore(engine.subscribe, engine.getFrame);
  const drag = useRef<Drag | null>(null);
  const grip = frame?.overlay.grip ?? null;
  if (frame === null || grip === null) return null;
  const [ax, ay] = grip.pxPerMm;
  const perMm = Math.hypot(ax, ay);
  const inside = grip.at[0] > 0 && grip.at[1] > 0 && grip.at[0] < frame.size.width && grip.at[1] < frame.size.height;
  if (perMm < LEAST_PX_PER_MM || !inside) return null;

  const ask = (mm: number): void => session.commands.setWhatIf({ place: { by: 'distance', mm } });
  const down = (event: PointerEvent<HTMLElement>): void => {
    event.stopPropagation();
    event.currentTarget.setPointerCapture(event.pointerId);
    const { lengthMm } = partAxis(foot, breakAt.bone);
    drag.current = {
      x: event.clientX,
      y: event.clientY,
      startMm: breakAt.sMm,
      lengthMm,
      asked: 0,
      mm: breakAt.sMm,
    };
  };
  const move = (event: PointerEvent<HTMLElement>): void => {
    const d = drag.current;
    if (d === null) return;
    const along = ((event.clientX - d.x) * ax + (event.clientY - d.y) * ay) / perMm ** 2;
    const mm = Math.round(10 * Math.min(d.lengthMm - 1, Math.max(1, d.startMm + along))) / 10;
    if (mm === d.mm) return;
    d.mm = mm;
    onDrag(mm);
    if (event.timeStamp - d.asked < EVERY_MS) return;
    d.asked = event.timeStamp;
    ask(mm);
  };
  const up = (): void => {
    const d = drag.current;
    drag.current = null;
    if (d !== null && d.mm !== d.startMm) ask(d.mm);
  };
  return (
    <div
      className="stage-grip"
      aria-hidden="true"
      style={{ transform: `translate(${grip.at[0]}px, ${grip.at[1]}px)` }}
      onPointerDown={down}
      onPointerMove={move}
      onPointerUp={up}
      onPointerCancel={up}
    >
      <svg viewBox="-20 -20 40 40" width="40" height="40" aria-hidden="true">
        <g transform={`rotate(${(Math.atan2(ay, ax) * 180) / Math.PI})`}>
          <path d="M-20 0l10 -5v10zM20 0l-10 -5v10z" />
        </g>
      </svg>
    </div>
  );
};
