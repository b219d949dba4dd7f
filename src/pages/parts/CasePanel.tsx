/** Everything about the case as a thing to keep or lose, and how the screen looks. A native popover. */
import { useEffect, useId, useRef, useState } from 'react';
import { writeCase } from '../../cases';
import { THEMES } from '../../session/types';
import { saveCaseFile } from '../case/save-file';
import { usePages, useSession } from '../context';
import { DEMOS } from '../places';
import { wordKey } from '../words';
import { PageLink, ReaderChoice } from './Bar';
import { FinishDialog } from './FinishDialog';
import { OpenFile } from './OpenFile';

const Demos = ({ onDone }: { readonly onDone: () => void }) => {
  const { say, session, demoCase, go } = usePages();
  return (
    <section>
      <h2>{say('panel.demos')}</h2>
      <p className="small-print">{say('panel.demosNote')}</p>
      {DEMOS.map((demo) => (
        <button
          key={demo}
          type="button"
          className="choice"
          onClick={() => {
            const file = demoCase(demo);
            if (file === null) return;
            session.commands.openCase(file);
            go({ page: 'explain', question: 'where', demo: null });
            onDone();
          }}
        >
          {say(`demo.${wordKey(demo.replace('demo-', ''))}`)}
        </button>
      ))}
    </section>
  );
};

/** What stands behind the words; the rule only for those who learn or speak. */
const Behind = () => {
  const { say } = usePages();
  const reader = useSession((state) => state.reader);
  return (
    <section>
      <h2>{say('panel.behind')}</h2>
      <div className="panel-links">
        <PageLink page="sources">{say('evidence.title')}</PageLink>
        {reader !== 'patient' && <PageLink page="rule">{say('rule.title')}</PageLink>}
      </div>
    </section>
  );
};

const Looks = () => {
  const { say, session } = usePages();
  const theme = useSession((state) => state.theme);
  return (
    <fieldset className="plain-choices">
      <legend>{say('panel.look')}</legend>
      {THEMES.map((each) => (
        <label key={each}>
          <input type="radio" name="look" checked={each === theme} onChange={() => session.commands.setTheme(each)} />{' '}
          {say(`theme.${each}`)}
        </label>
      ))}
    </fieldset>
  );
};

export const CasePanel = ({ onFind }: { readonly onFind: () => void }) => {
  const { say, session, go, address } = usePages();
  const keep = useSession((state) => state.keepOnDevice);
  const file = useSession((state) => state.file);
  const id = useId();
  const panel = useRef<HTMLDivElement>(null);
  const [finishing, setFinishing] = useState(false);
  const close = () => panel.current?.hidePopover();
  // biome-ignore lint/correctness/useExhaustiveDependencies: going to another page closes the panel
  useEffect(close, [address.page]);
  const fresh = () => {
    session.commands.newCase();
    go({ page: 'new', question: 'where' });
    close();
  };
  return (
    <>
      <button type="button" className="button bar-case" popoverTarget={id}>
        {say('bar.case')}
      </button>
      <div id={id} ref={panel} popover="auto" className="panel">
        <div className="panel-narrow">
          <ReaderChoice name="reader-panel" />
          <button
            type="button"
            className="button panel-find"
            onClick={() => {
              close();
              onFind();
            }}
          >
            {say('find.open')}
          </button>
          <nav className="panel-links" aria-label={say('panel.places')}>
            <PageLink page="show">{say('bar.show')}</PageLink>
            <PageLink page="say">{say('bar.say')}</PageLink>
            <PageLink page="hand">{say('bar.hand')}</PageLink>
            <PageLink page="ask">{say('bar.ask')}</PageLink>
          </nav>
        </div>
        <section>
          <h2>{say('panel.case')}</h2>
          <div className="panel-links">
            <button type="button" className="button button-main" onClick={fresh}>
              {say('panel.new')}
            </button>
            <PageLink page="known">{say('panel.known')}</PageLink>
            <OpenFile onDone={close} />
            <button type="button" className="button" onClick={() => saveCaseFile(file, writeCase(file))}>
              {say('panel.save')}
            </button>
          </div>
        </section>
        <Behind />
        <Demos onDone={close} />
        <Looks />
        <section>
          <h2>{say('panel.device')}</h2>
          <label className="tick">
            <input
              type="checkbox"
              checked={keep}
              onChange={(event) => session.commands.setKeepOnDevice(event.currentTarget.checked)}
            />{' '}
            {say('panel.keep')}
          </label>
          <p className="small-print">{say(keep ? 'panel.keepOn' : 'panel.keepOff')}</p>
          <button type="button" className="button" onClick={() => setFinishing(true)}>
            {say('panel.finish')}
          </button>
        </section>
      </div>
      <FinishDialog
        open={finishing}
        onClose={() => {
          setFinishing(false);
          close();
        }}
      />
    </>
  );
};
