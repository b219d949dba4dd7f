/** Where no odds are pooled: each study by itself, as rings on its own rule, with its level. Nothing is put together. */
import type { StudySpread } from '../../explain/forecast-steps';
import { peopleOfStudy, sourceName } from '../../wording';
import { usePages, useSession } from '../context';
import { OddsRule } from './OddsRule';

const whole = (week: number | null): string => (week === null ? '' : String(Math.ceil(week)));

export const StudyRules = ({ spreads }: { readonly spreads: readonly StudySpread[] }) => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  return spreads.map((spread, index) => {
    const { study, source, level, n, ten, half, ninety, forecast } = spread;
    const { afterWeek } = forecast;
    return (
      <section key={study} className="study-rule">
        <p>
          <b>
            {sourceName(content, source)}, {say(`level.${level}`)}
          </b>
          : {peopleOfStudy(content, study, reader)}, {say('forecast.cases', { n })}.{' '}
          {afterWeek === 0
            ? say('forecast.oneStudy', { half: whole(half), ten: whole(ten), ninety: whole(ninety) })
            : say('forecast.oneStudyAfter', {
                week: Math.floor(afterWeek),
                half: whole(half),
                ten: whole(ten),
                ninety: whole(ninety),
              })}
        </p>
        <OddsRule step={spread} explained={index === 0} />
      </section>
    );
  });
};
