/** The quiz for a foot: its zones are cut from the foot on the stage, so the drawn break lies where the answer says. */
import { zonesOf } from '../anatomy';
import type { Foot } from '../anatomy/types';
import type { Content } from '../content/schema';
import { type QuizOptions, questionsFrom } from './questions';
import type { QuizItem } from './types';

export const questionsOf = (content: Content, foot: Foot, options: QuizOptions): QuizItem[] =>
  questionsFrom(content, zonesOf(foot), options);
