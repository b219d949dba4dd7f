/** How deep a straight screw goes, on a foot-rule in mm from the bone's tip, beside the published advice. */
import { scaleLinear } from 'd3-scale';
import { sourceName } from '../../wording';
import { usePages, useSession } from '../context';
import { findingsOf } from '../findings';
import { Known } from '../parts/Runs';
import { useWidth } from '../parts/use-width';

const USUAL_WIDTH = 360;
const EDGE = 14;
const ROW = 30;
const TOP = 6;
const TICK_EVERY = 10;

export const RodRule = () => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const explanation = useSession((state) => state.explanation);
  const { ref, width } = useWidth<SVGSVGElement>(USUAL_WIDTH);
  const args = findingsOf(explanation, 'screwLength')[0]?.message.args;
  const fixation = content.fixations.find((each) => each.bone === explanation?.bone);
  if (args === undefined || fixation === undefined) return null;
  const { rods, advised, advisedOfThis, advisedShare, bone } = args;
  const last = Math.ceil(bone.value / TICK_EVERY) * TICK_EVERY;
  const x = scaleLinear([0, last], [EDGE, width - EDGE]);
  const ruleY = TOP + rods.length * ROW + 6;
  const ticks = Array.from({ length: last / TICK_EVERY + 1 }, (_, i) => i * TICK_EVERY);
  const source = (evidence: typeof fixation.advisedLength.evidence): string =>
    evidence.source === null ? '' : sourceName(content, evidence.source);
  return (
    <>
      <p className="strip-title">{say('screw.length')}</p>
      <figure className="weeks">
        <svg ref={ref} viewBox={`0 0 ${width} ${ruleY + 30}`} aria-hidden="true">
          {[advised.value, advisedOfThis.value].map((mm) => (
            <path key={mm} className="rod-advised" d={`M${x(mm)} ${TOP}V${ruleY}`} />
          ))}
          {rods.map(({ diameter, reach: { value, lowHigh = [value, value] } }, index) => {
            const y = TOP + index * ROW + 22;
            return (
              <g key={diameter.value}>
                <text x={x(0)} y={y - 7}>
                  {say('screw.rod', { diameter: diameter.value })}
                </text>
                <path className="range-people" d={`M${x(lowHigh[0])} ${y}H${x(lowHigh[1])}`} />
                <path className="range-bar" d={`M${x(0)} ${y}H${x(value)}`} />
              </g>
            );
          })}
          <path className="rule-line" d={`M${x(0)} ${ruleY}H${x(last)}`} />
          {ticks.map((tick) => (
            <g key={tick}>
              <path className="rule-line" d={`M${x(tick)} ${ruleY}v8`} />
              <text x={x(tick)} y={ruleY + 22} textAnchor="middle">
                {tick}
              </text>
            </g>
          ))}
        </svg>
        <figcaption className="small-print">{say('screw.lengthNote')}</figcaption>
      </figure>
      <ul className="plain small-print">
        {rods.map(({ diameter, reach: { value, lowHigh = [value, value] } }) => (
          <li key={diameter.value}>
            {say('screw.rodBand', { diameter: diameter.value, reach: value, low: lowHigh[0], high: lowHigh[1] })}
          </li>
        ))}
        <li>
          <Known mark={fixation.advisedLength.evidence.mark}>
            {say('screw.advised', { mm: advised.value, source: source(fixation.advisedLength.evidence) })}
          </Known>
        </li>
        <li>
          <Known mark={fixation.advisedShare.evidence.mark}>
            {say('screw.advisedShare', {
              percent: Math.round(100 * advisedShare.value),
              mm: advisedOfThis.value,
              source: source(fixation.advisedShare.evidence),
            })}
          </Known>
        </li>
      </ul>
    </>
  );
};
