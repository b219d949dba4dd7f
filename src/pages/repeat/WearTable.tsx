/** The numbers of the drawing, week by week. */
import type { Mark } from '../../content/schema';
import type { Ranged } from '../../mechanics/repetition';
import { useWords } from '../context';
import { Known } from '../parts/Runs';
import { ScrollBox } from '../parts/ScrollBox';
import { useRangeWords } from './use-range-words';
import type { WearWeek } from './wear';

interface Properties {
  readonly weeks: readonly WearWeek[];
  readonly kind: 'distance' | 'sessions';
  readonly mark: Mark;
}

export const WearTable = ({ weeks, kind, mark }: Properties) => {
  const say = useWords();
  const words = useRangeWords(true);
  const cell = (range: Ranged) => (
    <td>
      <Known mark={mark}>{words(range)}</Known>
    </td>
  );
  return (
    <ScrollBox label={say('repeat.table')}>
      <table className="wear-table">
        <caption className="unseen">{say('repeat.table')}</caption>
        <thead>
          <tr>
            <th scope="col">{say('repeat.column.week')}</th>
            <th scope="col">{say(`repeat.column.${kind}`)}</th>
            <th scope="col">{say('repeat.column.done')}</th>
            <th scope="col">{say('repeat.column.left')}</th>
          </tr>
        </thead>
        <tbody>
          {weeks.map((week) => (
            <tr key={week.week}>
              <th scope="row">{week.week}</th>
              <td>{week.amount}</td>
              {cell(week.done)}
              {cell(week.left)}
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollBox>
  );
};
