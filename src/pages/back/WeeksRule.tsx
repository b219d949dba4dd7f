/**
 * The foot-rule again, as an axis in weeks since the start: a bracket for each stage, and for each endpoint a ring at the centre
 * of each study, on a bar from the first to the last. A stage without an end in the sources ends in an open stroke.
 */
import { scaleLinear } from 'd3-scale';
import { usePages, useSession } from '../context';
import type { FindingOf } from '../findings';
import { useWidth } from '../parts/use-width';
import { goByClass, type RangeRow, spanOf } from './range-rows';
import { useRowName } from './use-row-name';
import { wrapped } from './wrapped';

interface Properties {
  readonly stages: readonly FindingOf<'stageUsual'>[];
  readonly rows: readonly RangeRow[];
}

const USUAL_WIDTH = 360;
const ROW = 26;
const TOP = 8;
const TICK_EVERY = 4;
const RING = 5;
/** Of our letters at 13 px a sign takes about this much, px, lines stand this far apart. */
const SIGN = 7;
const LINE = 15;

/** Where the centres of the row's studies lie, each week once. */
const ringsOf = ({ arms, endpoint }: RangeRow): readonly number[] => [
  ...new Set(arms.flatMap(({ time }) => (time?.endpoint === endpoint ? [time.weeks.value] : []))),
];

export const WeeksRule = ({ stages, rows }: Properties) => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  const name = useRowName();
  const { ref, width } = useWidth<SVGSVGElement>(USUAL_WIDTH);
  const stageName = (id: string): string => {
    const stage = content.stages.find((each) => each.id === id);
    return (reader === 'patient' ? stage?.plain : stage?.term) ?? id;
  };
  const timed = stages.filter((stage) => stage.message.args.weeks !== null);
  const spans = timed.map((stage) => spanOf(stage.message.args.weeks ?? { value: 0, unit: 'week' }));
  const ends = [...spans, ...rows.flatMap((row) => [row.weeks, row.people ?? row.weeks].map(spanOf))].map(
    ([, high]) => high,
  );
  const last = Math.ceil((Math.max(...ends, TICK_EVERY) + 1) / TICK_EVERY) * TICK_EVERY;
  const x = scaleLinear([0, last], [8, width - 8]);
  const ruleY = TOP + timed.length * ROW + 10;
  const most = Math.floor((width - 4) / SIGN);
  const names = rows.map((row) => wrapped(name(row), most));
  const rowY = names.map((_, index) =>
    names.slice(0, index).reduce((y, lines) => y + ROW + (lines.length - 1) * LINE, ruleY + 34),
  );
  const height = ruleY + 34 + names.reduce((sum, lines) => sum + ROW + (lines.length - 1) * LINE, 0);
  const weeks = Array.from({ length: last + 1 }, (_, week) => week);
  return (
    <figure className="weeks">
      <svg ref={ref} viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
        {timed.map((stage, index) => {
          const [from, to] = spans[index] ?? [0, 0];
          const y = TOP + index * ROW + 18;
          const open = stage.message.args.openEnded;
          const right = Math.max(x(to), x(from) + 6);
          const anchorEnd = x(from) > width * 0.55;
          return (
            <g key={stage.id}>
              <path className="bracket" d={`M${x(from)} ${y + 5}V${y}H${right}${open ? 'h6' : 'v5'}`} />
              {open && <path className="bracket-open" d={`M${right} ${y}H${width - 4}`} />}
              <text x={anchorEnd ? right : x(from)} y={y - 4} textAnchor={anchorEnd ? 'end' : 'start'}>
                {stage.message.args.number}. {stageName(stage.message.args.stage)}
              </text>
            </g>
          );
        })}
        <path className="rule-line" d={`M${x(0)} ${ruleY}H${x(last)}`} />
        {weeks.map((week) => (
          <path
            key={week}
            className={week % TICK_EVERY === 0 ? 'rule-line' : 'rule-tick'}
            d={`M${x(week)} ${ruleY}v${week % TICK_EVERY === 0 ? 10 : 5}`}
          />
        ))}
        {weeks
          .filter((week) => week % TICK_EVERY === 0)
          .map((week) => (
            <text key={week} x={x(week)} y={ruleY + 24} textAnchor="middle">
              {week}
            </text>
          ))}
        {rows.map((row, index) => {
          const [from, to] = spanOf(row.weeks);
          const [first, latest] = spanOf(row.people ?? row.weeks);
          const y = rowY[index] ?? ruleY;
          const lines = names[index] ?? [];
          const longest = SIGN * Math.max(...lines.map((line) => line.length));
          const left = Math.max(0, Math.min(x(first), width - 4 - longest));
          return (
            <g key={row.key}>
              <path className="range-people" d={`M${x(first)} ${y}H${x(latest)}`} />
              <path className="range-bar" d={`M${x(from)} ${y}H${Math.max(x(to), x(from) + 3)}`} />
              {ringsOf(row).map((week) => (
                <circle key={week} className="range-ring" cx={x(week)} cy={y} r={RING} />
              ))}
              {lines.map((line, i) => (
                <text key={line} x={left} y={y + 17 + i * LINE}>
                  {line}
                </text>
              ))}
            </g>
          );
        })}
      </svg>
      <figcaption className="small-print">
        {say('back.rule')}
        {goByClass(content, rows) && ` ${say('back.ruleByClass')}`}
      </figcaption>
    </figure>
  );
};
