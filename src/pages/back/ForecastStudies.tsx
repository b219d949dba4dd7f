/** What the odds were made of: each study's people and spread, those left aside, the counts behind the three outcomes, what is assumed. */
import type { ExplainedForecast, StudySpread } from '../../explain/forecast-steps';
import type { FittedArm, Rate, TimedArm } from '../../recovery';
import { peopleOf } from '../../recovery/hundred';
import { formatNumber, peopleOfStudy, sourceName } from '../../wording';
import { usePages, useSession } from '../context';
import { wordKey } from '../words';

/** How many were counted: people, or their breaks. */
const useSize = () => {
  const { say } = usePages();
  const studies = useSession((state) => state.content.studies);
  return ({ id, n }: Pick<TimedArm, 'id' | 'n'>): string => {
    const isBreaks = studies.some((study) => study.id === id && study.nUnit === 'breaks');
    return n === null ? '' : say(isBreaks ? 'back.nBreaks' : 'back.n', { n });
  };
};

const Fitted = ({ arm, spread }: { readonly arm: FittedArm; readonly spread: StudySpread | undefined }) => {
  const { say } = usePages();
  const size = useSize();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  return (
    <li>
      <b>{sourceName(content, arm.source)}</b>, {say(`level.${arm.level}`)}: {peopleOfStudy(content, arm.id, reader)},{' '}
      {size(arm)}.{' '}
      {spread !== undefined &&
        spread.ten !== null &&
        spread.half !== null &&
        spread.ninety !== null &&
        say('forecast.fitted', {
          half: formatNumber(spread.half),
          ten: formatNumber(spread.ten),
          ninety: formatNumber(spread.ninety),
        })}{' '}
      {say(`forecast.from.${wordKey(arm.from)}`)}
    </li>
  );
};

const Aside = ({ arms, title }: { readonly arms: readonly TimedArm[]; readonly title: string }) => {
  const { say } = usePages();
  const size = useSize();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  return arms.length === 0 ? null : (
    <>
      <p className="list-head">{title}</p>
      <ul className="plain">
        {arms.map((arm) => (
          <li key={arm.id}>
            <b>{sourceName(content, arm.source)}</b>, {say(`level.${arm.level}`)}:{' '}
            {peopleOfStudy(content, arm.id, reader)}
            {arm.n === null ? '' : `, ${size(arm)}`}.{' '}
            {say('forecast.centre', {
              weeks: formatNumber(arm.centreWeeks),
              centre: say(reader === 'study' ? `centre.${arm.centre}` : `centre.plain.${arm.centre}`),
            })}
          </li>
        ))}
      </ul>
    </>
  );
};

const Counts = ({ title, rate }: { readonly title: string; readonly rate: Rate }) => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  return (
    <>
      <p className="list-head">
        {say(rate.levels === 'own' ? 'forecast.rate' : 'forecast.rateMixed', {
          title,
          share: peopleOf(rate.share),
          low: peopleOf(rate.low),
          high: peopleOf(rate.high),
        })}
      </p>
      <ul className="plain">
        {rate.arms.map(({ id, source, count, of, unit }) => (
          <li key={id}>
            {sourceName(content, source)}:{' '}
            {say(unit === 'breaks' ? 'studies.countOfBreaks' : 'studies.countOf', { count, of })}
          </li>
        ))}
      </ul>
    </>
  );
};

export const ForecastStudies = ({ forecast: { outcome, spreads } }: { readonly forecast: ExplainedForecast }) => {
  const { say } = usePages();
  if (outcome.kind === 'none') return null;
  if (outcome.kind === 'sideBySide') return <Aside arms={outcome.arms} title={say('forecast.sideBySide')} />;
  const { arms, problemArms, aside, within, between, problem, notReturned } = outcome;
  return (
    <div className="small-print">
      <p className="list-head">{say('forecast.inOdds')}</p>
      <ul className="plain">
        {arms.map((arm) => (
          <Fitted key={arm.id} arm={arm} spread={spreads.find(({ study }) => study === arm.id)} />
        ))}
      </ul>
      <p>
        {say('forecast.apart', { within: formatNumber(Math.exp(within)), between: formatNumber(Math.exp(between)) })}
      </p>
      <Aside arms={problemArms} title={say('forecast.afterTrouble')} />
      {problemArms.length === 0 && <p>{say('forecast.noTroubleTime')}</p>}
      <Aside arms={aside} title={say('forecast.aside')} />
      <Counts title={say('forecast.trouble')} rate={problem} />
      <Counts title={say('forecast.notBack')} rate={notReturned} />
      <p>{say('forecast.assumed')}</p>
    </div>
  );
};
