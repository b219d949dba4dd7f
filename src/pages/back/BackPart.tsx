/** Question 5: the stages on a rule in weeks with the published ranges, the studies behind them, what opens each next stage. */
import { formatWeeks, peopleOfStudy, sourceName, weeksOfArms } from '../../wording';
import { usePages, useSession } from '../context';
import { findingsOf } from '../findings';
import { Disclosure } from '../parts/Disclosure';
import { DatesFold } from './DatesFold';
import { FactorsFold } from './FactorsFold';
import { ReviewFold } from './ReviewFold';
import { type RangeRow, rangeRows } from './range-rows';
import { StagesFold } from './StagesFold';
import { useRowName } from './use-row-name';
import { WeeksRule } from './WeeksRule';

export const WeeksPart = () => {
  const explanation = useSession((state) => state.explanation);
  const reader = useSession((state) => state.reader);
  const stages = findingsOf(explanation, 'stageUsual');
  const rows = rangeRows(explanation, reader);
  // Where the clinic sets the weeks there is nothing to draw.
  const isTimed = stages.some(({ message }) => message.args.weeks !== null);
  return !isTimed && rows.length === 0 ? null : <WeeksRule stages={stages} rows={rows} />;
};

const Row = ({ row }: { readonly row: RangeRow }) => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  const name = useRowName();
  return (
    <li>
      <b>{name(row)}</b> {weeksOfArms(reader, row.arms, row.weeks)}{' '}
      {row.people !== null && say('back.people', { weeks: formatWeeks(row.people) })}
      <ul className="plain small-print">
        {row.arms.map((arm) => (
          <li key={arm.study}>
            {sourceName(content, arm.source)}: {peopleOfStudy(content, arm.study, reader)}
            {arm.n === null ? '' : `, ${say(arm.nUnit === 'people' ? 'back.n' : 'back.nBreaks', { n: arm.n })}`}
          </li>
        ))}
      </ul>
    </li>
  );
};

export const StageFold = () => {
  const { say } = usePages();
  const explanation = useSession((state) => state.explanation);
  const reader = useSession((state) => state.reader);
  const rows = rangeRows(explanation, reader);
  return (
    <>
      <StagesFold />
      {rows.length > 0 && (
        <Disclosure title={say('back.ranges')}>
          <ul className="plain">
            {rows.map((row) => (
              <Row key={row.key} row={row} />
            ))}
          </ul>
        </Disclosure>
      )}
      <ReviewFold />
      <FactorsFold />
      <DatesFold />
    </>
  );
};
