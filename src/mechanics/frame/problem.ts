/** What is wrong with a frame: never numbers beside it. */
export interface FrameProblem {
  readonly ok: false;
  /**
   * form: no frame file; name: unknown or used twice; geometry: no length, no orientation; mechanism: something moves freely;
   * absurd: it moves too far for the theory; unbalanced: the arithmetic was lost; size: too many nodes.
   */
  readonly kind: 'form' | 'name' | 'geometry' | 'mechanism' | 'absurd' | 'unbalanced' | 'size';
  /** The member, node, section or material, as `member "a"`; empty for the frame as a whole. */
  readonly where: string;
  readonly what: string;
}

export const problem = (kind: FrameProblem['kind'], where: string, what: string): FrameProblem => ({
  ok: false,
  kind,
  where,
  what,
});

/** The problem as one line. */
export const problemText = ({ where, what }: FrameProblem): string => (where === '' ? what : `${where}: ${what}`);
