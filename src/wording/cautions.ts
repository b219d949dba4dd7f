/** Cautions that apply to this injury, treatment, age, reader and question. A list left empty in the content means: always. */
import type { Caution, Content } from '../content/schema';
import type { Explanation } from '../explain/types';
import type { QuestionId, Reader } from '../ids';

const applies = <T>(list: readonly T[], value: T | null): boolean =>
  list.length === 0 || (value !== null && list.includes(value));

export const cautionsFor = (
  content: Pick<Content, 'cautions'>,
  explanation: Pick<Explanation, 'injury' | 'option' | 'age'>,
  reader: Reader,
  question?: QuestionId,
): readonly Caution[] =>
  content.cautions.filter(
    (caution) =>
      applies(caution.readers, reader) &&
      applies(caution.injuries, explanation.injury) &&
      applies(caution.options, explanation.option) &&
      applies(caution.ages, explanation.age) &&
      (question === undefined || applies(caution.questions, question)),
  );
