/**
 * The centre of a study in words: a mean is an average; a median is the time by which half of those counted were there, and no
 * average. Where studies that print one stand with studies that print the other, that is said.
 */
import type { ArmFigures } from '../explain/messages';
import type { Reader } from '../ids';
import type { Quantity } from '../units';
import { CENTRE_PARTS } from './en/back-messages';
import { fillRuns } from './fill';
import { formatWeeks } from './quantities';
import { plainText, type Run } from './types';

export type Centre = 'mean' | 'median' | 'mixed';

export const centreOf = (arms: readonly Pick<ArmFigures, 'time'>[]): Centre => {
  const [only = 'mean', ...others] = [...new Set(arms.flatMap(({ time }) => (time === null ? [] : [time.centre])))];
  return others.length > 0 ? 'mixed' : only;
};

/** Weeks with what they are the centre of; what is mixed is told by a sentence behind them (`mixedNote`). */
export const centredWeeks = (reader: Reader, centre: Centre, weeks: Run): readonly Run[] =>
  fillRuns(CENTRE_PARTS[reader === 'study' ? (`${centre}.study` as const) : centre], { weeks });

/** What the first of some days, reckoned from these weeks, is. */
export const firstCentre = (reader: Reader, arms: readonly Pick<ArmFigures, 'time'>[]): string => {
  const centre = centreOf(arms);
  return CENTRE_PARTS[reader === 'study' ? (`first.${centre}.study` as const) : (`first.${centre}` as const)];
};

/** Nothing to study readers, who have the words beside the weeks. */
export const mixedNote = (reader: Reader, arms: readonly Pick<ArmFigures, 'time'>[]): string =>
  reader !== 'study' && centreOf(arms) === 'mixed' ? CENTRE_PARTS.mixedNote : '';

/** The weeks of a row as one text, what they are the centre of with them. */
export const weeksOfArms = (reader: Reader, arms: readonly Pick<ArmFigures, 'time'>[], weeks: Quantity): string =>
  `${plainText({ runs: centredWeeks(reader, centreOf(arms), { text: formatWeeks(weeks) }) })}.${mixedNote(reader, arms)}`;
