/**
 * The only way to write a reference test: a value of ours held against a source outside the project. The run prints one table of
 * all of them; only what was read in the source or its abstract counts as evidence.
 */
import { expect, test } from 'vitest';

export interface Outside {
  /** Author, year, journal or book; for open data its name and version. */
  readonly source: string;
  /** Table, equation, problem or page. */
  readonly where: string;
  /** Second hand: as others tell of it, or a page that names no author. */
  readonly how: 'read' | 'abstract' | 'second hand' | 'common practice' | 'from memory';
  /** The figure went into the content: the row checks that what is built keeps to it, and is no evidence that it is right. */
  readonly given?: true;
}

export interface Comparison {
  readonly expected: number | string;
  readonly got: number | string;
  /** Absolute. Needed for numbers, with the reason for its size. */
  readonly tolerance?: number;
  readonly why?: string;
}

export interface AgainstRow extends Outside, Comparison {
  readonly name: string;
}

declare module 'vitest' {
  interface TaskMeta {
    against?: AgainstRow;
  }
}

/** Why a comparison does not hold, or null when it does. Kept apart so that it can be tested to fail. */
export const mismatch = ({ expected, got, tolerance, why }: Comparison): string | null => {
  if (typeof expected === 'number' && typeof got === 'number') {
    if (tolerance === undefined || !why) return 'a comparison of numbers states its tolerance and why it is that large';
    if (!Number.isFinite(got)) return `got ${got}`;
    return Math.abs(got - expected) <= tolerance ? null : `expected ${expected} within ${tolerance}, got ${got}`;
  }
  return expected === got ? null : `expected ${expected}, got ${got}`;
};

export const against = (outside: Outside, name: string, check: () => Comparison | Promise<Comparison>): void => {
  test(`${name} [${outside.source}]`, async ({ task }) => {
    const comparison = await check();
    task.meta.against = { ...outside, name, ...comparison };
    expect(mismatch(comparison)).toBeNull();
  });
};
