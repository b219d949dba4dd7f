/**
 * The page: the start with its doors, or bar, plate with its rule, and beside it whatever the address asks for. The plate stays
 * mounted from page to page.
 */
import { useEffect, useRef } from 'react';
import { AskPage } from './ask/AskPage';
import { KnownPage } from './case/KnownPage';
import { WayIn } from './case/WayIn';
import { usePages, useSession } from './context';
import { RulePage } from './evidence/RulePage';
import { SourcesPage } from './evidence/SourcesPage';
import { FindPage } from './find/FindPage';
import { HandoutPage } from './hand/HandoutPage';
import { HelpDialog } from './help/HelpDialog';
import { Note } from './note/Note';
import { Bar } from './parts/Bar';
import { FootRule } from './parts/FootRule';
import { Plate } from './parts/Plate';
import { ProblemPanel } from './parts/ProblemPanel';
import { PatientFoot, PatientTitle, PatientWeeks } from './patient/PatientScreen';
import type { Page } from './places';
import { ScriptPage } from './say/ScriptPage';
import { StartPage } from './start/StartPage';
import { WalkPage } from './walk/WalkPage';
import { WalkRule } from './walk/WalkRule';

/** Beside them the picture is of the plain foot, or of a question of its own: the five questions lead nowhere there. */
const WITHOUT_RULE: readonly Page[] = ['ask', 'rule', 'find'];

const Beside = ({ page }: { readonly page: Page }) => {
  if (page === 'new') return <WayIn />;
  if (page === 'known') return <KnownPage />;
  if (page === 'say') return <ScriptPage />;
  if (page === 'ask') return <AskPage />;
  if (page === 'walk') return <WalkPage />;
  if (page === 'rule') return <RulePage />;
  if (page === 'find') return <FindPage />;
  return <Note />;
};

/** Puts the focus on the heading of a page or a case that was just opened, so that a keyboard or a screen reader starts there. */
const useHeadingFocus = (page: Page, caseTick: number) => {
  const first = useRef(true);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another case is a new place even on the same page
  useEffect(() => {
    if (first.current) {
      first.current = false;
      return;
    }
    document.querySelector<HTMLElement>(`.page-${page} h1`)?.focus();
  }, [page, caseTick]);
};

/** Whatever remembers something of a case is made anew with the next one: `caseTick` is its key. */
const Screen = ({ page, caseTick }: { readonly page: Page; readonly caseTick: number }) => {
  const { say } = usePages();
  const patient = page === 'show';
  return (
    <>
      {!patient && (
        <button type="button" className="skip" onClick={() => document.getElementById('note')?.focus()}>
          {say('skip')}
        </button>
      )}
      {!patient && <Bar />}
      <main className="main">
        {patient && <PatientTitle />}
        <div className="figure-column" inert={page === 'hand' || page === 'sources'}>
          <Plate />
          {page === 'walk' ? <WalkRule /> : !patient && !WITHOUT_RULE.includes(page) && <FootRule />}
        </div>
        {patient && <PatientWeeks />}
        {patient ? (
          <PatientFoot />
        ) : page === 'hand' ? (
          <HandoutPage key={caseTick} />
        ) : page === 'sources' ? (
          <SourcesPage />
        ) : (
          <section id="note" className="note" tabIndex={-1} aria-label={say('note.label')}>
            <ProblemPanel />
            <Beside key={caseTick} page={page} />
          </section>
        )}
      </main>
    </>
  );
};

export const Shell = ({ message }: { readonly message: string }) => {
  const { say, address } = usePages();
  const stale = useSession((state) => state.stale);
  const explained = useSession((state) => state.explanation !== null);
  const { page } = address;
  const caseTick = useSession((state) => state.caseTick);
  useHeadingFocus(page, caseTick);
  return (
    <div className={`page page-${page}`} data-explained={explained && !stale}>
      {page === 'start' ? (
        <main>
          <StartPage />
        </main>
      ) : (
        <Screen page={page} caseTick={caseTick} />
      )}
      <HelpDialog />
      <p className="message" role="status" data-shown={message !== ''}>
        {message}
      </p>
      <p className="unseen" role="status">
        {stale ? say('note.working') : ''}
      </p>
    </div>
  );
};
