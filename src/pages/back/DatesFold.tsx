/** The dates that matter, folded. What is in it is loaded when it is first opened: the distributions are no part of a first visit. */
import { lazy, Suspense, useState } from 'react';
import { usePages } from '../context';
import { Disclosure } from '../parts/Disclosure';

const Body = lazy(async () => ({ default: (await import('./DatesBody')).DatesBody }));

export const DatesFold = () => {
  const { say } = usePages();
  const [opened, setOpened] = useState(false);
  return (
    <Disclosure title={say('dates.title')} onToggle={(open) => open && setOpened(true)}>
      {opened && (
        <Suspense fallback={<p role="status">{say('note.working')}</p>}>
          <Body />
        </Suspense>
      )}
    </Disclosure>
  );
};
