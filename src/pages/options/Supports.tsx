/** What a boot, a sole and a wedge do to the largest pull in the bone: drawn as changes, and in a table. */
import { scaleLinear } from 'd3-scale';
import type { MessageOf } from '../../explain/messages';
import { wrapped } from '../back/wrapped';
import { usePages, useSession } from '../context';
import { type FindingOf, findingsOf } from '../findings';
import { ColumnHeads } from '../parts/ColumnHeads';
import { Known } from '../parts/Runs';
import { ScrollBox } from '../parts/ScrollBox';
import { useWidth } from '../parts/use-width';
import { weakestMark } from '../parts/weakest-mark';
import { ChangeRule, reachOf, signed } from './ChangeRule';
import { useFactorName } from './use-factor-name';

export const SUPPORT_COLUMNS = ['support', 'change', 'agree'] as const;
const USUAL_WIDTH = 360;
const ROW = 24;
/** Of our letters at 13 px a sign takes about this much, px, lines stand this far apart. */
const SIGN = 7;
const LINE = 15;
const TOP = 8;
const EDGE = 18;
const TICK_EVERY = 50;
const RING = 5;

type Args = MessageOf<'support'>['args'];

const percent = (ratio: number): number => Math.round(100 * (ratio - 1));
const endsOf = ({ ratio }: Args): readonly [number, number] => ratio.lowHigh ?? [ratio.value, ratio.value];
const tells = ({ speaks, agreed }: Args): boolean => speaks && agreed.enough;

const Drawing = ({ all }: { readonly all: readonly FindingOf<'support'>[] }) => {
  const { say } = usePages();
  const name = useFactorName();
  const { ref, width } = useWidth<SVGSVGElement>(USUAL_WIDTH);
  const last = reachOf(
    all.flatMap(({ message: { args } }) => endsOf(args).map(percent)),
    TICK_EVERY,
  );
  const x = scaleLinear([-last, last], [EDGE, width - EDGE]);
  const labels = all.map(({ message: { args } }) =>
    wrapped(`${name(args.support)}${tells(args) ? '' : `: ${say('supports.cannotTell')}`}`, Math.floor(width / SIGN)),
  );
  const tops = labels.map((_, i) => labels.slice(0, i).reduce((y, lines) => y + ROW + lines.length * LINE, TOP));
  const ruleY = labels.reduce((y, lines) => y + ROW + lines.length * LINE, TOP) + 2;
  return (
    <svg ref={ref} className="comparisons supports" viewBox={`0 0 ${width} ${ruleY + 30}`} aria-hidden="true">
      <path className="comparison-none" d={`M${x(0)} ${TOP}V${ruleY}`} />
      {all.map(({ id, message: { args } }, index) => {
        const lines = labels[index] ?? [];
        const top = tops[index] ?? TOP;
        const y = top + lines.length * LINE + 9;
        const [low, high] = endsOf(args).map(percent) as [number, number];
        return (
          <g key={id}>
            {lines.map((line, i) => (
              <text key={line} className="support-name" x={0} y={top + (i + 1) * LINE - 3}>
                {line}
              </text>
            ))}
            {tells(args) && !args.ranking ? (
              <>
                <path className="range-people" d={`M${x(low)} ${y}H${x(high)}`} />
                <circle className="range-ring" cx={x(percent(args.ratio.value))} cy={y} r={RING} />
              </>
            ) : tells(args) ? null : (
              <path className="support-unknown" d={`M${x(low)} ${y}H${Math.max(x(high), x(low) + 2)}`} />
            )}
          </g>
        );
      })}
      <ChangeRule x={x} y={ruleY} last={last} every={TICK_EVERY} />
    </svg>
  );
};

export const Supports = () => {
  const { say } = usePages();
  const name = useFactorName();
  const explanation = useSession((state) => state.explanation);
  const study = useSession((state) => state.reader === 'study');
  const all = findingsOf(explanation, 'support');
  if (findingsOf(explanation, 'supportPending').length > 0) return <p className="small-print">{say('note.working')}</p>;
  if (all.length === 0) return <p>{say('supports.none')}</p>;
  return (
    <>
      <p className="strip-title">{say('supports.bars')}</p>
      <figure>
        {/* Where none has a size there is nothing to draw to scale. */}
        {all.some(({ message: { args } }) => tells(args) && !args.ranking) && <Drawing all={all} />}
        <figcaption className="small-print">
          {say('supports.note')} {say('supports.standIn')}
        </figcaption>
      </figure>
      <ScrollBox label={say('supports.table')}>
        <table className="supports-table">
          <caption className="unseen">{say('supports.table')}</caption>
          <ColumnHeads
            of={SUPPORT_COLUMNS.filter((key) => study || key !== 'agree').map((key) => `supports.column.${key}`)}
          />
          <tbody>
            {all.map((finding) => {
              const { id, message } = finding;
              const { args } = message;
              const [low, high] = endsOf(args).map((end) => signed(percent(end)));
              const change = say('supports.change', {
                value: signed(percent(args.ratio.value)),
                low: low ?? '',
                high: high ?? '',
              });
              return (
                <tr key={id}>
                  <th scope="row">{name(args.support)}</th>
                  <td>
                    {!tells(args) ? (
                      say('supports.cannotTell')
                    ) : args.ranking ? (
                      say(args.raises ? 'whyHere.more' : 'whyHere.less')
                    ) : (
                      <Known mark={weakestMark(finding)}>{change}</Known>
                    )}
                  </td>
                  {study && <td>{say('supports.share', { percent: Math.round(100 * args.agreed.share.value) })}</td>}
                </tr>
              );
            })}
          </tbody>
        </table>
      </ScrollBox>
    </>
  );
};
