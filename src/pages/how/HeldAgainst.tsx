/** What the frame was fixed on, and what it then predicts, beside what was published: hits and misses, computed on this foot. */
import type { LoadCheck } from '../../content/schema';
import type { CheckAnswer } from '../../mechanics/foot/checks';
import { sourceName } from '../../wording';
import { usePages, useSession } from '../context';
import { ColumnHeads } from '../parts/ColumnHeads';
import { Known, markWordKey } from '../parts/Runs';
import { ScrollBox } from '../parts/ScrollBox';
import { useLoads } from './use-loads';

export const CHECK_COLUMNS = ['check', 'published', 'here', 'verdict', 'source'] as const;

/** Units in words. Stresses are told as multiples of the first of their row: nobody reads megapascals of a foot here. */
export const CHECK_UNITS = {
  '%': 'percent',
  MPa: 'first',
  N: 'newton',
  'N m': 'newtonMetre',
  'N m/rad': 'newtonMetrePerRadian',
  'body weight': 'bodyWeight',
  deg: 'degree',
  microstrain: 'microstrain',
  mm: 'mm',
  ratio: 'times',
  share: 'part',
} as const satisfies Record<LoadCheck['unit'], string>;

/** Three figures at most. */
const figures = (got: CheckAnswer['got'], unit: LoadCheck['unit']): string => {
  const first = unit === 'MPa' ? (got[0] ?? 1) : 1;
  return got.map((value) => String(Number((value / first).toPrecision(3)))).join(', ');
};

export const HeldAgainst = () => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const checks = useLoads('contributors')?.banded?.loads?.checks ?? null;
  if (checks === null) return <p className="held">{say('whyHere.working')}</p>;
  const hits = checks.filter(({ verdict }) => verdict === 'hit').length;
  return (
    <>
      <p>{say('held.what', { hits, all: checks.length })}</p>
      <ScrollBox label={say('held.title')}>
        <table className="measured">
          <caption className="unseen">{say('held.title')}</caption>
          <ColumnHeads of={CHECK_COLUMNS.map((key) => `held.column.${key}`)} />
          <tbody>
            {checks.map(({ id, got, verdict }) => {
              const record = content.loadChecks.find((check) => check.id === id);
              if (record === undefined) return null;
              const { source, mark } = record.evidence;
              return (
                <tr key={id}>
                  <th scope="row">
                    {record.term} ({say(`held.set.${record.set}`)}
                    {record.nearTautology === true && `, ${say('held.nearTautology')}`})
                  </th>
                  <td>
                    <Known mark={mark}>{record.published}</Known>
                  </td>
                  <td>
                    {got.length === 0
                      ? '–'
                      : `${figures(got, record.unit)} ${say(`held.unit.${CHECK_UNITS[record.unit]}`)}`}
                  </td>
                  <td>{say(`held.${verdict}`)}</td>
                  <td>
                    {source === null ? say('figures.noSource') : sourceName(content, source)}, {say(markWordKey(mark))}
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
