/**
 * The weeks on the foot-rule and above it the wear against the habit: two bands, each from the least to the most over the constants,
 * with a line at their usual values. Up to ten times on an even scale, beyond by powers of ten.
 */
import { scaleLinear, scaleLog } from 'd3-scale';
import { area, line } from 'd3-shape';
import { useId } from 'react';
import type { Ranged } from '../../mechanics/repetition';
import { useWords } from '../context';
import { useWidth } from '../parts/use-width';
import { shortNumber, type WearWeek } from './wear';

const USUAL_WIDTH = 360;
const LEFT = 40;
const RIGHT = 12;
const TOP = 12;
const HEIGHT = 150;
const EVEN_UP_TO = 10;
const LEAST = 0.01;
const HABIT: Ranged = { value: 1, low: 1, high: 1 };

type Point = readonly [week: number, range: Ranged];

const ticksOf = (most: number, least: number): readonly number[] => {
  if (most > EVEN_UP_TO) {
    const powers = Array.from({ length: 9 }, (_, i) => 10 ** (i - 2));
    return powers.filter((each) => each >= least && each <= most);
  }
  const step = most <= 2.5 ? 0.5 : most <= 5 ? 1 : 2;
  return Array.from({ length: Math.floor(most / step) + 1 }, (_, i) => i * step);
};

export const WearChart = ({ weeks }: { readonly weeks: readonly WearWeek[] }) => {
  const say = useWords();
  const hatch = useId();
  const { ref, width } = useWidth<SVGSVGElement>(USUAL_WIDTH);
  const last = weeks.length;
  const ends = weeks.flatMap(({ done, left }) => [done, left]);
  const most = Math.max(1.5, ...ends.map(({ high }) => high));
  const least = Math.max(LEAST, Math.min(1, ...ends.map(({ low }) => low)));
  const x = scaleLinear([0, last], [LEFT, width - RIGHT]);
  const span = [TOP + HEIGHT, TOP] as const;
  const y = most > EVEN_UP_TO ? scaleLog([least, most], span).clamp(true) : scaleLinear([0, most], span);
  const points = (of: (week: WearWeek) => Ranged): Point[] => [
    [0, HABIT],
    ...weeks.map((week): Point => [week.week, of(week)]),
  ];
  const done = points((week) => week.done);
  const left = points((week) => week.left);
  const band = area<Point>()
    .x(([week]) => x(week))
    .y0(([, range]) => y(range.low))
    .y1(([, range]) => y(range.high));
  const told = line<Point>()
    .x(([week]) => x(week))
    .y(([, range]) => y(range.value));
  const ruleY = TOP + HEIGHT + 8;
  return (
    <figure className="wear">
      <svg ref={ref} viewBox={`0 0 ${width} ${ruleY + 30}`} aria-hidden="true">
        <pattern id={hatch} width="5" height="5" patternUnits="userSpaceOnUse">
          <path className="wear-hatch" d="M0 5L5 0M-1 1L1 -1M4 6L6 4" />
        </pattern>
        {ticksOf(most, least).map((tick) => (
          <g key={tick}>
            <path className="strip-axis" d={`M${LEFT} ${y(tick)}H${width - RIGHT}`} />
            <text x={LEFT - 6} y={y(tick) + 5} textAnchor="end">
              {shortNumber(tick)}×
            </text>
          </g>
        ))}
        <path className="wear-habit" d={`M${LEFT} ${y(1)}H${width - RIGHT}`} />
        <path className="wear-left" d={band(left) ?? ''} fill={`url(#${hatch})`} />
        <path className="wear-left-line" d={told(left) ?? ''} />
        <path className="wear-done" d={band(done) ?? ''} />
        <path className="wear-done-line" d={told(done) ?? ''} />
        <path className="rule-line" d={`M${x(0)} ${ruleY}H${x(last)}`} />
        {Array.from({ length: last + 1 }, (_, week) => week).map((week) => (
          <g key={week}>
            <path className="rule-line" d={`M${x(week)} ${ruleY}v8`} />
            {(last <= 8 || week % 2 === 0) && (
              <text x={x(week)} y={ruleY + 22} textAnchor="middle">
                {week}
              </text>
            )}
          </g>
        ))}
      </svg>
      <figcaption className="small-print">
        {say('repeat.chart')} {most > EVEN_UP_TO && say('repeat.chartPowers')}
      </figcaption>
    </figure>
  );
};
