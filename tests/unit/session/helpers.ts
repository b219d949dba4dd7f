/** Small stand-ins: a content without records, an explanation that only remembers what it was made from. */
import { type CaseFile, emptyCase } from '../../../src/cases';
import type { Content } from '../../../src/content/schema';
import type { Explanation, WhatIf } from '../../../src/explain/types';
import { idOf } from '../../../src/ids';
import type { CaseStorage, ExplainRequest, Kept, SaveOutcome, WipeReport } from '../../../src/session';

export const CONTENT = { words: {} } as unknown as Content;

export const caseFile = (id: string, claims: readonly unknown[] = []): CaseFile => ({
  ...emptyCase(idOf<CaseFile['id']>(id)),
  claims: claims as CaseFile['claims'],
});

export const claim = (id: string, subject: string, value: unknown, more: object = {}) =>
  ({ id, subject, value, status: 'reported', source: { kind: 'person' }, ...more }) as CaseFile['claims'][number];

export const START = caseFile('start-case', [claim('c1', 'side', 'right')]);
export const C = (id: string) => idOf<CaseFile['claims'][number]['id']>(id);

/** Carries exactly the request it was made from. */
export interface Echo {
  readonly file: CaseFile;
  readonly whatIf: WhatIf;
}
export const echo = ({ file, whatIf }: ExplainRequest): Explanation => ({ file, whatIf }) as unknown as Explanation;
export const echoed = (explanation: Explanation | null): Echo | null => explanation as unknown as Echo | null;

/** Lets everything that waits for promises go on. */
export const settle = async (): Promise<void> => {
  for (let i = 0; i < 20; i++) await Promise.resolve();
};

/** A storage in memory that says what it was asked. */
export class MemoryStorage implements CaseStorage {
  kept: Kept | null = null;
  saves = 0;
  wipes = 0;
  outcome: SaveOutcome = { ok: true };
  wipeReport: WipeReport = { emptied: ['all'], failed: [] };
  hidden: () => void = () => {};
  shown: () => void = () => {};

  load = async (): Promise<Kept | null> => this.kept;
  save = async (kept: Kept): Promise<SaveOutcome> => {
    this.saves += 1;
    if (this.outcome.ok) this.kept = kept;
    return this.outcome;
  };
  wipe = async (): Promise<WipeReport> => {
    this.wipes += 1;
    this.kept = null;
    return this.wipeReport;
  };
  onHidden = (listener: () => void) => {
    this.hidden = listener;
    return () => {};
  };
  onShown = (listener: () => void) => {
    this.shown = listener;
    return () => {};
  };
}
