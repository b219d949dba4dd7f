/** What a picture of a pair is, and of which side, in words. */
import { unlike } from '../foot/shape-words';
import type { Say } from '../words';
import type { Half, HalfKind, PairKind, PairOf } from './pairs';

const NAMES: Readonly<Record<HalfKind, string>> = {
  case: 'pair.case',
  whatIf: 'pair.whatIf',
  otherSide: 'pair.otherSide',
  usualArch: 'footShape.neutral',
  highArch: 'footShape.high',
  lowArch: 'footShape.low',
};
const KINDS: Readonly<Record<PairKind, string>> = {
  tried: 'pair.kind.tried',
  other: 'pair.kind.other',
  high: 'pair.kind.high',
  low: 'pair.kind.low',
};

export const kindText = (say: Say, kind: PairKind): string => say(KINDS[kind]);
export const halfName = (say: Say, { is }: Half): string => say(NAMES[is]);

const ofNobody = ({ is }: Half): boolean => is === 'usualArch' || is === 'highArch' || is === 'lowArch';

/** The side as everywhere: stated, only reported, or not certain and so not claimed. */
export const halfSide = (say: Say, half: Half): string => {
  if (half.side === null) {
    if (half.is === 'otherSide') return say('pair.side.otherNotStated');
    return say(half.known === 'contradiction' ? 'stage.side.contradiction' : 'stage.side.notStated');
  }
  if (ofNobody(half)) return say(half.mirrored ? 'pair.plainLeft' : 'stage.plain');
  const side = say(half.side === 'right' ? 'stage.side.right' : 'stage.side.left');
  return half.known === 'reported' ? say('stage.side.asReported', { side }) : side;
};

/** As on films: a letter, and none that was not stated. */
export const halfLetter = (say: Say, { side }: Half): string =>
  say(side === null ? 'pair.letter.notStated' : side === 'right' ? 'pair.letter.right' : 'pair.letter.left');

/** What this foot has otherwise than the one beside it, where a hand made it so. */
export const halfShape = (say: Say, half: Half, [first, second]: PairOf): string =>
  ofNobody(half) || second.is === 'otherSide'
    ? ''
    : unlike(say, half.parameters, (half === first ? second : first).parameters)
        .map((part) => `${part}.`)
        .join(' ');
