/**
 * Keeps a session's case in a storage: a little after each change of the case, at once when the page is hidden. Brings it back
 * at the start, and gives it up when its time is over. A tab that finds a newer save of another tab stops saving and says so.
 */
import * as v from 'valibot';
import { readCase, writeCase } from '../cases';
import { type CaseStorage, type Kept, keptSchema, type WipeReport } from './case-storage';
import { isPastItsTime, KEPT_FOR_MS } from './kept-time';
import { reasonOf, sessionProblem } from './session-problems';
import { reaching } from './state-reach';
import type { Problem, SessionState } from './types';

export const SAVE_AFTER_MS = 400;

/** What autosave may do to a session. */
export interface Saved {
  readonly getState: () => SessionState;
  readonly restore: (kept: Kept, file: SessionState['file']) => void;
  readonly report: (problem: Problem) => void;
  /** The time of the case is over. */
  readonly expire: () => void;
}

export interface Autosave {
  /** True when a case was brought back. */
  readonly restored: Promise<boolean>;
  /** The case, or the wish to keep it, has changed. */
  readonly changed: () => void;
  readonly flush: () => Promise<void>;
  /** Stops waiting saves, waits for one under way, then empties everything. */
  readonly wipe: () => Promise<WipeReport>;
  readonly close: () => void;
}

const keptOf = (state: SessionState): Kept => {
  const { file, ...rest } = reaching('browser', state);
  return { ...rest, caseText: writeCase(file) };
};

export const autosave = (saved: Saved, storage: CaseStorage, now: () => number): Autosave => {
  let saveTimer: ReturnType<typeof setTimeout> | undefined;
  let expiryTimer: ReturnType<typeof setTimeout> | undefined;
  let due = false;
  let overtaken = false;
  let toldNotKept = false;
  let changedAtMs: number | null = null;
  let underWay: Promise<void> = Promise.resolve();

  const save = async (): Promise<void> => {
    if (!due) return;
    due = false;
    if (overtaken) return saved.report(sessionProblem('newerElsewhere'));
    const outcome = await storage.save(keptOf(saved.getState()));
    if (outcome.ok) return;
    if (outcome.reason === 'newer elsewhere') {
      overtaken = true;
      saved.report(sessionProblem('newerElsewhere'));
    } else if (!toldNotKept) {
      toldNotKept = true;
      saved.report(sessionProblem('notKept', outcome.detail));
    }
  };
  const flush = (): Promise<void> => {
    clearTimeout(saveTimer);
    underWay = underWay.then(save);
    return underWay;
  };

  const watchTime = (): void => {
    clearTimeout(expiryTimer);
    if (changedAtMs === null) return;
    if (isPastItsTime(changedAtMs, saved.getState().keepOnDevice, now())) {
      changedAtMs = null;
      saved.expire();
    } else if (!saved.getState().keepOnDevice)
      expiryTimer = setTimeout(watchTime, changedAtMs + KEPT_FOR_MS - now() + 1);
  };

  const bringBack = async (): Promise<boolean> => {
    try {
      const kept = await storage.load();
      // The person was faster than the storage: what they have done stands.
      if (kept === null || changedAtMs !== null) return false;
      const read = readCase(v.parse(keptSchema, kept).caseText);
      if (!read.ok) {
        saved.report(sessionProblem('notRestored', read.problem.what));
        return false;
      }
      saved.restore(kept, read.file);
      changedAtMs = now();
      watchTime();
      return true;
    } catch (error) {
      saved.report(sessionProblem('notRestored', reasonOf(error)));
      return false;
    }
  };

  const stopListening = [storage.onHidden(() => void flush()), storage.onShown(watchTime)];

  return {
    restored: bringBack(),
    changed: () => {
      changedAtMs = now();
      due = true;
      clearTimeout(saveTimer);
      saveTimer = setTimeout(() => void flush(), SAVE_AFTER_MS);
      watchTime();
    },
    flush,
    wipe: async () => {
      clearTimeout(saveTimer);
      clearTimeout(expiryTimer);
      due = false;
      overtaken = false;
      changedAtMs = null;
      await underWay;
      return storage.wipe();
    },
    close: () => {
      clearTimeout(saveTimer);
      clearTimeout(expiryTimer);
      for (const stop of stopListening) stop();
    },
  };
};
