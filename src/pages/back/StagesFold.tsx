/** The stages on request: drawn only while open, so that a pose shown for an exercise goes with them. */
import { useState } from 'react';
import { usePages, useSession } from '../context';
import { findingsOf } from '../findings';
import { Disclosure } from '../parts/Disclosure';
import { StageList } from './StageList';

export const StagesFold = () => {
  const { say } = usePages();
  const explanation = useSession((state) => state.explanation);
  const caseTick = useSession((state) => state.caseTick);
  const [open, setOpen] = useState(false);
  const stages = findingsOf(explanation, 'stageUsual');
  return stages.length === 0 ? null : (
    <Disclosure title={say('back.stages')} open={open} onToggle={setOpen}>
      {open && <StageList key={caseTick} stages={stages} />}
    </Disclosure>
  );
};
