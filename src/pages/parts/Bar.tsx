/** The bar: name, which case, who is listening, and where to go. On a phone everything but one button is in the panel. */
import { type ReactNode, useCallback, useEffect, useState } from 'react';
import { READERS } from '../../ids';
import { usePages, useSession } from '../context';
import { FindDialog } from '../find/FindDialog';
import type { Page } from '../places';
import { CasePanel } from './CasePanel';
import { sideWords } from './Plate';

const RuleMark = () => (
  <svg className="rule-mark" viewBox="0 0 28 9" width="28" height="9" aria-hidden="true" focusable="false">
    <path d="M1 1V8H27V1M6 8V4M11 8V4M16 8V4M21 8V4" />
  </svg>
);

interface PageLinkProperties {
  readonly page: Page;
  readonly className?: string;
  readonly children: ReactNode;
}

export const PageLink = ({ page, className = '', children }: PageLinkProperties) => {
  const { hrefOf, address } = usePages();
  return (
    <a
      className={`button ${className}`.trim()}
      href={hrefOf({ page })}
      aria-current={address.page === page ? 'page' : undefined}
    >
      {children}
    </a>
  );
};

export const ReaderChoice = ({ name }: { readonly name: string }) => {
  const { say, session } = usePages();
  const reader = useSession((state) => state.reader);
  return (
    <fieldset className="segments">
      <legend className="unseen">{say('reader.label')}</legend>
      {READERS.map((each) => (
        <label key={each}>
          <input
            type="radio"
            name={name}
            value={each}
            checked={each === reader}
            onChange={() => session.commands.setReader(each)}
          />
          <span>{say(`reader.${each}`)}</span>
        </label>
      ))}
    </fieldset>
  );
};

const CaseLine = () => {
  const { say } = usePages();
  const file = useSession((state) => state.file);
  const explanation = useSession((state) => state.explanation);
  const kind = file.demo ? 'bar.invented' : file.claims.length === 0 ? 'bar.empty' : 'bar.own';
  return (
    <p className="case-line">
      {say('bar.caseLine', { kind: say(kind), side: sideWords(explanation, say).toLowerCase() })}
    </p>
  );
};

/** Two keys together and no single letter: a device that is spoken to would press that by chance. */
const useFindKey = (find: () => void) => {
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      if (event.key.toLowerCase() !== 'k' || !(event.ctrlKey || event.metaKey) || event.altKey || event.shiftKey)
        return;
      event.preventDefault();
      find();
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, [find]);
};

export const Bar = () => {
  const { say, address, hrefOf } = usePages();
  const [finding, setFinding] = useState(false);
  const find = useCallback(() => setFinding(true), []);
  useFindKey(find);
  return (
    <header className="bar">
      <a className="brand" href={hrefOf({ page: 'start' })}>
        {say('app.name')} <RuleMark />
      </a>
      <CaseLine />
      <div className="bar-reader">
        <ReaderChoice name="reader-bar" />
      </div>
      <nav className="bar-links" aria-label={say('bar.label')}>
        {address.page !== 'explain' && (
          <PageLink page="explain" className="bar-explain">
            {say('bar.explain')}
          </PageLink>
        )}
        <PageLink page="show" className="bar-show">
          {say('bar.show')}
        </PageLink>
        <span className="bar-wide">
          <PageLink page="say">{say('bar.say')}</PageLink>
          <PageLink page="hand">{say('bar.hand')}</PageLink>
          <PageLink page="ask">{say('bar.ask')}</PageLink>
        </span>
      </nav>
      <button type="button" className="button bar-find" onClick={find}>
        {say('find.open')}
      </button>
      <CasePanel onFind={find} />
      <FindDialog open={finding} onClose={() => setFinding(false)} />
    </header>
  );
};
