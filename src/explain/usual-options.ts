/** Which treatments are usual for the case: those of its class where the content names some and the class is known, else of the injury. */
import type { OptionId } from '../ids';
import { measuredIn, toldClassesOf } from './classes';
import { tagOf } from './resolve';
import type { Situation } from './situation';

export interface UsualOptions {
  readonly options: readonly OptionId[];
  /** Place of the class in the injury's classification; null: of the injury as a whole. */
  readonly ofClass: number | null;
}

export const usualOptions = ({ facts, region, injuryRecord }: Situation): UsualOptions => {
  if (injuryRecord === null) return { options: [], ofClass: null };
  const place = region === null ? null : { value: region.value, tag: tagOf(region) };
  const found = toldClassesOf(injuryRecord, measuredIn(facts, place)).flatMap(({ index }) => {
    const usual = injuryRecord.classification[index]?.usual;
    return usual === undefined ? [] : [{ options: usual.options, ofClass: index }];
  })[0];
  return found ?? { options: injuryRecord.options, ofClass: null };
};
