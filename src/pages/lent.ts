/** Texts a still carries in its pixels. */
export interface StillText {
  readonly title: string;
  readonly sideLine: string;
  readonly statusLine: string;
  readonly sourceLine: string;
}
