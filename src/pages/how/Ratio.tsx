/** How hard the bone is pulled, against pushing off when walking: in numbers only where enough of the draws may state one. */
import { wordFinding } from '../../wording';
import { usePages, useSession } from '../context';
import { findingsOf } from '../findings';
import { Runs } from '../parts/Runs';
import { AskIt } from './AskIt';
import { Interval, IntervalAxis, scaleOf } from './Interval';
import { multipleOf, short } from './multiples';
import { useActivityName } from './use-activity-name';
import { type Loads, useLoads } from './use-loads';

/**
 * Whether a size may be shown: neither this run nor too many draws of the bands last seen are beyond the theory. Before any bands
 * nobody knows, and a number that the next second takes back is none.
 */
const isSized = ({ loads, banded }: Loads): boolean => !loads.ranksOnly && banded?.loads?.ranksOnly === false;

/** Until the band is there: the number and the band of the value before, or what is being worked out. */
const Working = ({ loads, times }: { readonly loads: Loads; readonly times: number }) => {
  const { say } = usePages();
  const named = useActivityName();
  const before = loads.banded?.loads?.bands?.ratio ?? null;
  if (!isSized(loads) || before === null) return <p className="held">{say('ratio.workingRank')}</p>;
  return (
    <>
      <p>{say('ratio.told', { times: short(times), reference: named(loads.loads.reference) })}</p>
      <p className="held">{say('ratio.workingHeld', { low: short(before.low), high: short(before.high) })}</p>
    </>
  );
};

const Told = ({ loads }: { readonly loads: Loads }) => {
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  const finding = findingsOf(loads.explanation, 'loadRatio')[0];
  if (finding === undefined) return null;
  return (
    <p>
      <Runs runs={wordFinding(content, loads.explanation, finding, reader).runs} />
    </p>
  );
};

/** What is said when the frame finds no answer. */
const Fails = () => {
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  const explanation = useSession((state) => state.explanation);
  const finding = findingsOf(explanation, 'loadFails')[0];
  if (explanation === null || finding === undefined) return null;
  return (
    <p className="load-fails">
      <Runs runs={wordFinding(content, explanation, finding, reader).runs} />
    </p>
  );
};

export const Ratio = () => {
  const { say } = usePages();
  const loads = useLoads();
  if (loads === null) return <Fails />;
  const { table, index, loads: of, banded, current } = loads;
  const times = multipleOf(table.peakTension.mpa, of.referenceMPa[index] ?? 0);
  const band = banded?.loads?.bands?.ratio ?? null;
  if (times === null) return <p className="ratio">{say('ratio.noMeasure')}</p>;
  const scale = scaleOf(1, [{ told: times, low: band?.low ?? 0, high: band?.high ?? times }]);
  // Until there is a band: how the number alone was made. So nothing below is pushed on when the band comes.
  const finding = findingsOf(loads.explanation, 'loadRatio')[0] ?? findingsOf(loads.explanation, 'loadPull')[0];
  return (
    <section
      className="ratio"
      aria-label={say('ratio.label')}
      data-bands={current ? 'current' : band ? 'before' : 'none'}
    >
      <div aria-live="polite">{current ? <Told loads={loads} /> : <Working loads={loads} times={times} />}</div>
      {isSized(loads) && (
        <>
          <Interval scale={{ ...scale, low: 0 }} told={times} band={band} held={!current} />
          <IntervalAxis scale={{ ...scale, low: 0 }} text={(value) => say('ratio.tick', { times: String(value) })} />
          <p className="small-print">{say('ratio.key')}</p>
        </>
      )}
      {finding !== undefined && <AskIt explanation={loads.explanation} finding={finding} />}
    </section>
  );
};
