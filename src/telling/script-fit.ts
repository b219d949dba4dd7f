/**
 * Which lines of a script are spoken in a given length. Pure counting in words, so that the time can't be overrun by rounding.
 * The longer script holds every line of the shorter one: the choice for 90 s starts from that for 30 s.
 */
import type { FindingId, QuestionId } from '../ids';

export const SCRIPT_SECONDS = [30, 90, 180] as const;
export type ScriptSeconds = (typeof SCRIPT_SECONDS)[number];

/** Words a minute people can speak and follow; 150 is the usual rate (common practice). */
export const RATE = { usual: 150, slowest: 100, fastest: 220 } as const;

/** Share of the shortest length that the opening, and the one unknown, may each take: the rest is for the injury. */
const FRAME_SHARE = 0.3;

export interface Piece {
  readonly key: string;
  readonly kind: 'opening' | 'whatIf' | 'finding' | 'unknown';
  readonly text: string;
  readonly words: number;
  readonly finding: FindingId | null;
  readonly question: QuestionId | null;
  /** Smaller is chosen sooner. */
  readonly rank: number;
}

const wordsIn = (seconds: number, rate: number): number => Math.floor((seconds * rate) / 60);

const wordsOf = (pieces: readonly Piece[]): number => pieces.reduce((sum, piece) => sum + piece.words, 0);

/** The first that takes no more than its share; the last one is the short fallback and is taken whatever it takes. */
const frame = (pieces: readonly Piece[], budget: number, cost = wordsOf): Piece | undefined =>
  pieces.find((piece) => cost([piece]) <= budget * FRAME_SHARE) ?? pieces[pieces.length - 1];

export interface Candidates {
  /** In order of liking, the shortest fallback last. One is spoken. */
  readonly openings: readonly Piece[];
  readonly whatIf: Piece | null;
  readonly findings: readonly Piece[];
  /** In order of liking, the shortest fallback last. One is always spoken, others when there is time. */
  readonly unknowns: readonly Piece[];
  /** Spoken before the first piece that is of others, and only with one. */
  readonly ofAge: readonly Piece[];
  readonly isOfOthers: (piece: Piece) => boolean;
  /** Spoken before anything else that the shortest length has no time for. */
  readonly isDue: (piece: Piece) => boolean;
}

export const chooseLines = (candidates: Candidates, seconds: ScriptSeconds, rate: number): readonly Piece[] => {
  const { ofAge, isOfOthers, isDue } = candidates;
  const shortest = wordsIn(SCRIPT_SECONDS[0], rate);
  /** In words, with what has to be said before the first figure of others. */
  const cost = (pieces: readonly Piece[]): number => wordsOf(pieces) + (pieces.some(isOfOthers) ? wordsOf(ofAge) : 0);
  const opening = frame(candidates.openings, shortest);
  const unknown = frame(candidates.unknowns, shortest, cost);
  const chosen = new Set([opening, candidates.whatIf ?? undefined, unknown].filter((piece) => piece !== undefined));
  const fallback = candidates.unknowns[candidates.unknowns.length - 1];
  const rest = [...candidates.findings, ...candidates.unknowns.filter((piece) => piece !== fallback)]
    .filter((piece) => !chosen.has(piece))
    .sort((a, b) => a.rank - b.rank);
  for (const length of SCRIPT_SECONDS.filter((s) => s <= seconds)) {
    const budget = wordsIn(length, rate);
    const first = length === SCRIPT_SECONDS[0] ? [] : rest.filter(isDue);
    for (const piece of [...first, ...rest]) if (cost([...chosen, piece]) <= budget) chosen.add(piece);
  }
  const inOrder = (pieces: readonly Piece[]) => pieces.filter((piece) => chosen.has(piece));
  const spoken = [
    ...inOrder(candidates.openings),
    ...inOrder(candidates.whatIf === null ? [] : [candidates.whatIf]),
    ...inOrder(candidates.findings),
    ...inOrder(candidates.unknowns),
  ];
  const first = spoken.findIndex(isOfOthers);
  return first < 0 ? spoken : spoken.toSpliced(first, 0, ...ofAge);
};
