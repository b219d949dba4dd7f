/** Every trouble of healing with everything that was counted of it, whatever the injury. */
import { useMemo } from 'react';
import { recordOf, troubleCounts } from '../../explain/trouble-counts';
import { wordTroubleCount } from '../../wording';
import { usePages, useSession } from '../context';
import { TroubleCounts } from './TroubleCounts';

export const TroublesList = () => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  const all = useMemo(
    () =>
      content.troubles.map((trouble) => ({
        trouble,
        told: troubleCounts(content, trouble, null).map((count) => ({
          key: recordOf(count),
          count,
          runs: wordTroubleCount(content, count, reader),
        })),
      })),
    [content, reader],
  );
  return (
    <>
      <p className="small-print">{say('troubles.note')}</p>
      {all.map(({ trouble, told }) => (
        <section key={trouble.id} className="trouble">
          <p className="list-head">{reader === 'study' ? trouble.term : trouble.plain}</p>
          <p>{trouble.what[reader]}</p>
          <TroubleCounts told={told} />
        </section>
      ))}
    </>
  );
};
