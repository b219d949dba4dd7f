/** The pen's strokes while somebody explains: kept in this picture only, gone with the case, never saved. */
import { type PointerEvent, useEffect, useRef, useState } from 'react';
import type { Engine } from '../engine';
import type { PenPoint, PenStroke } from './stroke';

export const TOOLS = ['hand', 'pointer', 'pen'] as const;
export type Tool = (typeof TOOLS)[number];

export interface Pen {
  readonly tool: Tool;
  readonly setTool: (tool: Tool) => void;
  readonly strokes: readonly PenStroke[];
  readonly undo: () => void;
  readonly wipe: () => void;
  /** True when the pen took the event. */
  readonly down: (event: PointerEvent<HTMLElement>) => boolean;
  readonly move: (event: PointerEvent<HTMLElement>) => boolean;
  readonly up: (event: PointerEvent<HTMLElement>) => boolean;
}

/** `of`: what the strokes belong to; with another one they go. */
export const usePen = (engine: Engine | null, of: string): Pen => {
  const [tool, setTool] = useState<Tool>('hand');
  const [strokes, setStrokes] = useState<readonly PenStroke[]>([]);
  const hand = useRef<{ readonly id: number; pieces: PenPoint[][]; off: boolean } | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another case, another sheet
  useEffect(() => setStrokes([]), [of]);

  const add = (event: PointerEvent<HTMLElement>): void => {
    const stroke = hand.current;
    if (stroke === null || engine === null) return;
    const rect = event.currentTarget.getBoundingClientRect();
    const point = engine.pointAt(event.clientX - rect.left, event.clientY - rect.top);
    if (point === null) {
      stroke.off = true;
      return;
    }
    if (stroke.off || stroke.pieces.length === 0) stroke.pieces.push([]);
    stroke.off = false;
    stroke.pieces.at(-1)?.push(point);
    const now = stroke.pieces.map((piece) => [...piece]);
    setStrokes((before) => [...before.slice(0, -1), now]);
  };
  return {
    tool,
    setTool,
    strokes,
    undo: () => setStrokes((before) => before.slice(0, -1)),
    wipe: () => setStrokes([]),
    down: (event) => {
      if (tool !== 'pen' || event.button !== 0 || hand.current !== null) return tool === 'pen';
      event.currentTarget.setPointerCapture(event.pointerId);
      hand.current = { id: event.pointerId, pieces: [], off: true };
      setStrokes((before) => [...before, []]);
      add(event);
      return true;
    },
    move: (event) => {
      if (hand.current?.id === event.pointerId) add(event);
      return tool === 'pen';
    },
    up: (event) => {
      if (hand.current?.id !== event.pointerId) return tool === 'pen';
      // A stroke that never met a bone is none.
      if (hand.current.pieces.every((piece) => piece.length < 2)) setStrokes((before) => before.slice(0, -1));
      hand.current = null;
      return true;
    },
  };
};
