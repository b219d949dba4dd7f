/** From a class that can be meant to a case: only when somebody asks for it, and everything in it as reported. */
import type { InjuryId } from '../../ids';
import { injuryValues, withValues } from '../case/way-in';
import { usePages } from '../context';

export const useBeginCase = (): ((id: InjuryId) => void) => {
  const { session, go, say, announce } = usePages();
  return (id) => {
    const { commands, getState } = session;
    const injury = getState().content.injuries.find((each) => each.id === id);
    if (injury === undefined) return;
    commands.newCase();
    commands.changeCase(withValues(getState().file, ['bone', 'place', 'injury'], injuryValues(injury), 'told'));
    go({ page: 'new', question: 'where', demo: null, card: null });
    announce(say('seek.began'));
  };
};
