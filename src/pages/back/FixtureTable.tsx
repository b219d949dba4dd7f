/** The days a person wants to be back for: name, week and day, the chance to be back, and how many of them are missed. */
import type { Fixture } from '../../cases';
import type { Forecast, Missed } from '../../recovery';
import { formatDate } from '../../wording';
import { usePages, useSession } from '../context';
import { ColumnHeads } from '../parts/ColumnHeads';
import { thenNextItem } from '../parts/focus-onward';
import { chancePercent, chanceWords } from './chance-words';
import { type FixtureRow, fixtureTable } from './fixture-rows';

const useDayWords = () => {
  const { say } = usePages();
  return ({ fixture, week }: FixtureRow): string => {
    const date = formatDate(fixture.on);
    if (week === null) return date;
    return week < 0 ? say('dates.before', { date }) : say('dates.weekAndDay', { week: Math.floor(week), date });
  };
};

const Row = ({ row, onRemove }: { readonly row: FixtureRow; readonly onRemove: () => void }) => {
  const { say } = usePages();
  const dayWords = useDayWords();
  const { fixture, chance } = row;
  return (
    <tr ref={thenNextItem}>
      <th scope="row">
        {fixture.name}
        <span>{dayWords(row)}</span>
      </th>
      <td>
        {chance !== null && (
          <>
            {chanceWords(say, chance)} ({chancePercent(say, chance)})
          </>
        )}
        <button
          type="button"
          className="linkish dates-remove"
          aria-label={say('dates.removeOf', { name: fixture.name })}
          onClick={onRemove}
        >
          {say('dates.remove')}
        </button>
      </td>
    </tr>
  );
};

const MissedLine = ({ missed }: { readonly missed: Missed }) => {
  const { say } = usePages();
  const { of, mean, low, high } = missed;
  const shown = Math.round(10 * mean) / 10;
  const line =
    of === 1
      ? say('dates.missedOne', { percent: Math.round(100 * mean) })
      : low === high
        ? say('dates.missedSame', { of, mean: shown, low })
        : say('dates.missed', { of, mean: shown, low, high });
  return (
    <>
      <p>
        <b>{line}</b>
      </p>
      <p className="small-print">{say('dates.assumed')}</p>
    </>
  );
};

export const FixtureTable = ({ forecast }: { readonly forecast: Forecast | null }) => {
  const { say, session, announce } = usePages();
  const fixtures = useSession((state) => state.file.fixtures);
  const start = useSession((state) => state.explanation?.start ?? null);
  if (fixtures.length === 0) return null;
  const { rows, missed } = fixtureTable(fixtures, start?.date ?? null, forecast);
  const remove = (gone: Fixture) => {
    session.commands.setFixtures(fixtures.filter((each) => each !== gone));
    announce(say('dates.removed'));
  };
  return (
    <>
      <table>
        <caption>{say('dates.table')}</caption>
        <ColumnHeads of={['dates.day', 'dates.back']} />
        <tbody>
          {rows.map((row) => (
            <Row key={row.key} row={row} onRemove={() => remove(row.fixture)} />
          ))}
        </tbody>
      </table>
      {missed !== null && <MissedLine missed={missed} />}
    </>
  );
};
