/** The stages as a list: what it is, its weeks and dates, and the criteria that open the next one. Criteria, not the calendar. */
import { formatDate, formatWeeks } from '../../wording';
import { usePages, useSession } from '../context';
import type { FindingOf } from '../findings';

export const StageList = ({ stages }: { readonly stages: readonly FindingOf<'stageUsual'>[] }) => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  return (
    <ol className="stages">
      {stages.map((finding) => {
        const { stage: id, weeks, dates } = finding.message.args;
        const stage = content.stages.find((each) => each.id === id);
        if (stage === undefined) return null;
        return (
          <li key={finding.id}>
            <p>
              <b>{reader === 'patient' ? stage.plain : stage.term}</b>{' '}
              {weeks === null ? say('back.noWeeks') : formatWeeks(weeks)}
              {dates !== null && (
                <>
                  {' '}
                  {say('back.dates', {
                    from: formatDate(dates.from),
                    to: dates.to === null ? say('back.openEnd') : formatDate(dates.to),
                  })}
                </>
              )}
            </p>
            <p>{stage.what[reader]}</p>
            {stage.opensNext.length > 0 && (
              <>
                <p className="list-head">{say('back.opens')}</p>
                <ul className="criteria">
                  {stage.opensNext.map((criterion) => (
                    <li key={criterion.what.study}>{criterion.what[reader]}</li>
                  ))}
                </ul>
              </>
            )}
            {stage.sendsBack.length > 0 && (
              <>
                <p className="list-head">{say('back.sendsBack')}</p>
                <ul className="criteria">
                  {stage.sendsBack.map((criterion) => (
                    <li key={criterion.what.study}>{criterion.what[reader]}</li>
                  ))}
                </ul>
              </>
            )}
          </li>
        );
      })}
    </ol>
  );
};
