/**
 * What the figures of others cannot say of somebody of this age. It stands before the first week in every telling: a week that is read
 * before it is read as one's own. Patients and whoever studies read it at the head of question 5, for it is advice too; listeners are told
 * of figures alone, and so hear it before the first of them and not at all where there is none.
 */
import type { Content } from '../content/schema';
import type { MessageId } from '../explain/messages';
import type { Explanation, Finding } from '../explain/types';
import type { Reader } from '../ids';
import { cautionsFor } from './cautions';
import { textsIn } from './source-basis';

/** Rest on weeks or odds of groups without naming them. */
const FOLLOWS: ReadonlySet<MessageId> = new Set<MessageId>(['backSooner', 'timetableJudged', 'timetableByStudy']);

/** Whether it tells what groups of people counted: all of them were grown. */
export const tellsOfGroups = (content: Pick<Content, 'studies' | 'rates'>, { message }: Finding): boolean => {
  if (FOLLOWS.has(message.id)) return true;
  const named = new Set(textsIn(message.args));
  return [...content.studies, ...content.rates].some(({ id }) => named.has(id));
};

const opens = (content: Content, explanation: Explanation, { id }: Finding, reader: Reader): boolean =>
  explanation.questions
    .find((question) => question.id === 'back')
    ?.findings.filter(({ readers }) => readers?.includes(reader) ?? true)
    .find((each) => (reader === 'broadcast' ? tellsOfGroups(content, each) : each.depth === 'sentence'))?.id === id;

/** With a space behind it; nothing where the finding does not open the figures, or the age takes nothing from them. */
export const ofThisAge = (content: Content, explanation: Explanation, finding: Finding, reader: Reader): string =>
  explanation.age !== null && opens(content, explanation, finding, reader)
    ? cautionsFor(content, explanation, reader, 'back')
        .filter(({ ages }) => ages.length > 0)
        .map(({ what }) => `${what[reader]} `)
        .join('')
    : '';
