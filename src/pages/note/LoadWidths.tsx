/** Key of the way of the load: what is pressed and what is pulled, in three widths, each with the force that it stands for. */
import type { ExplainedLoads } from '../../explain/types';
import { formatQuantity } from '../../wording';
import { LEAST_WIDTH, widestOf } from '../../wording/load-scale';
import { usePages } from '../context';

/** As on a plate of the usual size, px: the least that is drawn, the widest, and one between. */
const WIDEST_PX = 13;
const WIDTHS = [LEAST_WIDTH, (1 + LEAST_WIDTH) / 2, 1] as const;
const LONG = 30;
const MIDDLE = 8;

const block = (width: number): string => {
  const [w, long] = [WIDEST_PX * width, Math.max(4, 11 * width)];
  const count = Math.floor(LONG / (long * 1.28));
  return Array.from(
    { length: count },
    (_, i) => `M${(i * long * 1.28).toFixed(1)} ${MIDDLE - w / 2}h${long.toFixed(1)}v${w}h-${long.toFixed(1)}z`,
  ).join('');
};

/** The middle thread a little thicker than the outer two: of ten parts 2.2 and 1.8. */
const Threads = ({ width }: { readonly width: number }) => {
  const u = (WIDEST_PX * width) / 10;
  return (
    <>
      <path className="cord" d={`M0 ${MIDDLE - 4 * u}H${LONG}M0 ${MIDDLE + 4 * u}H${LONG}`} strokeWidth={1.8 * u} />
      <path className="cord" d={`M0 ${MIDDLE}H${LONG}`} strokeWidth={2.2 * u} />
    </>
  );
};

const SIGNS = [
  { word: 'legend.pressed', draw: (width: number) => <path className="blocks" d={block(width)} /> },
  { word: 'legend.pulled', draw: (width: number) => <Threads width={width} /> },
] as const;

export const LoadWidths = ({ loads }: { readonly loads: ExplainedLoads }) => {
  const { say } = usePages();
  const widest = widestOf(loads) / loads.told.weightN;
  const bodyWeights = (width: number): string => formatQuantity({ value: width ** 2 * widest, unit: 'count' });
  return (
    <div className="load-widths">
      <p>{say(loads.forcesRank ? 'legend.wayRank' : 'legend.way')}</p>
      <table>
        {!loads.forcesRank && (
          <thead>
            <tr>
              <td />
              {WIDTHS.map((width) => (
                <th key={width} scope="col">
                  {bodyWeights(width)}
                </th>
              ))}
            </tr>
          </thead>
        )}
        <tbody>
          {SIGNS.map(({ word, draw }) => (
            <tr key={word}>
              <th scope="row">{say(word)}</th>
              {WIDTHS.map((width) => (
                <td key={width}>
                  <svg className="load-width" viewBox={`0 0 ${LONG} 16`} width={LONG} height="16" aria-hidden="true">
                    {draw(width)}
                  </svg>
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
};
