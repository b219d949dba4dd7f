/** Who still feeds what, part by part from the back: what the break changed in full, the rest in one piece. */
import type { RegionId } from '../ids';
import type { FeedingState } from '../perfusion/types';
import { FEEDING_WORDS } from './en/lists';
import { PARTS } from './en/messages';
import { fill } from './fill';

interface Part {
  /** Null: the whole bone. */
  readonly region: RegionId | null;
  readonly state: FeedingState;
}

/** A part that the break runs through stands twice in the table, its back piece first. */
const nameOf = (parts: readonly Part[], index: number, region: string): string => {
  const id = parts[index]?.region;
  if (index + 1 < parts.length && parts[index + 1]?.region === id) return fill(PARTS.behindBreak, { region });
  return index > 0 && parts[index - 1]?.region === id ? fill(PARTS.aheadOfBreak, { region }) : region;
};

export const feedingLine = (parts: readonly Part[], regionName: (id: RegionId) => string): string => {
  const told = parts.map((part, i) => ({
    ...part,
    line: fill(PARTS.feedingPart, {
      region: nameOf(parts, i, part.region === null ? PARTS.middleOfBone : regionName(part.region)),
      state: FEEDING_WORDS[part.state],
    }),
  }));
  const changed = told.filter((part) => part.state !== 'asBefore');
  if (changed.length === 0 && told.length > 1) return fill(PARTS.everyPart, { state: FEEDING_WORDS.asBefore });
  if (changed.length === 0 || changed.length === told.length) return told.map((part) => part.line).join('; ');
  return [...changed.map((part) => part.line), fill(PARTS.elsewhere, { state: FEEDING_WORDS.asBefore })].join('; ');
};
