/** Studies of people who do sport at different levels are not one group: where a range spans them, each level has its own weeks. */
import type { ArmFigures } from '../explain/messages';
import { LEVEL_NAMES } from './en/lists';
import { PARTS } from './en/messages';
import { fillRuns } from './fill';
import { list, type Pen } from './pen';
import { formatNumber } from './quantities';
import type { Run } from './types';

/** Levels whose weeks lie no further apart than this ratio give one range: to tell them one by one says nothing more. */
const ALIKE = 1.5;

type Counted = Pick<ArmFigures, 'level' | 'levelAssumed'>;
/** A level that we took for people of whom none was printed is not told as theirs. */
const nameOf = ({ level, levelAssumed }: Counted): string => (levelAssumed ? PARTS.levelNotTold : LEVEL_NAMES[level]);

/** ": 3.6 in ... and 9.2 to 14.6 in ..."; nothing where all are of one level, or alike. */
export const byLevelRuns = (pen: Pen, arms: readonly ArmFigures[], words: string = PARTS.byLevel): readonly Run[] => {
  const weeksOf = new Map<string, number[]>();
  for (const arm of arms)
    if (arm.time !== null) weeksOf.set(nameOf(arm), [...(weeksOf.get(nameOf(arm)) ?? []), arm.time.weeks.value]);
  const all = [...weeksOf.values()].flat();
  if (weeksOf.size < 2 || Math.max(...all) <= ALIKE * Math.min(...all)) return [];
  const told = [...weeksOf].map(([people, weeks]) => {
    const [low, high] = [Math.min(...weeks), Math.max(...weeks)];
    const span = low === high ? [low] : [low, high];
    const text = span.map(formatNumber).join(PARTS.to);
    return fillRuns(PARTS.weeksInPeople, { weeks: pen.number(text), people });
  });
  return fillRuns(words, { levels: list(told) });
};

/** Every level of these people, each once; last those whose level nobody told. */
export const levelNames = (arms: readonly Counted[]): readonly Run[] => {
  const named = [...arms].sort((a, b) => Number(a.levelAssumed === true) - Number(b.levelAssumed === true)).map(nameOf);
  return list([...new Set(named)]);
};
