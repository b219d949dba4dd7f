/** A code of ICD-10-CM as somebody types it, whole or in part, with or without its point: which rule of content/codes.yaml it fits. */
import type { Code } from '../../content/schema';
import type { CodeId, Side } from '../../ids';
import { type CodedVisit, visitOf } from './coded-visit';

/** What a code of a break through a growth plate says of its type, after Salter and Harris. */
export const GROWTH_PLATE_TYPES = ['notStated', 'I', 'II', 'III', 'IV', 'other'] as const;
export type GrowthPlateType = (typeof GROWTH_PLATE_TYPES)[number];

/** `ofGrowing`: some injury names it for those who still grow; then the last character of its root is the type. */
export type CodeInUse = Code & { readonly ofGrowing: boolean };

export interface CodeRead {
  readonly code: CodeId;
  readonly said: string;
  readonly side: Side | null;
  readonly displaced: boolean | null;
  readonly visit: CodedVisit | null;
  /** Null: no code of a growth plate. */
  readonly growing: GrowthPlateType | null;
  /** The typed code names this root or more; false while it is only the beginning of it. */
  readonly whole: boolean;
}

/** A letter, a digit, one more, and up to four characters, of which a point may follow the first three. */
const TYPED = /(?<![0-9a-z])[a-z]\d[0-9a-z](?:\.[0-9a-z]{0,4}|[0-9a-z]{0,4})(?!\.?[0-9a-z])/gi;
/** Three characters can be anything, such as a team of the under-19s. */
const SURELY_A_CODE = /^[a-z]\d[0-9a-z](?:\.[0-9a-z]|\d)/i;

const bare = (code: string): string => code.replaceAll('.', '').toUpperCase();

const SIDES = ['right', 'left', 'notStated'] as const;

/** What the character after the root says; null where the list has no such character. */
const nextRead = ({ next }: Code, letter: string): Pick<CodeRead, 'side' | 'displaced'> | null => {
  const sets =
    next.by === 'side'
      ? [{ set: next, displaced: null }]
      : [
          { set: next.displaced, displaced: true },
          { set: next.notDisplaced, displaced: false },
        ];
  for (const { set, displaced } of sets)
    for (const side of SIDES) if (set[side] === letter) return { side: side === 'notStated' ? null : side, displaced };
  return null;
};

const TYPE_DIGITS: Readonly<Record<string, GrowthPlateType>> = {
  '0': 'notStated',
  '1': 'I',
  '2': 'II',
  '3': 'III',
  '4': 'IV',
  '9': 'other',
};
/** Null where it ends before its type, has one that the list has not, or is another code. */
const typeIn = (said: string, root: string): GrowthPlateType | null => {
  const digit = said.charAt(root.length - 1);
  return said.startsWith(root.slice(0, -1)) && Object.hasOwn(TYPE_DIGITS, digit) ? (TYPE_DIGITS[digit] ?? null) : null;
};

/** Null where the typed code is another one. The visit tells no injury apart, but a letter that the list has not is no code of it. */
export const readCode = (code: CodeInUse, typed: string): CodeRead | null => {
  const root = bare(code.root);
  const type = code.ofGrowing ? typeIn(bare(typed), root) : null;
  const said = type === null ? bare(typed) : root + bare(typed).slice(root.length);
  const growing = code.ofGrowing ? (type ?? 'notStated') : null;
  const open = { code: code.id, said: typed, side: null, displaced: null, visit: null, growing };
  if (root.startsWith(said)) return { ...open, whole: root === said };
  if (!said.startsWith(root)) return null;
  const read = nextRead(code, said.charAt(root.length));
  const letters = said.slice(root.length + 1);
  const visit = letters === '' ? null : visitOf(code, letters);
  return read === null || visit === undefined ? null : { ...open, ...read, visit, whole: true };
};

/**
 * Pieces of one code: three characters, up to three more behind a space, a comma or a point, and the visit. "S92 12 days ago" and
 * "S92.354 a week ago" are none: behind a space stand three figures, or a letter at the end.
 */
const SPLIT =
  /(?<![0-9a-z])([a-z]\d[0-9a-z])(?: (?=\d{3})|[,.])(\d{1,3})(?: (\d{1,2}[a-z]|[a-z](?=\s*(?:$|[,.;:)])))|([a-z]))?(?![0-9a-z])/gi;

/** A code that was written in pieces, in one, where that is one of these: "S92 354 A", "S92,354A". */
export const codesJoined = (words: string, codes: readonly CodeInUse[]): string =>
  words.replace(SPLIT, (typed: string, category: string, more: string, behindSpace = '', visit = '') => {
    const whole = `${category}.${more}${behindSpace}${visit}`;
    return codes.some((code) => readCode(code, whole)?.whole === true) ? whole : typed;
  });

export interface CodesTyped {
  readonly known: readonly string[];
  readonly unknown: readonly string[];
  /** The text without them. */
  readonly rest: string;
}

export const codesTyped = (words: string, codes: readonly CodeInUse[]): CodesTyped => {
  const typed = [...new Set(words.match(TYPED) ?? [])];
  const known = typed.filter((each) => codes.some((code) => readCode(code, each) !== null));
  const unknown = typed.filter((each) => !known.includes(each) && SURELY_A_CODE.test(each));
  const taken = new Set([...known, ...unknown]);
  return { known, unknown, rest: words.replace(TYPED, (each) => (taken.has(each) ? ' ' : each)) };
};
