/** The rule below a drawing of changes: as far to the less as to the more, with 0 in the middle. */
import type { ScaleLinear } from 'd3-scale';

/** A change with its sign, whole. */
export const signed = (value: number): string => `${value > 0 ? '+' : value < 0 ? '−' : ''}${Math.abs(value)}`;

/** How far a rule goes that has a tick every so much and holds all of these changes. */
export const reachOf = (changes: readonly number[], every: number): number =>
  Math.ceil(Math.max(...changes.map(Math.abs)) / every) * every;

interface ChangeRuleProperties {
  readonly x: ScaleLinear<number, number>;
  readonly y: number;
  readonly last: number;
  readonly every: number;
}

export const ChangeRule = ({ x, y, last, every }: ChangeRuleProperties) => (
  <>
    <path className="rule-line" d={`M${x(-last)} ${y}H${x(last)}`} />
    {Array.from({ length: (2 * last) / every + 1 }, (_, i) => i * every - last).map((tick) => (
      <g key={tick}>
        <path className="rule-line" d={`M${x(tick)} ${y}v8`} />
        <text x={x(tick)} y={y + 22} textAnchor="middle">
          {signed(tick)}
        </text>
      </g>
    ))}
  </>
);
