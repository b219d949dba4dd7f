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

/** By how much the second foot is off the first. A share less a share is points: a per cent of per cent would be something else. */
export const byText = (say: Say, { by, unit }: Pick<Difference, 'by' | 'unit'>): string => {
  const value = Math.abs(by);
  const figure =
    unit === 'share'
      ? say('pair.points', { value })
      : unit === 'deg' && value === 1
        ? say('pair.degree')
        : figureText(say, value, unit);
  return say(by > 0 ? 'pair.more' : 'pair.less', { figure });
};
