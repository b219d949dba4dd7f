/**
 * Hands and keys on the picture. On touch a vertical stroke scrolls the page until the plate has been tapped (`touch-action`
 * follows focus, see stage.css), so that a phone's page is never trapped; leaving the plate gives the page back. The wheel zooms only while
 * the plate has focus, or with ctrl held (which is what a pinch on a touchpad sends).
 */
import { type KeyboardEvent, type PointerEvent, useEffect, useRef } from 'react';
import { VIEWS, type ViewId } from '../session/types';
import type { Engine, Picked } from './engine';
import type { Pen } from './pen/use-pen';

const KEY_PX = 24;
const CLICK_PX = 5;
export const ZOOM_STEP = 1.25;

export interface Wishes {
  readonly onPick: (picked: Picked | null) => void;
  readonly onLook: (view: ViewId) => void;
  readonly onReset: () => void;
}

/** What hands ask of a picture. */
export type Handled = Pick<Engine, 'orbit' | 'pan' | 'zoom' | 'pick'>;
/** Of the pen, what takes an event away from the hand. */
type PenHand = Pick<Pen, 'down' | 'move' | 'up'>;

interface Touch {
  x: number;
  y: number;
}

/** The foot goes where the arrow points. */
const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** One key of the standards' list. True when it was one of ours. */
export const pressKey = (
  engine: Handled,
  { key, shiftKey }: Pick<KeyboardEvent, 'key' | 'shiftKey'>,
  wishes: Wishes,
): boolean => {
  const arrow = ARROWS[key];
  if (arrow !== undefined) {
    if (shiftKey) engine.pan(arrow[0] * KEY_PX, arrow[1] * KEY_PX);
    else engine.orbit(arrow[0] * KEY_PX, arrow[1] * KEY_PX);
    return true;
  }
  if (key === '+' || key === '=') engine.zoom(ZOOM_STEP);
  else if (key === '-' || key === '_') engine.zoom(1 / ZOOM_STEP);
  else if (key === 'Home') wishes.onReset();
  else {
    const view = /^[1-7]$/.test(key) ? VIEWS[Number(key) - 1] : undefined;
    if (view === undefined) return false;
    wishes.onLook(view);
  }
  return true;
};

export const useGestures = (engine: Handled | null, surface: HTMLElement | null, wishes: Wishes, pen: PenHand) => {
  const touches = useRef(new Map<number, Touch>());
  const travelled = useRef(0);

  useEffect(() => {
    if (engine === null || surface === null) return;
    const onWheel = (event: WheelEvent): void => {
      const focused = surface.contains(document.activeElement);
      if (!focused && !event.ctrlKey) return;
      event.preventDefault();
      const rect = surface.getBoundingClientRect();
      const factor = Math.exp(-event.deltaY * (event.ctrlKey ? 0.01 : 0.0016));
      engine.zoom(factor, event.clientX - rect.left, event.clientY - rect.top);
    };
    surface.addEventListener('wheel', onWheel, { passive: false });
    return () => surface.removeEventListener('wheel', onWheel);
  }, [engine, surface]);

  const onPointerDown = (event: PointerEvent<HTMLElement>): void => {
    if (pen.down(event) || (event.pointerType === 'mouse' && event.button > 2)) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    if (touches.current.size === 0) travelled.current = 0;
    touches.current.set(event.pointerId, { x: event.clientX, y: event.clientY });
  };
  const onPointerMove = (event: PointerEvent<HTMLElement>): void => {
    const touch = touches.current.get(event.pointerId);
    if (pen.move(event)) return;
    if (touch === undefined || engine === null) return;
    const [dx, dy] = [event.clientX - touch.x, event.clientY - touch.y];
    travelled.current += Math.hypot(dx, dy);
    const other = [...touches.current].find(([id]) => id !== event.pointerId)?.[1];
    if (other !== undefined) {
      const before = Math.hypot(touch.x - other.x, touch.y - other.y);
      const after = Math.hypot(event.clientX - other.x, event.clientY - other.y);
      const rect = event.currentTarget.getBoundingClientRect();
      const middle = [(event.clientX + other.x) / 2 - rect.left, (event.clientY + other.y) / 2 - rect.top] as const;
      if (before > 10 && after > 10) engine.zoom(after / before, middle[0], middle[1]);
      engine.pan(dx / 2, dy / 2);
    } else if (travelled.current > CLICK_PX) {
      if (event.shiftKey || (event.buttons & 6) !== 0) engine.pan(dx, dy);
      else engine.orbit(dx, dy);
    }
    touch.x = event.clientX;
    touch.y = event.clientY;
  };
  const onPointerUp = (event: PointerEvent<HTMLElement>): void => {
    if (pen.up(event)) return;
    if (!touches.current.delete(event.pointerId) || touches.current.size > 0 || engine === null) return;
    if (travelled.current > CLICK_PX || event.button !== 0) return;
    const rect = event.currentTarget.getBoundingClientRect();
    wishes.onPick(engine.pick(event.clientX - rect.left, event.clientY - rect.top));
  };
  const onPointerCancel = (event: PointerEvent<HTMLElement>): void => {
    touches.current.delete(event.pointerId);
    pen.up(event);
  };
  const onKeyDown = (event: KeyboardEvent<HTMLElement>): void => {
    if (engine === null || event.altKey || event.ctrlKey || event.metaKey) return;
    if (pressKey(engine, event, wishes)) event.preventDefault();
  };
  return { onPointerDown, onPointerMove, onPointerUp, onPointerCancel, onKeyDown };
};
