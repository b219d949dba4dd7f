/** Behind the rings: of 100 people, how many are back by the end of a week, as it stood at the start and after each follow-up. */
import type { ForecastStep } from '../../explain/forecast-steps';
import { usePages } from '../context';
import { ScrollBox } from '../parts/ScrollBox';

/** Every other week at first, then rarer: where little changes. */
const WEEKS = [2, 4, 6, 8, 10, 12, 14, 16, 20, 24, 28, 32, 40, 52, 78] as const;

export const stepName = (say: ReturnType<typeof usePages>['say'], { after }: ForecastStep): string =>
  after === null
    ? say('forecast.atStart')
    : after.week === null
      ? say('forecast.afterBreak')
      : say('forecast.afterWeek', { week: Math.floor(after.week) });

export const OddsTable = ({ steps }: { readonly steps: readonly ForecastStep[] }) => {
  const { say } = usePages();
  return (
    <ScrollBox label={say('forecast.table')}>
      <table className="odds-table">
        <caption className="unseen">{say('forecast.table')}</caption>
        <thead>
          <tr>
            <th scope="col">{say('forecast.week')}</th>
            {steps.map((step) => (
              <th key={step.after?.claim ?? 'start'} scope="col">
                {stepName(say, step)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {WEEKS.map((week) => (
            <tr key={week}>
              <th scope="row">{week}</th>
              {steps.map((step) => (
                <td key={step.after?.claim ?? 'start'}>
                  {week < step.forecast.afterWeek
                    ? say('forecast.past')
                    : say('forecast.ofHundred', { people: step.backBy[week] ?? 0 })}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollBox>
  );
};
