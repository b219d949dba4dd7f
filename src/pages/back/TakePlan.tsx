/** Stages and reviews as a file: in weeks unless real dates are asked for. */
import { useId, useState } from 'react';
import { planCalendar, planOf, weekListText } from '../../telling';
import { saveBlob, saveText } from '../case/save-file';
import { usePages, useSession } from '../context';

const WAYS = ['weeks', 'dates'] as const;
type Way = (typeof WAYS)[number];

export const TakePlan = () => {
  const { say, announce } = usePages();
  const name = useId();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  const explanation = useSession((state) => state.explanation);
  const [asked, setAsked] = useState<Way>('weeks');
  if (explanation === null) return null;
  const plan = planOf(content, explanation, reader);
  if (plan.entries.length === 0) return null;
  const dated = plan.entries.some(({ from }) => from !== null);
  const way: Way = dated ? asked : 'weeks';
  const words: Readonly<Record<Way, string>> = {
    weeks: say('dates.takeWeeks'),
    dates: say(dated ? 'dates.takeDates' : 'dates.takeNoStart'),
  };
  const save = () => {
    const calendar = way === 'dates' ? planCalendar(explanation, plan, new Date().toISOString()) : null;
    if (calendar === null) saveText(weekListText(plan), 'underfoot-stages.txt');
    else saveBlob(new Blob([calendar], { type: 'text/calendar;charset=utf-8' }), 'underfoot-stages.ics');
    announce(say('dates.taken'));
  };
  return (
    <>
      <h3>{say('dates.take')}</h3>
      <p className="small-print">{say('dates.takeWhat')}</p>
      <fieldset className="plain-choices">
        <legend>{say('dates.takeAs')}</legend>
        {WAYS.map((each) => (
          <label key={each}>
            <input
              type="radio"
              name={name}
              checked={each === way}
              disabled={each === 'dates' && !dated}
              onChange={() => setAsked(each)}
            />{' '}
            {words[each]}
          </label>
        ))}
      </fieldset>
      <div className="row">
        <button type="button" className="button" onClick={save}>
          {say('dates.takeDo')}
        </button>
      </div>
    </>
  );
};
