/** Study arms as printed: arms of one trial together, with who was studied and how surely it was read. */
import type { ArmFigures } from '../../explain/messages';
import { peopleOfStudy, sourceLine } from '../../wording';
import { usePages, useSession } from '../context';
import { findingsOf } from '../findings';
import { Known } from '../parts/Runs';
import { ScrollBox } from '../parts/ScrollBox';
import { wordKey } from '../words';
import { Event } from './Event';
import { rounded } from './rounded';

const Time = ({ arm }: { readonly arm: ArmFigures }) => {
  const { say } = usePages();
  const reader = useSession((state) => state.reader);
  if (arm.time === null) return <>{say('studies.notCounted')}</>;
  const { weeks, endpoint, centre } = arm.time;
  const span = weeks.lowHigh === undefined ? '' : ` (${rounded(weeks.lowHigh[0])}–${rounded(weeks.lowHigh[1])})`;
  return (
    <>
      <Known mark={arm.mark}>{say('studies.weeks', { weeks: rounded(weeks.value) + span })}</Known>{' '}
      {say('studies.to', {
        centre: say(reader === 'study' ? `centre.${centre}` : `centre.plain.${centre}`),
        endpoint: say(`endpoint.${wordKey(endpoint)}`),
      })}
    </>
  );
};

export const Studies = () => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  const explanation = useSession((state) => state.explanation);
  const trials = findingsOf(explanation, 'trialArms');
  if (trials.length === 0) return null;
  const optionName = (arm: ArmFigures): string => {
    const option = content.options.find((each) => each.id === arm.option);
    return (reader === 'patient' ? option?.plain : option?.term) ?? arm.option;
  };
  const sourceText = (arm: ArmFigures): string => {
    const source = content.sources.find((each) => each.id === arm.source);
    return source === undefined ? '' : sourceLine(source);
  };
  return (
    <>
      <h2>{say('studies.title')}</h2>
      <p className="small-print">
        {say('studies.note')} {say('studies.squares')}
      </p>
      <ScrollBox label={say('studies.title')}>
        <table className="studies">
          <caption className="unseen">{say('studies.title')}</caption>
          <thead>
            <tr>
              {['option', 'who', 'people', 'event', 'time'].map((key) => (
                <th key={key} scope="col">
                  {say(`studies.column.${key}`)}
                </th>
              ))}
            </tr>
          </thead>
          {trials.map((finding) => (
            <tbody key={finding.id}>
              <tr className="trial-row">
                <th colSpan={5} scope="rowgroup">
                  {say(`design.${finding.message.args.design}`)}.{' '}
                  <span className="small-print">
                    {[...new Set(finding.message.args.arms.map(sourceText))].join(' ')}
                  </span>
                </th>
              </tr>
              {finding.message.args.arms.map((arm) => (
                <tr key={arm.study}>
                  <th scope="row">{optionName(arm)}</th>
                  <td>
                    {peopleOfStudy(content, arm.study, reader)}. {say(`level.${arm.level}`)}.
                  </td>
                  <td>{arm.n ?? say('studies.notCounted')}</td>
                  <td>
                    <Event arm={arm} />
                  </td>
                  <td>
                    <Time arm={arm} />
                  </td>
                </tr>
              ))}
            </tbody>
          ))}
        </table>
      </ScrollBox>
    </>
  );
};
