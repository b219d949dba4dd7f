/**
 * What the figures of others cannot say of somebody of this age. It opens the first sentence of question 5, so that it stands before
 * the first week in every telling: a week that is read before it is read as one's own.
 */
import type { Content } from '../content/schema';
import type { Explanation, Finding } from '../explain/types';
import type { Reader } from '../ids';
import { cautionsFor } from './cautions';

const isLead = (explanation: Explanation, { id }: Finding, reader: Reader): boolean =>
  explanation.questions
    .find((question) => question.id === 'back')
    ?.findings.find(({ depth, readers }) => depth === 'sentence' && (readers?.includes(reader) ?? true))?.id === id;

/** With a space behind it; nothing where the finding is no first sentence of question 5, or the age takes nothing from the figures. */
export const ofThisAge = (content: Content, explanation: Explanation, finding: Finding, reader: Reader): string =>
  isLead(explanation, finding, reader)
    ? cautionsFor(content, explanation, reader, 'back')
        .filter(({ ages }) => ages.length > 0)
        .map(({ what }) => `${what[reader]} `)
        .join('')
    : '';
