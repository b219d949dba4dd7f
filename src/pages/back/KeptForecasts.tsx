/** The odds that were given before, as the case keeps them, and how each did once it is known what happened. */
import { useMemo } from 'react';
import type { KeptForecast } from '../../cases';
import type { Forecast } from '../../recovery';
import { hundredOf } from '../../recovery/hundred';
import { formatDate, plainText, wordFinding } from '../../wording';
import { usePages, useSession } from '../context';
import { findingsOf } from '../findings';
import { useEndpointName } from './use-endpoint-name';

/** Where the branches are kept in the order of a forecast: the schema of the case asks for it. */
const peopleOf = ({ branches }: KeptForecast) => hundredOf({ branches: branches as Forecast['branches'] });

export const KeptForecasts = () => {
  const { say, session } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  const explanation = useSession((state) => state.explanation);
  const kept = useSession((state) => state.file.forecasts);
  const name = useEndpointName();
  const scores = useMemo(
    () =>
      explanation === null
        ? []
        : findingsOf(explanation, 'forecastScored').map((finding) => ({
            id: finding.id,
            text: plainText(wordFinding(content, explanation, finding, reader)),
          })),
    [content, explanation, reader],
  );
  return (
    <>
      <p>{say('kept.note')}</p>
      {kept.length === 0 && <p>{say('kept.none')}</p>}
      <ul className="plain">
        {kept.map((each, index) => (
          <li key={JSON.stringify(each)}>
            {say('kept.line', {
              endpoint: name(each.endpoint),
              week: Math.floor(each.atWeek),
              date: each.madeOn === null ? say('kept.noDay') : formatDate(each.madeOn),
              trouble: peopleOf(each).trouble,
              notBack: peopleOf(each).notBack,
            })}{' '}
            <button type="button" className="linkish" onClick={() => session.commands.dropForecast(index)}>
              {say('kept.drop')}
            </button>
          </li>
        ))}
      </ul>
      {scores.map(({ id, text }) => (
        <p key={id}>{text}</p>
      ))}
    </>
  );
};
