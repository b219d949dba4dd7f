/** Where the pull is: the stretch that carries nine tenths of the most, its ends with their bands, and where such breaks are found. */
import { usePages } from '../context';
import { useWidth } from '../parts/use-width';
import { alongOf, alongScale, StripGround } from './Strip';
import { type Loads, useLoads } from './use-loads';

const USUAL_WIDTH = 360;
const HEIGHT = 52;
const BAR_Y = 16;
/** Below it, so that the two can be compared. */
const OCCURS_Y = 38;
const END = 6;

const whole = (mm: number): string => String(Math.round(mm));

const Bar = ({ loads }: { readonly loads: Loads }) => {
  const { ref, width } = useWidth<SVGSVGElement>(USUAL_WIDTH);
  const along = alongOf(loads.explanation);
  const x = alongScale(loads.table, width);
  const ends = loads.banded?.loads?.bands?.plateauMm ?? null;
  if (ends === null) return null;
  const [from, to] = ends;
  return (
    <svg ref={ref} viewBox={`0 0 ${width} ${HEIGHT}`} className="strip" aria-hidden="true">
      <StripGround table={loads.table} along={along} width={width} height={HEIGHT} />
      <path
        className={`plateau${loads.current ? '' : ' interval-held'}`}
        d={`M${x(from.told)} ${BAR_Y}H${x(to.told)}`}
      />
      {[from, to].map((end) => (
        <path
          key={end.told}
          className="interval-band"
          d={`M${x(end.low)} ${BAR_Y - END}v${2 * END}M${x(end.low)} ${BAR_Y}H${x(end.high)}M${x(end.high)} ${BAR_Y - END}v${2 * END}`}
        />
      ))}
      {along.occurs !== null && (
        <path className="strip-occurs" d={`M${x(along.occurs.fromMm)} ${OCCURS_Y}H${x(along.occurs.toMm)}`} />
      )}
    </svg>
  );
};

export const Plateau = () => {
  const { say } = usePages();
  const loads = useLoads();
  const ends = loads?.banded?.loads?.bands?.plateauMm ?? null;
  if (loads === null || ends === null) return null;
  const [from, to] = ends;
  const occurs = alongOf(loads.explanation).occurs;
  return (
    <>
      <p className="strip-title">{say('plateau.title')}</p>
      <Bar loads={loads} />
      <p className={loads.current ? 'small-print' : 'small-print held'}>
        {say('plateau.words', {
          from: whole(from.told),
          fromLow: whole(from.low),
          fromHigh: whole(from.high),
          to: whole(to.told),
          toLow: whole(to.low),
          toHigh: whole(to.high),
        })}{' '}
        {occurs !== null && say('plateau.occurs', { from: whole(occurs.fromMm), to: whole(occurs.toMm) })}
      </p>
    </>
  );
};
