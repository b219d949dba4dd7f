import type { ClaimStatus } from '../cases/schema';
import type { Confidence } from '../explain/types';
import type { CaseFigure } from '../mechanics/foot/load-case';
import { CASE_FIGURE_WORDS, CONFIDENCE_WORDS, STATUS_WORDS } from './en/lists';

export { bodyNotes } from './body-notes';
export { cautionsFor } from './cautions';
export { weeksOfArms } from './centres';
export { contributorSays } from './change';
export { wordValue } from './claims';
export { describePicture, type PictureWords } from './describe-picture';
export { fill } from './fill';
export { namesFor } from './names';
export { tellsOfGroups } from './of-this-age';
export { peopleOfStudy } from './people';
export { capital, formatDate, formatNumber, formatQuantity, formatWeeks } from './quantities';
export { sourceLine, sourceName } from './sources';
export { type Template, wordingTemplates } from './templates';
export { contradictionSides, isTooFew, wordTroubleCount } from './trouble-runs';
export { plainText, type Run, type Sentence } from './types';
export { type BasisWords, wordBasis } from './word-basis';
export { wordAlone, wordFinding } from './word-finding';
export { findingsFor, type QuestionWords, questionTitle, wordQuestion } from './word-question';

export const confidenceWord = (level: Confidence): string => CONFIDENCE_WORDS[level];
export const statusWord = (status: ClaimStatus | 'contradiction' | 'notStated'): string => STATUS_WORDS[status];
export const caseFigureWord = (name: CaseFigure): string => CASE_FIGURE_WORDS[name];
