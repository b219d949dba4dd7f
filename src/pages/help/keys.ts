/**
 * The keys and gestures of the picture as they are told: each line by the word that says what it does. A test holds the keys to
 * those that the picture takes.
 */
import { VIEWS } from '../../session/types';

export interface KeyLine {
  /** Values of `KeyboardEvent.key`. */
  readonly keys: readonly string[];
  readonly shift: boolean;
  /** How the keys are written, and what they do. */
  readonly name: string;
  readonly does: string;
}

const line = (keys: readonly string[], name: string, does: string, shift = false): KeyLine => ({
  keys,
  shift,
  name,
  does,
});

const ARROWS = ['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown'] as const;

export const PICTURE_KEYS: readonly KeyLine[] = [
  line(ARROWS, 'help.key.arrows', 'help.turn'),
  line(ARROWS, 'help.key.shiftArrows', 'help.move', true),
  line(['+', '=', '-', '_'], 'help.key.plusMinus', 'help.size'),
  line(['Home'], 'help.key.home', 'help.again'),
  line(
    VIEWS.map((_, index) => String(index + 1)),
    'help.key.digits',
    'help.sides',
  ),
];

/** In pairs: what a hand does, what happens. */
export const HANDS = [
  ['help.hand.drag', 'help.turn'],
  ['help.hand.dragOther', 'help.move'],
  ['help.hand.wheel', 'help.size'],
  ['help.hand.pinch', 'help.sizeAndMove'],
  ['help.hand.press', 'help.names'],
  ['help.hand.grip', 'help.whatIf'],
] as const;

export const EVERYWHERE = [
  ['help.key.find', 'help.finds'],
  ['help.key.question', 'help.opens'],
  ['help.key.escape', 'help.closes'],
  ['help.key.tab', 'help.leaves'],
] as const;
