import type { ClaimStatus } from '../cases/schema';
import type { Confidence } from '../explain/types';
import { CONFIDENCE_WORDS, STATUS_WORDS } from './en/lists';

export { bodyNotes } from './body-notes';
export { cautionsFor } from './cautions';
export { wordValue } from './claims';
export { describePicture, type PictureWords } from './describe-picture';
export { fill } from './fill';
export { formatDate, formatQuantity, formatWeeks } from './quantities';
export { sourceLine, sourceName } from './sources';
export { type Template, wordingTemplates } from './templates';
export { plainText, type Run, type Sentence } from './types';
export { type BasisWords, wordBasis } from './word-basis';
export { wordFinding } from './word-finding';
export { findingsFor, type QuestionWords, questionTitle, wordQuestion } from './word-question';

export const confidenceWord = (level: Confidence): string => CONFIDENCE_WORDS[level];
export const statusWord = (status: ClaimStatus | 'contradiction' | 'notStated'): string => STATUS_WORDS[status];
