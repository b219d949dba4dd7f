/** A chance in words and in percent. What is rounded away is never told as none or as all. */
import type { Say } from '../words';

export const chanceWords = (say: Say, chance: number): string => {
  if (chance === 0) return say('dates.chanceNone');
  if (chance < 0.05) return say('dates.chanceHardly');
  if (chance >= 0.95) return say('dates.chanceMost');
  return say('dates.chance', { n: Math.round(10 * chance) });
};

export const chancePercent = (say: Say, chance: number): string => {
  const percent = Math.round(100 * chance);
  return percent === 0 && chance > 0
    ? say('dates.percentUnder')
    : say('dates.percent', { percent: Math.min(percent, chance < 1 ? 99 : 100) });
};
