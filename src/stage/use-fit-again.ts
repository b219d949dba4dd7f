/** Fits the picture again after the foot has changed: not under a hand that still holds a slider, and once, when it is done. */
import { useEffect, useRef } from 'react';
import type { Foot } from '../anatomy/types';
import type { Engine } from './engine';

/** Longer than the time between two feet that are made while a key is held down. */
const QUIET_MS = 700;

export const useFitAgain = (engine: Engine | null, foot: Foot, animated: () => boolean): void => {
  const held = useRef(false);
  useEffect(() => {
    const tell =
      (value: boolean) =>
      (event: PointerEvent): void => {
        if (event.isPrimary) held.current = value;
      };
    const [down, up] = [tell(true), tell(false)];
    document.addEventListener('pointerdown', down, true);
    document.addEventListener('pointerup', up, true);
    document.addEventListener('pointercancel', up, true);
    return () => {
      document.removeEventListener('pointerdown', down, true);
      document.removeEventListener('pointerup', up, true);
      document.removeEventListener('pointercancel', up, true);
    };
  }, []);

  const fitted = useRef(foot);
  useEffect(() => {
    if (engine === null || fitted.current === foot) return;
    let timer: ReturnType<typeof setTimeout>;
    const wait = (): void => {
      timer = setTimeout(() => {
        if (held.current) return wait();
        fitted.current = foot;
        engine.fitAgain(animated());
      }, QUIET_MS);
    };
    wait();
    return () => clearTimeout(timer);
  }, [engine, foot, animated]);
};
