/**
 * The odds as twenty rings on a rule in weeks, five of 100 people each, where they are back; filled up to the half of all. Whoever is
 * later than the rule or never back stands beyond its end. A drawing beside sentence and table, so nothing of it is read aloud.
 */
import { scaleLinear } from 'd3-scale';
import type { ForecastStep } from '../../explain/forecast-steps';
import { usePages } from '../context';
import { useWidth } from '../parts/use-width';

interface Properties {
  readonly step: Pick<ForecastStep, 'fives'>;
  /** What the rings are; said once where several rules stand one below the other. */
  readonly explained?: boolean;
}

const USUAL_WIDTH = 360;
const TICK_EVERY = 4;
/** Rings of two weeks stand in one column. */
const COLUMN_WEEKS = 2;
const LONGEST = 52;
const TOP = 8;
/** Room at the right end for whoever is later than the rule or never back, px. */
const BEYOND = 58;

export const OddsRule = ({ step, explained = true }: Properties) => {
  const { say } = usePages();
  const { ref, width } = useWidth<SVGSVGElement>(USUAL_WIDTH);
  const on = step.fives.flatMap((week) => (week !== null && week <= LONGEST ? [week] : []));
  const last = Math.ceil(Math.max(...on, TICK_EVERY) / TICK_EVERY) * TICK_EVERY;
  const x = scaleLinear([0, last], [8, width - BEYOND]);
  const radius = Math.max(2.5, Math.min(7, (x(COLUMN_WEEKS) - x(0)) / 2 - 0.5));
  const pile = new Map<number, number>();
  const rings = step.fives.map((week, index) => {
    const column = week !== null && week <= LONGEST ? Math.min(Math.floor(week / COLUMN_WEEKS), last / 2 - 1) : -1;
    const under = pile.get(column) ?? 0;
    pile.set(column, under + 1);
    return { index, column, under, filled: week !== null && index < 10 };
  });
  const tallest = Math.max(...pile.values());
  const ruleY = TOP + tallest * 2 * radius + 4;
  const beyondX = width - BEYOND / 2 + 8;
  const beyond = pile.get(-1) ?? 0;
  const weeks = Array.from({ length: last + 1 }, (_, week) => week);
  return (
    <figure className="odds-rule">
      <svg ref={ref} viewBox={`0 0 ${width} ${ruleY + 30}`} aria-hidden="true">
        {rings.map(({ index, column, under, filled }) => (
          <circle
            key={index}
            className={filled ? 'odds-ring odds-half' : 'odds-ring'}
            cx={column < 0 ? beyondX : x((column + 0.5) * COLUMN_WEEKS)}
            cy={ruleY - 3 - radius - under * 2 * radius}
            r={radius - 1}
          />
        ))}
        <path className="rule-line" d={`M${x(0)} ${ruleY}H${x(last)}`} />
        {weeks.map((week) => (
          <path
            key={week}
            className={week % TICK_EVERY === 0 ? 'rule-line' : 'rule-tick'}
            d={`M${x(week)} ${ruleY}v${week % TICK_EVERY === 0 ? 9 : 4}`}
          />
        ))}
        {weeks
          // A narrow rule has room for every other number only.
          .filter((week) => week % (width > 460 || last <= 24 ? TICK_EVERY : 2 * TICK_EVERY) === 0)
          .map((week) => (
            <text key={week} x={x(week)} y={ruleY + 23} textAnchor="middle">
              {week}
            </text>
          ))}
        {beyond > 0 && (
          <text x={beyondX} y={ruleY + 23} textAnchor="middle">
            {say('forecast.never')}
          </text>
        )}
      </svg>
      {explained && <figcaption className="small-print">{say('forecast.rings')}</figcaption>}
    </figure>
  );
};
