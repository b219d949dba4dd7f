/**
 * What raises the load on this bone: each thing alone, as a change in percent with its band and where it moves the pull, what was
 * published on it side by side where it disagrees, and whether one step is enough or many are needed.
 */
import type { LoadFactor } from '../../content/schema';
import type { Spread } from '../../mechanics/foot/types';
import { contributorSays, wordFinding } from '../../wording';
import { usePages, useSession } from '../context';
import { type FindingOf, findingsOf } from '../findings';
import { Runs } from '../parts/Runs';
import { AskIt } from './AskIt';
import { Interval, IntervalAxis, type Scale, scaleOf } from './Interval';
import { signedPercent } from './multiples';
import { Published } from './Published';
import { type Loads, useLoads } from './use-loads';

type Contributor = FindingOf<'contributor'>;

const spreadOf = ({ message: { args } }: Contributor): Spread => {
  const [low, high] = args.ratio.lowHigh ?? [args.ratio.value, args.ratio.value];
  return { told: args.ratio.value, low, high };
};

/** What raises it most first; what hardly does, or cannot be told, last. */
const ORDER = { raises: 0, lowers: 0, hardly: 1, cannotTell: 2 } as const;
const ordered = (all: readonly Contributor[]): readonly Contributor[] =>
  all.toSorted(
    (a, b) =>
      ORDER[contributorSays(a.message.args)] - ORDER[contributorSays(b.message.args)] ||
      b.message.args.ratio.value - a.message.args.ratio.value,
  );

interface RowProperties {
  readonly contributor: Contributor;
  readonly loads: Loads;
  readonly scale: Scale;
}

/** For a patient the sentence and its line; for the others a line of the plot that opens. */
const Row = ({ contributor, loads, scale }: RowProperties) => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  const { args } = contributor.message;
  const of = loads.banded ?? loads.explanation;
  const says = contributorSays(args);
  const sentence = (
    <p className={loads.current ? undefined : 'held'}>
      <Runs runs={wordFinding(content, of, contributor, reader).runs} />
    </p>
  );
  // Beyond what the theory may state as a size there is nothing to draw to scale.
  const line = args.ranking ? null : (
    <Interval
      scale={scale}
      told={args.ratio.value}
      band={spreadOf(contributor)}
      held={!loads.current}
      tells={says !== 'cannotTell'}
    />
  );
  const factor = content.loadFactors.find(({ id }) => id === args.contributor);
  if (reader === 'patient')
    return (
      <li data-says={says}>
        {sentence}
        {disagreeing(factor) && <p className="small-print">{say('whyHere.disagrees')}</p>}
        {line}
      </li>
    );
  return (
    <li data-says={says}>
      <details className="contributor">
        <summary>
          <ContributorName contributor={contributor} factor={factor} />
          {line}
        </summary>
        {sentence}
        {factor !== undefined && <Published factor={factor} />}
        <AskIt explanation={of} finding={contributor} />
      </details>
    </li>
  );
};

/** Published evidence says more than one thing. */
const disagreeing = (factor: LoadFactor | undefined): boolean =>
  new Set(factor?.published.map(({ says }) => says)).size > 1;

const RANK_WORDS = { raises: 'whyHere.more', lowers: 'whyHere.less', hardly: 'whyHere.hardly' } as const;

const SHIFT_WORDS = {
  toHead: { sized: 'whyHere.toHead', rank: 'whyHere.toHeadRank' },
  toTip: { sized: 'whyHere.toTip', rank: 'whyHere.toTipRank' },
  stays: { sized: 'whyHere.stays', rank: 'whyHere.stays' },
  cannotTell: { sized: 'whyHere.shiftUnknown', rank: 'whyHere.shiftUnknown' },
} as const;

/** Where the middle of the plateau goes. */
const Shift = ({ contributor }: Pick<NameProperties, 'contributor'>) => {
  const { say } = usePages();
  const { moves, by, sized } = contributor.message.args.shift;
  return (
    <span className="small-print contributor-shift">
      {say(SHIFT_WORDS[moves][sized ? 'sized' : 'rank'], { mm: Math.abs(by.value).toFixed(1) })}
    </span>
  );
};

interface NameProperties {
  readonly contributor: Contributor;
  readonly factor: LoadFactor | undefined;
}

/** Its name, how much it changes, or that this cannot be told; and that what was published disagrees. */
const ContributorName = ({ contributor, factor }: NameProperties) => {
  const { say } = usePages();
  const study = useSession((state) => state.reader === 'study');
  const { args } = contributor.message;
  const says = contributorSays(args);
  return (
    <span className="contributor-name">
      <span>{study ? factor?.term : factor?.plain}</span>
      {says === 'cannotTell' ? (
        <span className="cannot-tell">{say('whyHere.cannotTell')}</span>
      ) : args.ranking ? (
        <span>{say(RANK_WORDS[says])}</span>
      ) : (
        <span>{say('whyHere.percent', { percent: signedPercent(args.ratio.value) })}</span>
      )}
      <Shift contributor={contributor} />
      {disagreeing(factor) && <span className="disagrees">{say('whyHere.disagrees')}</span>}
    </span>
  );
};

const OneStep = ({ loads }: { readonly loads: Loads }) => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  const of = loads.banded ?? loads.explanation;
  const finding = findingsOf(of, 'oneStep')[0];
  if (finding === undefined) return null;
  return (
    <section className="one-step">
      <h2 className="fold-head">{say('whyHere.oneStep')}</h2>
      <p className={loads.current ? undefined : 'held'}>
        <Runs runs={wordFinding(content, of, finding, reader).runs} />
      </p>
      {reader !== 'patient' && <AskIt explanation={of} finding={finding} />}
    </section>
  );
};

export const WhyHere = () => {
  const { say } = usePages();
  const loads = useLoads('contributors');
  if (loads === null) return <p>{say('stations.none')}</p>;
  const all = findingsOf(loads.banded, 'contributor');
  const scale = scaleOf(1, all.map(spreadOf));
  const ranks = (loads.banded?.loads ?? loads.loads).ranksOnly;
  return (
    <div className="why-here" data-bands={loads.current ? 'current' : loads.banded ? 'before' : 'none'}>
      <p className="small-print">{say('whyHere.what')}</p>
      {!loads.current && <p className="held">{say(all.length > 0 ? 'whyHere.workingHeld' : 'whyHere.working')}</p>}
      {all.length > 0 && (
        <>
          {!ranks && <IntervalAxis scale={scale} text={signedPercent} />}
          <ul className="contributors">
            {ordered(all).map((each) => (
              <Row key={each.id} contributor={each} loads={loads} scale={scale} />
            ))}
          </ul>
          {!ranks && <IntervalAxis scale={scale} text={signedPercent} />}
          <p className="small-print">{say(ranks ? 'whyHere.rankKey' : 'whyHere.key')}</p>
        </>
      )}
      <OneStep loads={loads} />
    </div>
  );
};
