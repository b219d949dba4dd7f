/** Rows of the way of the load for what acts level: the ground's push along itself, and what the leg's bones hold against it. */
import type { FootLoads, LoadBands, Spread } from '../../mechanics/foot/types';
import { usePages } from '../context';

interface Properties {
  readonly told: FootLoads;
  readonly bands: LoadBands | null;
  /** False where only more and less may be told. */
  readonly sized: boolean;
  /** Of the table that these rows stand in. */
  readonly columns: number;
}

const number = (value: number): string => value.toFixed(2).replace('-', '−');

export const AlongGround = ({ told, bands, sized, columns }: Properties) => {
  const { say } = usePages();
  const range = (of: Spread | undefined, text: (value: number) => string): string =>
    of === undefined ? say('path.bandPending') : say('path.band', { low: text(of.low), high: text(of.high) });
  const newtons = (value: number): string => String(Math.round(value));
  const newtonMetres = (nmm: number): string => number(nmm / 1000);
  return (
    <tbody>
      <tr className="trial-row">
        <th scope="rowgroup" colSpan={columns}>
          {say('path.along')}
          <span className="small-print path-how">{say('path.along.how')}</span>
        </th>
      </tr>
      <tr>
        <th scope="row">{say('path.along.ratio')}</th>
        <td colSpan={columns - 1}>
          {number(told.sidewaysShare)} ({range(bands?.sideways, number)})
          {told.flags.includes('slips') && <strong> {say('path.along.slips')}</strong>}
        </td>
      </tr>
      <tr>
        <th scope="row">{say('path.along.leg')}</th>
        <td>{sized ? newtons(told.legAlongN) : say('path.noSize')}</td>
        <td>{sized && range(bands?.legAlong, newtons)}</td>
        <td>{sized ? number(told.legAlongN / told.weightN) : say('path.noSize')}</td>
        <td />
        <td />
      </tr>
      <tr>
        <th scope="row">{say('path.along.moment')}</th>
        <td colSpan={columns - 1}>
          {sized
            ? say('path.along.newtonMetres', {
                moment: newtonMetres(told.legFrontalNmm),
                band: range(bands?.legFrontal, newtonMetres),
              })
            : say('path.noSize')}
        </td>
      </tr>
    </tbody>
  );
};
