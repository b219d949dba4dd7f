/**
 * Every message an Explanation can carry: id and typed arguments, never a sentence. `src/wording` has the sentences. A new
 * message is added here first; the compiler then asks wording for its three tellings.
 */
export interface Messages {
  /** Replaced by the explain helper. */
  placeholder: Record<string, never>;
}

export type MessageId = keyof Messages;
export type Message = { readonly [K in MessageId]: { readonly id: K; readonly args: Messages[K] } }[MessageId];
