/** A link that asks for something we do not have is answered, not passed over: what, where, and what to do. */
import { makeSay, strangersIn } from '../pages';
import type { Session } from '../session/types';

export const reportStrangers = (session: Session, hash: string, search = ''): void => {
  const { cards, words } = session.getState().content;
  const strangers = strangersIn(
    hash,
    search,
    cards.map(({ id }) => id),
  );
  if (strangers.length === 0) return;
  const say = makeSay(words);
  session.commands.report({ what: say('link.strange'), where: strangers.join(', '), remedy: say('link.remedy') });
};
