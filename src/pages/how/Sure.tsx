/** How sure the frame is: which statements its draws agree on, where the pull lies, and on what the answer hangs. */
import { ENOUGH_AGREEMENT } from '../../mechanics/foot/types';
import { wordFinding } from '../../wording';
import { usePages, useSession } from '../context';
import { findingsOf } from '../findings';
import { Runs } from '../parts/Runs';
import { AskIt } from './AskIt';
import { Plateau } from './Plateau';
import { type Loads, useLoads } from './use-loads';

const BOXES = 10;
const BOX = 14;
const EVERY = 17;

/** Ten boxes, filled as far as the draws agree; the mark stands where agreement is enough. */
const AgreementBoxes = ({ share }: { readonly share: number }) => {
  const filled = share * BOXES;
  const enough = ENOUGH_AGREEMENT * BOXES * EVERY - (EVERY - BOX) / 2;
  return (
    <svg className="agreement" viewBox={`0 0 ${BOXES * EVERY} 24`} width={BOXES * EVERY} height="24" aria-hidden="true">
      {Array.from({ length: BOXES }, (_, i) => i * EVERY + 0.5).map((x, i) => (
        <g key={x}>
          <rect className="person" x={x} y="4.5" width={BOX} height={BOX} />
          <rect
            className="person-counted"
            x={x}
            y="4.5"
            width={BOX * Math.min(1, Math.max(0, filled - i))}
            height={BOX}
          />
        </g>
      ))}
      <path className="interval-at" d={`M${enough} 0V24`} />
    </svg>
  );
};

const Agreements = ({ loads }: { readonly loads: Loads }) => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  const of = loads.banded ?? loads.explanation;
  const findings = [...findingsOf(of, 'loadSide'), ...findingsOf(of, 'loadMostOfFive')];
  return (
    <ul className="agreements">
      {findings.map((finding) => (
        <li key={finding.id}>
          <p className={loads.current ? undefined : 'held'}>
            <Runs runs={wordFinding(content, of, finding, reader).runs} />
          </p>
          <AgreementBoxes share={finding.message.args.agreed.share.value} />
          <p className="small-print">
            {say('sure.agreed', { percent: Math.round(100 * finding.message.args.agreed.share.value) })}
          </p>
          <AskIt explanation={of} finding={finding} />
        </li>
      ))}
    </ul>
  );
};

export const Sure = () => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  const loads = useLoads();
  if (loads === null) return <p>{say('stations.none')}</p>;
  const of = loads.banded ?? loads.explanation;
  const hangs = findingsOf(of, 'loadSensitivity')[0];
  return (
    <div data-bands={loads.current ? 'current' : loads.banded ? 'before' : 'none'}>
      <p className="small-print">{say('sure.what')}</p>
      {!loads.current && <p className="held">{say('whyHere.workingHeld')}</p>}
      <Agreements loads={loads} />
      <Plateau />
      {hangs !== undefined && (
        <p className={loads.current ? undefined : 'held'}>
          <Runs runs={wordFinding(content, of, hangs, reader).runs} />
        </p>
      )}
    </div>
  );
};
