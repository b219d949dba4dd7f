/** What goes along with slow healing, factor by factor: each published size in words and as an interval on a rule. For whoever tells or learns. */
import { scaleLog } from 'd3-scale';
import type { MessageOf } from '../../explain/messages';
import type { Explanation } from '../../explain/types';
import { namesFor, sourceName, wordFinding } from '../../wording';
import { usePages, useSession } from '../context';
import { findingsOf, isToldTo } from '../findings';
import { Disclosure } from '../parts/Disclosure';
import { Runs } from '../parts/Runs';

type Finding = Explanation['questions'][number]['findings'][number];
type Effect = MessageOf<'factorEffect'>['args'];

const [WIDTH, HEIGHT, EDGE] = [220, 18, 4] as const;
/** Sizes beyond would be cut off at the end of the rule; all of ours lie within. */
const [LEAST, MOST] = [0.1, 60] as const;

const EffectLine = ({ size: { value, lowHigh = [value, value] } }: Pick<Effect, 'size'>) => {
  const x = scaleLog([LEAST, MOST], [EDGE, WIDTH - EDGE]).clamp(true);
  return (
    <svg className="effect" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} width={WIDTH} height={HEIGHT} aria-hidden="true">
      <path className="comparison-none" d={`M${x(1)} 0V${HEIGHT}`} />
      <path className="range-people" d={`M${x(lowHigh[0])} ${HEIGHT / 2}H${x(lowHigh[1])}`} />
      <circle className="range-ring" cx={x(value)} cy={HEIGHT / 2} r={4} />
    </svg>
  );
};

const useWorded = () => {
  const content = useSession((state) => state.content);
  const explanation = useSession((state) => state.explanation);
  const reader = useSession((state) => state.reader);
  return (finding: Finding) => (explanation === null ? [] : wordFinding(content, explanation, finding, reader).runs);
};

export const FactorsFold = () => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const explanation = useSession((state) => state.explanation);
  const reader = useSession((state) => state.reader);
  const worded = useWorded();
  // A patient is told what slows healing and what to ask, not by how much in others.
  const effects = findingsOf(explanation, 'factorEffect').filter(isToldTo(reader));
  const waits = findingsOf(explanation, 'factorWaits').filter(isToldTo(reader));
  const contradicted = findingsOf(explanation, 'factorsDisagree');
  const texts = findingsOf(explanation, 'contentText').filter(
    ({ message: { args } }) => args.at.kind === 'factorAgainst' || args.at.kind === 'factorLimit',
  );
  const factors = [...new Set([...effects, ...waits].map(({ message }) => message.args.factor))];
  if (factors.length === 0) return null;
  const names = namesFor(content, reader);
  const sourcesOf = (finding: Finding) =>
    finding.basis.sources.map(({ source }) => (source === null ? '' : sourceName(content, source)));
  return (
    <Disclosure title={say('factors.title')}>
      <p className="small-print">{say('factors.note')}</p>
      {factors.map((factor) => (
        <section key={factor}>
          <p className="list-head">{names.factor(factor)}</p>
          <ul className="plain">
            {effects
              .filter(({ message }) => message.args.factor === factor)
              .map((finding) => (
                <li key={finding.id}>
                  <EffectLine size={finding.message.args.size} />
                  <Runs runs={worded(finding)} />{' '}
                  <span className="small-print">
                    {say(finding.message.args.about === 'healing' ? 'factors.healing' : 'factors.getting')}.{' '}
                    {sourcesOf(finding)}
                  </span>
                </li>
              ))}
            {waits
              .filter(({ message }) => message.args.factor === factor)
              .map((finding) => (
                <li key={finding.id}>
                  <Runs runs={worded(finding)} />{' '}
                  <span className="small-print">
                    {say('factors.healing')}. {sourcesOf(finding)}
                  </span>
                </li>
              ))}
            {contradicted
              .filter(({ message }) => message.args.factor === factor)
              .map((finding) => (
                <li key={finding.id}>
                  <b>
                    <Runs runs={worded(finding)} />
                  </b>
                </li>
              ))}
            {texts
              .filter(({ message: { args } }) => 'factor' in args.at && args.at.factor === factor)
              .map((finding) => (
                <li key={finding.id}>
                  <Runs runs={worded(finding)} />
                </li>
              ))}
          </ul>
        </section>
      ))}
    </Disclosure>
  );
};
