/** How the two feet differ: in words, which are also the text of the pictures, and measure by measure, each drawn when pressed. */
import { useMemo } from 'react';
import type { Measure } from '../../anatomy/angles/schema';
import { usePages, useSession } from '../context';
import { Draft } from '../foot/Draft';
import { measureName, measuresOf } from '../foot/measures-of';
import { figureText } from '../foot/norm-text';
import { ScrollBox } from '../parts/ScrollBox';
import { byText, differenceWords } from './difference-words';
import { type Difference, mostChanged, unequal } from './differences';
import { halfName } from './half-words';
import type { PairOf } from './pairs';
import type { Taken } from './use-differences';

interface DifferenceTableProps {
  readonly id: string;
  readonly pair: PairOf;
  readonly taken: Taken | 'failed' | null;
  readonly drawn: Difference['id'] | null;
  readonly onDraw: (difference: Difference) => void;
}

/** Angles told in the text of the pictures; the others are in the table. */
const TOLD = 3;

export const DifferenceTable = ({ id, pair, taken, drawn, onDraw }: DifferenceTableProps) => {
  const { say } = usePages();
  const shape = useSession((state) => state.content.shape);
  const study = useSession((state) => state.reader) === 'study';
  const nameOf = useMemo(() => {
    const measures = new Map<string, Measure>(measuresOf(shape).map((measure) => [measure.id, measure]));
    return (of: Difference['id']): string => {
      const measure = measures.get(of);
      return measure === undefined ? of : measureName(measure, study);
    };
  }, [shape, study]);
  const all = taken === null || taken === 'failed' ? [] : taken.differences;
  const changed = unequal(all);
  const told = mostChanged(all, TOLD);
  return (
    <>
      <p id={id} className="pair-words" role="status">
        {taken === null
          ? say('pair.working')
          : taken === 'failed'
            ? say('foot.measuresNone')
            : differenceWords(say, pair, { told, changed: changed.length, all: all.length, nameOf })}
      </p>
      {changed.length > 0 && (
        <ScrollBox label={say('pair.table')}>
          <table className="pair-table">
            <thead>
              <tr>
                <th scope="col">{say('pair.column.measure')}</th>
                <th scope="col">{halfName(say, pair[0])}</th>
                <th scope="col">{halfName(say, pair[1])}</th>
                <th scope="col">{say('pair.column.by')}</th>
              </tr>
            </thead>
            <tbody>
              {changed.map((difference) => (
                <tr key={difference.id}>
                  <th scope="row">
                    <button
                      type="button"
                      className="choice"
                      aria-pressed={drawn === difference.id}
                      onClick={() => onDraw(difference)}
                    >
                      {nameOf(difference.id)}
                    </button>
                  </th>
                  <td>{figureText(say, difference.first, difference.unit)}</td>
                  <td>{figureText(say, difference.second, difference.unit)}</td>
                  <td>{byText(say, difference)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </ScrollBox>
      )}
      <Draft file="anatomy/angles.yaml" />
      <p className="disclaimer">{say('foot.fewFeet')}</p>
    </>
  );
};
