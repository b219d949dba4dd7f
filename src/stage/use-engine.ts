/** Makes the engine for a canvas, sizes it with its plate, and lets it go again. */
import { useEffect, useRef, useState } from 'react';
import type { Foot } from '../anatomy/types';
import type { Size } from './camera/camera';
import { Engine } from './engine';

/** `beside`: another foot that every view leaves room for. */
export const useEngine = (surface: HTMLElement | null, foot: Foot, beside: Foot | null = null) => {
  const canvas = useRef<HTMLCanvasElement>(null);
  const [engine, setEngine] = useState<Engine | null>(null);
  const [failed, setFailed] = useState(false);
  const [size, setSize] = useState<Size | null>(null);

  // The first foot makes the engine; later ones are given to it, so that a slider does not start the picture anew.
  const first = useRef({ foot, beside });
  useEffect(() => {
    if (surface === null || canvas.current === null) return;
    let made: Engine;
    try {
      made = new Engine(canvas.current, first.current.foot, first.current.beside);
    } catch {
      // three throws when the browser gives no context; the words stay usable.
      setFailed(true);
      return;
    }
    setEngine(made);
    const lost = (event: Event): void => event.preventDefault();
    const element = canvas.current;
    const restored = (): void => made.redraw();
    element.addEventListener('webglcontextlost', lost);
    element.addEventListener('webglcontextrestored', restored);
    return () => {
      element.removeEventListener('webglcontextlost', lost);
      element.removeEventListener('webglcontextrestored', restored);
      made.dispose();
      // Off the page for good, and not only made anew as React does while developing.
      if (!element.isConnected) made.release();
      setEngine(null);
    };
  }, [surface]);

  useEffect(() => {
    const { foot: now, beside: nowBeside } = first.current;
    if (engine !== null && (now !== foot || nowBeside !== beside)) engine.setFoot(foot, beside);
    first.current = { foot, beside };
  }, [engine, foot, beside]);

  useEffect(() => {
    if (surface === null) return;
    const observer = new ResizeObserver(([entry]) => {
      if (entry === undefined) return;
      const { width, height } = entry.contentRect;
      setSize({ width: Math.round(width), height: Math.round(height) });
    });
    observer.observe(surface);
    return () => observer.disconnect();
  }, [surface]);

  return { engine, failed, size, canvas };
};
