/** The page: bar, plate with its rule, and beside it whatever the address asks for. The plate stays mounted throughout. */
import { useEffect, useRef } from 'react';
import { AskPage } from './ask/AskPage';
import { KnownPage } from './case/KnownPage';
import { WayIn } from './case/WayIn';
import { usePages, useSession } from './context';
import { HandoutPage } from './hand/HandoutPage';
import { Note } from './note/Note';
import { Bar } from './parts/Bar';
import { FootRule } from './parts/FootRule';
import { Plate } from './parts/Plate';
import { ProblemPanel } from './parts/ProblemPanel';
import { PatientFoot, PatientTitle } from './patient/PatientScreen';
import type { Page } from './places';
import { ScriptPage } from './say/ScriptPage';

const Beside = ({ page }: { readonly page: Page }) => {
  if (page === 'new') return <WayIn />;
  if (page === 'known') return <KnownPage />;
  if (page === 'say') return <ScriptPage />;
  if (page === 'ask') return <AskPage />;
  return <Note />;
};

/** Puts the focus on the heading of a page that was just opened, so that a keyboard or a screen reader starts there. */
const useHeadingFocus = (page: Page) => {
  const first = useRef(true);
  useEffect(() => {
    if (first.current) {
      first.current = false;
      return;
    }
    document.querySelector<HTMLElement>(`.page-${page} h1`)?.focus();
  }, [page]);
};

export const Shell = ({ message }: { readonly message: string }) => {
  const { say, address } = usePages();
  const stale = useSession((state) => state.stale);
  const explained = useSession((state) => state.explanation !== null);
  const { page } = address;
  useHeadingFocus(page);
  const patient = page === 'show';
  return (
    <div className={`page page-${page}`} data-explained={explained && !stale}>
      {!patient && (
        <button type="button" className="skip" onClick={() => document.getElementById('note')?.focus()}>
          {say('skip')}
        </button>
      )}
      {!patient && <Bar />}
      <main className="main">
        {patient && <PatientTitle />}
        <div className="figure-column" inert={page === 'hand'}>
          <Plate />
          {!patient && page !== 'ask' && <FootRule />}
        </div>
        {patient ? (
          <PatientFoot />
        ) : page === 'hand' ? (
          <HandoutPage />
        ) : (
          <section id="note" className="note" tabIndex={-1} aria-label={say('note.label')}>
            <ProblemPanel />
            <Beside page={page} />
          </section>
        )}
      </main>
      <p className="message" role="status" data-shown={message !== ''}>
        {message}
      </p>
      <p className="unseen" role="status">
        {stale ? say('note.working') : ''}
      </p>
    </div>
  );
};
