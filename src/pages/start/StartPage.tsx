/**
 * The first minute: three doors on a foot-rule, one for each of the three who come here. Words only, so that it stands before any
 * picture does, and it shows nothing of a case: of one that is kept on this device it says no more than that it is there.
 */
import type { ReactNode } from 'react';
import { writeCase } from '../../cases';
import { saveCaseFile } from '../case/save-file';
import { usePages, useSession } from '../context';
import { OpenFile } from '../parts/OpenFile';
import { ProblemPanel } from '../parts/ProblemPanel';
import { RuleTicks } from '../parts/RuleTicks';
import type { Address, Demo } from '../places';
import { wordKey } from '../words';

export const DOORS = ['patient', 'segment', 'test'] as const;

interface DoorProperties {
  readonly name: (typeof DOORS)[number];
  readonly href: string;
  readonly onOpen?: () => void;
  readonly children: ReactNode;
}

const Door = ({ name, href, onOpen, children }: DoorProperties) => {
  const { say } = usePages();
  return (
    <li className="door">
      <div className="door-main">
        <RuleTicks />
        <p className="door-number" aria-hidden="true">
          {DOORS.indexOf(name) + 1}
        </p>
        <h2>
          <a href={href} onClick={onOpen}>
            {say(`start.${name}`)}
          </a>
        </h2>
        <p>{say(`start.${name}.gives`)}</p>
      </div>
      <p className="door-other">{children}</p>
    </li>
  );
};

const KeptCase = () => {
  const { say, session, go } = usePages();
  const file = useSession((state) => state.file);
  return (
    <section className="start-kept">
      <p>{say('start.kept')}</p>
      <div className="row">
        <button
          type="button"
          className="button"
          onClick={() => {
            session.commands.newCase();
            go({ page: 'new', question: 'where', demo: null });
          }}
        >
          {say('start.anew')}
        </button>
        <button type="button" className="button" onClick={() => saveCaseFile(file, writeCase(file))}>
          {say('panel.save')}
        </button>
      </div>
    </section>
  );
};

export const StartPage = () => {
  const { say, session, hrefOf } = usePages();
  const file = useSession((state) => state.file);
  const kept = file.demo === undefined && file.claims.length > 0;
  const to = (patch: Partial<Address>): string => hrefOf({ question: 'where', demo: null, ...patch });
  const example = (demo: Demo, patch: Partial<Address>) => (
    <a href={to({ ...patch, demo })}>
      {say('start.example', { example: say(`demo.${wordKey(demo.replace('demo-', ''))}`) })}
    </a>
  );
  /** The quiz is on the plain foot: an invented case has no business beside it. */
  const withoutExample = () => {
    if (session.getState().file.demo !== undefined) session.commands.newCase();
  };
  return (
    <div className="start">
      <div className="start-plate">
        <ProblemPanel />
        <header className="start-head">
          <h1 tabIndex={-1}>{say('app.name')}</h1>
          <p className="one-sentence">{say('start.what')}</p>
        </header>
        {kept && <KeptCase />}
        <nav aria-label={say('start.doors')}>
          <ol className="doors">
            <Door name="patient" href={to({ page: kept ? 'explain' : 'new', reader: 'patient' })}>
              {example('demo-handball', { page: 'explain', reader: 'patient' })}
            </Door>
            <Door name="segment" href={to({ page: kept ? 'say' : 'new', reader: 'broadcast' })}>
              {example('demo-hill-runner', { page: 'say', reader: 'broadcast' })}
            </Door>
            <Door name="test" href={to({ page: 'ask', reader: 'study' })} onOpen={withoutExample}>
              <a href={to({ page: 'walk', reader: 'study' })}>{say('start.walk')}</a>
            </Door>
          </ol>
        </nav>
        <p className="start-find">
          <a href={to({ page: 'find', card: null })}>{say('seek.fromStart')}</a>
        </p>
        <div className="start-foot">
          <p className="small-print">{say('start.limits')}</p>
          <OpenFile />
        </div>
      </div>
    </div>
  );
};
