/**
 * Evidence drawn: in each study that compares operated and other people, of 100 people how many more were counted without an
 * operation than with one, and how far that may lie off. A line across 0 shows no clear difference. The table behind it has the same
 * figures.
 */
import { scaleLinear } from 'd3-scale';
import type { Comparison } from '../../explain/messages';
import { sourceName } from '../../wording';
import { usePages, useSession } from '../context';
import { findingsOf } from '../findings';
import { ColumnHeads } from '../parts/ColumnHeads';
import { Known } from '../parts/Runs';
import { ScrollBox } from '../parts/ScrollBox';
import { useWidth } from '../parts/use-width';
import { wordKey } from '../words';
import { ChangeRule, reachOf, signed } from './ChangeRule';
import { Event } from './Event';

export const COMPARED_COLUMNS = ['study', 'without', 'with', 'difference'] as const;
const USUAL_WIDTH = 560;
const ROW = 40;
const TOP = 8;
const EDGE = 12;
const TICK_EVERY = 20;
const RING = 5;

const inHundred = (share: number): number => Math.round(100 * share);

const useComparisons = (): readonly Comparison[] => {
  const explanation = useSession((state) => state.explanation);
  return findingsOf(explanation, 'studiesDisagree').flatMap(({ message: { args } }) => [...args.apart, ...args.alike]);
};

const keyOf = ({ trial, what }: Comparison): string => `${trial} ${what}`;

const Drawing = ({
  all,
  nameOf,
}: {
  readonly all: readonly Comparison[];
  readonly nameOf: (c: Comparison) => string;
}) => {
  const { ref, width } = useWidth<SVGSVGElement>(USUAL_WIDTH);
  const last = reachOf(
    all.flatMap(({ difference: { value, lowHigh } }) => [value, ...(lowHigh ?? [])].map((share) => 100 * share)),
    TICK_EVERY,
  );
  const x = scaleLinear([-last, last], [EDGE, width - EDGE]);
  const ruleY = TOP + all.length * ROW + 4;
  return (
    <svg ref={ref} className="comparisons" viewBox={`0 0 ${width} ${ruleY + 30}`} aria-hidden="true">
      <path className="comparison-none" d={`M${x(0)} ${TOP}V${ruleY}`} />
      {all.map((each, index) => {
        const y = TOP + index * ROW + 28;
        const { value, lowHigh = [value, value] } = each.difference;
        return (
          <g key={keyOf(each)}>
            <text x={EDGE} y={y - 14}>
              {nameOf(each)}
            </text>
            <path className="range-people" d={`M${x(100 * lowHigh[0])} ${y}H${x(100 * lowHigh[1])}`} />
            <circle className="range-ring" cx={x(100 * value)} cy={y} r={RING} />
          </g>
        );
      })}
      <ChangeRule x={x} y={ruleY} last={last} every={TICK_EVERY} />
    </svg>
  );
};

export const Comparisons = () => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const all = useComparisons();
  if (all.length === 0) return null;
  const source = ({ arms }: Comparison): string => sourceName(content, arms[0].source);
  return (
    <>
      <h2>{say('compare.title')}</h2>
      <figure>
        <Drawing all={all} nameOf={(each) => `${source(each)}: ${say(`event.${wordKey(each.what)}`)}`} />
        <figcaption className="small-print">{say('compare.note')}</figcaption>
      </figure>
      <ScrollBox label={say('compare.title')}>
        <table className="compared">
          <caption className="unseen">{say('compare.title')}</caption>
          <ColumnHeads of={COMPARED_COLUMNS.map((key) => `compare.column.${key}`)} />
          <tbody>
            {all.map((each) => {
              const { value, lowHigh = [value, value] } = each.difference;
              const [low, high] = lowHigh;
              return (
                <tr key={keyOf(each)}>
                  <th scope="row">
                    {source(each)}. {say(`design.${each.design}`)}.
                  </th>
                  {each.arms.map((arm) => (
                    <td key={arm.study}>
                      <Event arm={arm} />
                    </td>
                  ))}
                  <td>
                    <Known mark={each.arms[0].mark}>
                      {say('compare.difference', {
                        value: signed(inHundred(value)),
                        low: signed(inHundred(low)),
                        high: signed(inHundred(high)),
                      })}
                    </Known>{' '}
                    {say(each.apart ? 'compare.apart' : 'compare.alike')}
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </ScrollBox>
    </>
  );
};
