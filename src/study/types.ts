/** Items of the quiz and of teach-back: plain data. `correct` is the only right answer: a list of choice ids. */
import type { BoneId, RegionId, SourceId } from '../ids';

export const QUIZ_KINDS = ['nameLit', 'pointTo', 'order', 'meets', 'zone'] as const;
export type QuizKind = (typeof QUIZ_KINDS)[number];

export interface Choice {
  readonly id: string;
  readonly text: string;
  readonly latin: string | null;
}

interface ItemBase {
  /** The same question has the same id wherever it comes up: kind and what is asked. */
  readonly id: string;
  readonly prompt: string;
  readonly choices: readonly Choice[];
  readonly correct: readonly string[];
  /** Why it is so, one part a line. */
  readonly why: readonly string[];
  /** Lit on the stage without being named. */
  readonly lit: BoneId | null;
  readonly sources: readonly SourceId[];
}

/** One choice is right. */
export interface NameLitItem extends ItemBase {
  readonly kind: 'nameLit';
}
/** Answered by picking a bone in the picture or from the list of all bones (`choices`). */
export interface PointToItem extends ItemBase {
  readonly kind: 'pointTo';
}
/** All choices, put in order heel to toe; shown in the given (wrong) order, moved by buttons. */
export interface OrderItem extends ItemBase {
  readonly kind: 'order';
}
/** Any number of choices is right. */
export interface MeetsItem extends ItemBase {
  readonly kind: 'meets';
}
/** A break is drawn on a bone; one of its zones is right. */
export interface ZoneItem extends ItemBase {
  readonly kind: 'zone';
  readonly breakAt: { readonly bone: BoneId; readonly sMm: number; readonly region: RegionId };
}
export type QuizItem = NameLitItem | PointToItem | OrderItem | MeetsItem | ZoneItem;

/** Choice ids; the order counts only for `order`. */
export type QuizAnswer = readonly string[];

export interface Grade {
  /** 0 to 1; 1 only for exactly the right answer. */
  readonly score: number;
  readonly full: boolean;
  readonly hits: readonly string[];
  readonly wrong: readonly string[];
  readonly missed: readonly string[];
  readonly feedback: string;
  readonly why: readonly string[];
}

export const TEACH_BACK_KINDS = ['where', 'help', 'next', 'weeks', 'side', 'known'] as const;
export type TeachBackKind = (typeof TEACH_BACK_KINDS)[number];

export interface TeachBackItem {
  readonly kind: TeachBackKind;
  readonly id: string;
  readonly prompt: string;
  readonly choices: readonly Choice[];
  readonly correct: string;
  readonly feedback: { readonly right: string; readonly again: string };
}
