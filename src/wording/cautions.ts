/**
 * Cautions that apply to this injury, treatment, age, reader and question. A list left empty in the content means: always. Where no
 * treatment is stated, the dangers of every usual one are told; where no age is, the red flags of every age.
 */
import type { Caution, Content } from '../content/schema';
import { isOfOptions, optionsInQuestion } from '../explain/in-question';
import type { Explanation } from '../explain/types';
import type { QuestionId, Reader } from '../ids';

const applies = <T>(list: readonly T[], value: T | null): boolean =>
  list.length === 0 || (value !== null && list.includes(value));

export const cautionsFor = (
  content: Pick<Content, 'cautions' | 'injuries'>,
  explanation: Pick<Explanation, 'injury' | 'option' | 'age'>,
  reader: Reader,
  question?: QuestionId,
): readonly Caution[] => {
  const inQuestion = optionsInQuestion(
    explanation.option,
    content.injuries.find(({ id }) => id === explanation.injury),
  );
  return content.cautions.filter(
    (caution) =>
      applies(caution.readers, reader) &&
      applies(caution.injuries, explanation.injury) &&
      isOfOptions(caution.options, inQuestion) &&
      (applies(caution.ages, explanation.age) || (caution.kind === 'red flag' && explanation.age === null)) &&
      (question === undefined || applies(caution.questions, question)),
  );
};
