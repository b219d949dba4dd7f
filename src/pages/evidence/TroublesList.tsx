/** Every trouble of healing with everything that was counted of it, whatever the injury. */
import { useMemo } from 'react';
import { troubleCounts } from '../../explain/troubles';
import { wordTroubleCount } from '../../wording';
import { usePages, useSession } from '../context';
import { TroubleLine } from './TroubleLine';

export const TroublesList = () => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  const all = useMemo(
    () =>
      content.troubles.map((trouble) => ({
        trouble,
        lines: troubleCounts(content, trouble, null).map((count) => ({
          count,
          runs: wordTroubleCount(content, count, reader),
        })),
      })),
    [content, reader],
  );
  return (
    <>
      <p className="small-print">{say('troubles.note')}</p>
      {all.map(({ trouble, lines }) => (
        <section key={trouble.id} className="trouble">
          <p className="list-head">{reader === 'study' ? trouble.term : trouble.plain}</p>
          <p>{trouble.what[reader]}</p>
          <ul className="plain">
            {lines.map(({ count, runs }) => (
              <li key={'rate' in count.from ? count.from.rate : count.from.study}>
                <TroubleLine count={count} runs={runs} />
              </li>
            ))}
          </ul>
        </section>
      ))}
    </>
  );
};
