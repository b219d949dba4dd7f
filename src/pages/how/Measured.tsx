/** Forces of the frame beside what others measured or computed, so that a wrong one can be seen. */
import type { FootLoads, Spread } from '../../mechanics/foot/types';
import { sourceName } from '../../wording';
import { usePages, useSession } from '../context';
import { ColumnHeads } from '../parts/ColumnHeads';
import { Known, markWordKey } from '../parts/Runs';
import { ScrollBox } from '../parts/ScrollBox';
import { StrainLine } from './StrainLine';
import type { Loads } from './use-loads';

export const MEASURED_COLUMNS = ['force', 'here', 'published', 'task', 'source'] as const;
export const MEASURED_PARTS = ['fascia', 'achilles', 'firstToeJoint', 'firstRayJoint'] as const;
type MeasuredPart = (typeof MEASURED_PARTS)[number];

const JOINTS: Readonly<Partial<Record<MeasuredPart, string>>> = {
  firstToeJoint: 'metatarsal1-phalanxProximal1',
  firstRayJoint: 'cuneiformMedial-metatarsal1',
};

/** What the frame has of it, N. */
const hereOf = (told: FootLoads, part: MeasuredPart): number | null => {
  if (part === 'fascia') return told.fasciaN;
  if (part === 'achilles') return told.achillesN;
  return told.path.find(({ id }) => id === JOINTS[part])?.forceN ?? null;
};

const weights = (newtons: number, weightN: number): string => (newtons / weightN).toFixed(2);

export const Measured = ({ loads }: { readonly loads: Loads }) => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const { told } = loads.loads;
  const bands = loads.current ? (loads.loads.bands ?? null) : null;
  const bandOf = (part: MeasuredPart): Spread | null =>
    part === 'fascia'
      ? (bands?.fascia ?? null)
      : part === 'achilles'
        ? (bands?.achilles ?? null)
        : (bands?.parts.find(({ id }) => id === JOINTS[part])?.forceN ?? null);
  const here = (part: MeasuredPart): string => {
    const force = hereOf(told, part);
    if (force === null) return '–';
    if (loads.loads.forcesRank) return say('path.noSize');
    const band = bandOf(part);
    const value = weights(force, told.weightN);
    return band === null
      ? say('measured.weightsOf', { value })
      : say('measured.band', { value, low: weights(band.low, told.weightN), high: weights(band.high, told.weightN) });
  };
  return (
    <>
      <p className="small-print">{say('measured.what')}</p>
      <ScrollBox label={say('measured.title')}>
        <table className="measured">
          <caption className="unseen">{say('measured.title')}</caption>
          <ColumnHeads of={MEASURED_COLUMNS.map((key) => `measured.column.${key}`)} />
          <tbody>
            {content.measuredLoads.map(({ id, part, task, figure }) => {
              const { value, low, high, unit, evidence, note } = figure;
              const band = low === undefined || high === undefined ? '' : ` (${low} to ${high})`;
              return (
                <tr key={id}>
                  <th scope="row">{say(`measured.${part}`)}</th>
                  <td>{here(part)}</td>
                  <td>
                    <Known mark={evidence.mark}>{`${value}${band}`}</Known>{' '}
                    {say(unit === 'N' ? 'unit.N' : 'measured.weights')}
                  </td>
                  <td>
                    {task} {note}
                  </td>
                  <td>
                    {evidence.source === null ? say('figures.noSource') : sourceName(content, evidence.source)},{' '}
                    {say(markWordKey(evidence.mark))}
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </ScrollBox>
      <Strains />
    </>
  );
};

/** What "one step or many" is held against. */
const Strains = () => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  return (
    <>
      <h3>{say('strains.title')}</h3>
      <p className="small-print">{say('strains.what')}</p>
      <ul>
        {content.strains.map((record) => (
          <li key={record.id}>
            {say('strains.of', { what: record.term })} <StrainLine record={record} />
          </li>
        ))}
      </ul>
    </>
  );
};
