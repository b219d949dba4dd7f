/** Reading a script aloud against the clock: which second it is, which line that is, and the ways to go on, wait and move. */
import { useCallback, useEffect, useRef, useState } from 'react';
import { lineAt, type Script } from '../../telling';

export interface Reading {
  /** Whether somebody reads along; a script that is only looked at has no current line. */
  readonly open: boolean;
  readonly running: boolean;
  readonly second: number;
  /** Index of the line that is being spoken. */
  readonly line: number;
  readonly start: () => void;
  readonly wait: () => void;
  readonly goOn: () => void;
  readonly toLine: (index: number) => void;
  readonly leave: () => void;
}

const EVERY_MS = 200;

/**
 * `of` names the script that is read: when it changes, the reading ends. The same script with a sentence that came later (a band of the
 * loads is worked out for seconds) is the same reading: nobody is thrown out of it in the middle of a line.
 */
export const useReading = ({ lines, totalSeconds }: Script, of: string): Reading => {
  const [open, setOpen] = useState(false);
  const [running, setRunning] = useState(false);
  const [second, setSecond] = useState(0);
  /** Second and moment from which the clock counts. */
  const since = useRef({ second: 0, at: 0 });

  const from = useCallback((next: number) => {
    since.current = { second: next, at: performance.now() };
    setSecond(next);
  }, []);

  useEffect(() => {
    if (!running) return;
    const timer = setInterval(() => {
      const next = since.current.second + (performance.now() - since.current.at) / 1000;
      setSecond(Math.min(next, totalSeconds));
      if (next >= totalSeconds) setRunning(false);
    }, EVERY_MS);
    return () => clearInterval(timer);
  }, [running, totalSeconds]);

  // biome-ignore lint/correctness/useExhaustiveDependencies: the name is when, not what
  useEffect(() => {
    setOpen(false);
    setRunning(false);
    from(0);
  }, [of, from]);

  return {
    open,
    running,
    second,
    line: lineAt(lines, second),
    start: () => {
      from(0);
      setOpen(true);
      setRunning(true);
    },
    wait: () => setRunning(false),
    goOn: () => {
      from(second < totalSeconds ? second : 0);
      setRunning(true);
    },
    toLine: (index) => {
      const line = lines[Math.min(Math.max(index, 0), lines.length - 1)];
      if (line !== undefined) from(line.startSecond);
    },
    leave: () => {
      setRunning(false);
      setOpen(false);
    },
  };
};
