/** Days are added from a calendar file or typed, all or none; what is wrong stands beside the field with its line. */
import { type FormEvent, useId, useState } from 'react';
import { MOST_FIXTURES } from '../../cases';
import { type FixtureProblem, fixtureProblem } from '../../cases/fixtures/problems';
import { readList } from '../../cases/fixtures/read-list';
import { type FixturesRead, inOrder, type LeftOut } from '../../cases/fixtures/result';
import { addWeeks } from '../../recovery/calendar';
import type { IsoDate } from '../../units';
import { localDay } from '../../units/local-day';
import { usePages, useSession } from '../context';
import type { Say } from '../words';

/** Two years: every forecast has levelled off long before. */
const HORIZON_WEEKS = 104;

const leftOutLine = (say: Say, { cancelled, before, after, more }: Readonly<LeftOut>): string => {
  const parts = [
    cancelled > 0 ? say('dates.leftCancelled', { count: cancelled }) : null,
    before > 0 ? say('dates.leftBefore', { count: before }) : null,
    after > 0 ? say('dates.leftAfter', { count: after }) : null,
    more > 0 ? say('dates.leftMore', { count: more, limit: MOST_FIXTURES }) : null,
  ].filter((part) => part !== null);
  return parts.length === 0 ? '' : say('dates.leftOut', { list: parts.join(', ') });
};

interface Told {
  readonly problems: readonly Omit<FixtureProblem, 'code'>[];
  readonly done: string;
}
const NOTHING: Told = { problems: [], done: '' };

const Problems = ({ problems }: Pick<Told, 'problems'>) => {
  const { say } = usePages();
  return (
    <div role="alert">
      {problems.length > 0 && (
        <div className="dates-problems">
          <p className="error">{say('dates.problems')}</p>
          <ul className="plain">
            {problems.map(({ line, what, remedy }) => (
              <li key={`${line} ${what}`}>
                {line === null
                  ? say('dates.problem', { what, remedy })
                  : say('dates.problemLine', { line, what, remedy })}
              </li>
            ))}
          </ul>
        </div>
      )}
    </div>
  );
};

/** What reading gave goes into the case, or is told. True when it went. */
const useTake = (tell: (told: Told) => void) => {
  const { say, session, announce } = usePages();
  return (read: FixturesRead): boolean => {
    if (!read.ok) {
      tell({ problems: read.problems, done: '' });
      return false;
    }
    const { fixtures } = session.getState().file;
    const all = inOrder([...fixtures, ...read.fixtures]);
    if (all.length > MOST_FIXTURES) {
      const values = { count: all.length, limit: MOST_FIXTURES };
      tell({ problems: [fixtureProblem('tooMany', null, values)], done: '' });
      return false;
    }
    session.commands.setFixtures(all);
    if (session.getState().problem !== null) return false;
    const count = say('dates.added', { count: all.length - fixtures.length });
    const done = `${count} ${leftOutLine(say, read.leftOut)}`.trim();
    tell({ problems: [], done });
    announce(done);
    return true;
  };
};

export const AddFixtures = () => {
  const { say } = usePages();
  const id = useId();
  const start = useSession((state) => state.explanation?.start ?? null);
  const [text, setText] = useState('');
  const [told, setTold] = useState(NOTHING);
  const take = useTake(setTold);
  const options = () => {
    const from: IsoDate = start?.date ?? localDay(new Date());
    return { from, to: addWeeks(from, HORIZON_WEEKS), unnamed: say('dates.unnamed') };
  };
  const readFile = async (input: HTMLInputElement) => {
    const file = input.files?.[0];
    if (file === undefined) return;
    try {
      const { readCalendar, calendarTooBig } = await import('../../cases/fixtures/read-calendar');
      const big = calendarTooBig(file.size);
      const zone = new Intl.DateTimeFormat().resolvedOptions().timeZone;
      // One that is too large is not even read into memory.
      if (big !== null) take({ ok: false, problems: [big] });
      else take(readCalendar(new Uint8Array(await file.arrayBuffer()), { ...options(), zone }));
    } catch (failure) {
      // The device gave no bytes, or the reader of calendars could not be loaded.
      console.warn(failure);
      setTold({ problems: [{ line: null, what: say('dates.unread'), remedy: '' }], done: '' });
    }
    input.value = '';
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (take(readList(text, { ...options(), start: start?.date ?? null }))) setText('');
  };
  return (
    <>
      <h3>{say('dates.add')}</h3>
      <label className="button file-button">
        {say('dates.file')}
        <input
          type="file"
          className="unseen"
          accept=".ics,text/calendar"
          aria-describedby={`${id}fileWhat`}
          onChange={(event) => void readFile(event.currentTarget)}
        />
      </label>
      <p id={`${id}fileWhat`} className="small-print">
        {say('dates.fileWhat')}
      </p>
      <form onSubmit={submit} noValidate>
        <p className="field">
          <label htmlFor={`${id}list`}>{say('dates.list')}</label>
          <textarea
            id={`${id}list`}
            rows={3}
            value={text}
            aria-describedby={`${id}listWhat`}
            spellCheck={false}
            onChange={(event) => setText(event.currentTarget.value)}
          />
        </p>
        <p id={`${id}listWhat`} className="small-print">
          {say('dates.listWhat')}
        </p>
        <button type="submit" className="button">
          {say('dates.addList')}
        </button>
      </form>
      <Problems problems={told.problems} />
      {told.done !== '' && <p>{told.done}</p>}
    </>
  );
};
