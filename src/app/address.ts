/**
 * The address bar and the session kept in step: the page is in the address alone, question and reader in both. What a person
 * does replaces the address; opening a page adds a step to go back to.
 */
import { useCallback, useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import { type Address, readAddress, writeAddress } from '../pages';
import type { Session } from '../session/types';
import { demoCase, demoOf } from './demos';
import { reportStrangers } from './strangers';

const listeners = new Set<() => void>();
const tell = (): void => {
  for (const listener of listeners) listener();
};
const subscribe = (listener: () => void) => {
  listeners.add(listener);
  window.addEventListener('hashchange', listener);
  return () => {
    listeners.delete(listener);
    window.removeEventListener('hashchange', listener);
  };
};

export const useAddress = (session: Session) => {
  const [linked, setLinked] = useState(() => readAddress(location.hash).demo);
  /** The address that the session has heard of; another one was set by a link and is followed before anything is written over it. */
  const [followed, setFollowed] = useState(() => location.hash);
  // The address changed by hand, by a link or by going back: the session follows. Stands first, so that it hears of the change
  // before the page is drawn again from the old question and the address is put back.
  useEffect(() => {
    const follow = () => {
      const state = session.getState();
      const asked = readAddress(location.hash, { ...readAddress(''), question: state.question, reader: state.reader });
      if (asked.demo !== null) {
        setLinked(asked.demo);
        if (asked.demo !== demoOf(state.file)) session.commands.openCase(demoCase(asked.demo));
      }
      if (asked.question !== state.question) session.commands.ask(asked.question);
      if (asked.reader !== state.reader) session.commands.setReader(asked.reader);
      reportStrangers(session, location.hash);
      setFollowed(location.hash);
    };
    window.addEventListener('hashchange', follow);
    return () => window.removeEventListener('hashchange', follow);
  }, [session]);

  const hash = useSyncExternalStore(subscribe, () => location.hash);
  const { question, reader, file } = useSyncExternalStore(session.subscribe, session.getState);
  // An example asked for by its address stays in it until somebody changes the example: a reload shows it again, and never
  // throws away what was done.
  const untouched = useMemo(() => (linked === null ? null : demoOf(file)), [linked, file]);
  const demo = untouched === linked ? linked : null;
  const address: Address = { ...readAddress(hash), question, reader, demo };

  // The session changed: the address follows without a step to go back to.
  const written = writeAddress(address);
  useEffect(() => {
    if (location.hash !== followed || location.hash === written) return;
    history.replaceState(null, '', written);
    setFollowed(location.hash);
    tell();
  }, [written, followed]);

  const go = useCallback(
    (patch: Partial<Address>) => {
      const { question: asked, reader: chosen } = session.getState();
      const next = { ...readAddress(location.hash), question: asked, reader: chosen, ...patch };
      if (next.question !== asked) session.commands.ask(next.question);
      if (next.reader !== chosen) session.commands.setReader(next.reader);
      history.pushState(null, '', writeAddress(next));
      setFollowed(location.hash);
      tell();
    },
    [session],
  );
  const hrefOf = (patch: Partial<Address>): string => writeAddress({ ...address, ...patch });
  return { address, go, hrefOf };
};
