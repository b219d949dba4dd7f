/**
 * What content says of some treatments only, against what a case says of its treatment: the one in force, or, where none is stated,
 * every one that is usual for the injury. Whoever has not been told of the treatment needs the dangers of all of them.
 */
import type { Injury, Stage } from '../content/schema';
import type { OptionId } from '../ids';

export const optionsInQuestion = (
  option: OptionId | null,
  injury: Pick<Injury, 'options'> | null | undefined,
): readonly OptionId[] => (option === null ? (injury?.options ?? []) : [option]);

/** None named: for every treatment. */
export const isOfOptions = (named: readonly OptionId[], inQuestion: readonly OptionId[]): boolean =>
  named.length === 0 || named.some((id) => inQuestion.includes(id));

/** What opens the next stage of this kind of injury after these treatments, by its place in the content. */
export const criteriaIn = (
  stage: Stage,
  inQuestion: readonly OptionId[],
  kind: Injury['kind'] | null,
): readonly number[] =>
  stage.opensNext.flatMap(({ options, of }, index) =>
    isOfOptions(options, inQuestion) && (of === undefined || kind === null || of === kind) ? [index] : [],
  );
