/** Questions to learn by, and three that check the explaining. */
export { grade } from './grade';
export { studyTemplates } from './phrases';
export { QUIZ_COUNT, type QuizOptions } from './questions';
export { questionsOf } from './questions-of';
export { answerTeachBack } from './teach-back';
export { teachBackOf } from './teach-back-of';
export type { Choice, Grade, QuizAnswer, QuizItem, QuizKind, TeachBackItem, TeachBackKind } from './types';
