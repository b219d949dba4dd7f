/** What a session asks of whoever makes explanations. */
import type { CaseFile } from '../cases/schema';
import type { BandsAsked, Explanation, WhatIf } from '../explain/types';

export interface ExplainRequest {
  readonly file: CaseFile;
  readonly whatIf: WhatIf;
  readonly bands: BandsAsked;
}

/** Null: overtaken before it began. Rejects when the explanation cannot be made. */
export type RunExplain = (request: ExplainRequest) => Promise<Explanation | null>;

/** To the worker. `start` comes once, before anything else; everything is copied, so that the page keeps what it sent. */
export type ToWorker =
  | { readonly kind: 'start'; readonly content: unknown; readonly foot: unknown; readonly sections: unknown }
  | { readonly kind: 'explain'; readonly run: number; readonly request: ExplainRequest };

export type FromWorker =
  | { readonly kind: 'explained'; readonly run: number; readonly explanation: Explanation }
  | { readonly kind: 'failed'; readonly run: number; readonly message: string };
