/** Where a session is kept between visits: an interface, so that a session works without a browser. */
import * as v from 'valibot';
import type { KeysReaching } from './state-reach';
import { type SessionState, THEMES } from './types';

/** What may be kept, with the case as the text of its file: it is checked like any file when it comes back. */
export type Kept = Omit<Pick<SessionState, KeysReaching<'browser'>>, 'file'> & { readonly caseText: string };

/** A record of another version of this app may lie in the storage. */
export const keptSchema = v.strictObject({
  caseText: v.string(),
  theme: v.picklist(THEMES),
  keepOnDevice: v.boolean(),
});

export type SaveOutcome =
  | { readonly ok: true }
  | { readonly ok: false; readonly reason: 'newer elsewhere' }
  | { readonly ok: false; readonly reason: 'failed'; readonly detail: string };

export interface WipeReport {
  readonly emptied: readonly string[];
  readonly failed: readonly { readonly store: string; readonly why: string }[];
}

export interface CaseStorage {
  /** The newest whole record, or null: none, or older than its time. What is older than its time is removed by asking. */
  readonly load: () => Promise<Kept | null>;
  readonly save: (kept: Kept) => Promise<SaveOutcome>;
  /** Empties every store of this origin. */
  readonly wipe: () => Promise<WipeReport>;
  /** The page is about to be hidden, perhaps for good. Both give back a function that stops listening. */
  readonly onHidden: (listener: () => void) => () => void;
  readonly onShown: (listener: () => void) => () => void;
}
