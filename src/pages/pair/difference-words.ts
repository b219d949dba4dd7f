/** The difference of two feet as sentences, made of the figures that the table shows. Pure. */
import { figureText } from '../foot/norm-text';
import type { Say } from '../words';
import type { Difference } from './differences';
import { halfName } from './half-words';
import type { PairOf } from './pairs';

interface Counted {
  /** The ones to name. */
  readonly told: readonly Difference[];
  /** How many differ, of how many. */
  readonly changed: number;
  readonly all: number;
  readonly nameOf: (id: Difference['id']) => string;
}

export const differenceWords = (say: Say, pair: PairOf, { told, changed, all, nameOf }: Counted): string => {
  if (pair[1].is === 'otherSide') return say('pair.mirror');
  if (changed === 0) return say('pair.alike', { all });
  const list = told.map(({ id, unit, first, second }) =>
    say('pair.change', {
      name: nameOf(id),
      first: figureText(say, first, unit),
      second: figureText(say, second, unit),
    }),
  );
  const counted = say('pair.counted', { changed, all, first: halfName(say, pair[0]), second: halfName(say, pair[1]) });
  return list.length === 0 ? counted : `${counted} ${say('pair.most', { list: list.join('; ') })}`;
};
