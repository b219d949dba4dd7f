/**
 * A number with its band on a scale shared by all rows: a line for the inner eight tenths of the draws, a ring where it is told.
 * What the model cannot tell is dotted and its ring filled; a band of the value before is dashed and pale. Read beside it in words.
 */
import { type ScaleLinear, scaleLinear } from 'd3-scale';
import type { Spread } from '../../mechanics/foot/types';
import { useWidth } from '../parts/use-width';

const USUAL_WIDTH = 360;
const EDGE = 14;
const HEIGHT = 24;
const AXIS_HEIGHT = 30;
const TICKS = 5;
const RING = 5;

export interface Scale {
  /** The value that stands for no difference. */
  readonly at: number;
  readonly low: number;
  readonly high: number;
}

/** A scale that holds all of them, and `at`. */
export const scaleOf = (at: number, spreads: readonly Spread[]): Scale => {
  const all = [at, ...spreads.flatMap(({ told, low, high }) => [told, low, high])];
  return { at, low: Math.min(...all), high: Math.max(...all) };
};

const placed = ({ low, high }: Scale, width: number): ScaleLinear<number, number> =>
  scaleLinear([low, high === low ? low + 1 : high], [EDGE, width - EDGE]).nice(TICKS);

interface IntervalProperties {
  readonly scale: Scale;
  readonly told: number;
  readonly band: Spread | null;
  readonly held: boolean;
  readonly tells?: boolean;
}

export const Interval = ({ scale, told, band, held, tells = true }: IntervalProperties) => {
  const { ref, width } = useWidth<SVGSVGElement>(USUAL_WIDTH);
  const x = placed(scale, width);
  const y = HEIGHT / 2;
  const kind = `${held ? ' interval-held' : ''}${tells ? '' : ' interval-untold'}`;
  return (
    <svg ref={ref} className="interval" viewBox={`0 0 ${width} ${HEIGHT}`} aria-hidden="true">
      <path className="interval-at" d={`M${x(scale.at)} 0V${HEIGHT}`} />
      {band !== null && (
        <path
          className={`interval-band${kind}`}
          d={`M${x(band.low)} ${y - 5}V${y + 5}M${x(band.low)} ${y}H${x(band.high)}M${x(band.high)} ${y - 5}V${y + 5}`}
        />
      )}
      <circle className={`interval-told${tells ? '' : ' interval-untold'}`} cx={x(told)} cy={y} r={RING} />
    </svg>
  );
};

export const IntervalAxis = ({ scale, text }: { readonly scale: Scale; readonly text: (value: number) => string }) => {
  const { ref, width } = useWidth<SVGSVGElement>(USUAL_WIDTH);
  const x = placed(scale, width);
  const ticks = x.ticks(TICKS);
  const [from = 0, to = 0] = x.domain();
  return (
    <svg ref={ref} className="interval" viewBox={`0 0 ${width} ${AXIS_HEIGHT}`} aria-hidden="true">
      <path className="rule-line" d={`M${x(from)} 1H${x(to)}`} />
      {ticks.map((tick) => (
        <g key={tick}>
          <path className="rule-line" d={`M${x(tick)} 1v8`} />
          <text x={x(tick)} y={24} textAnchor="middle">
            {text(tick)}
          </text>
        </g>
      ))}
    </svg>
  );
};
