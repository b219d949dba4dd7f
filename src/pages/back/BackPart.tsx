/** Question 5: the stages on a rule in weeks with the published range, and what opens each next stage. */
import { usePages, useSession } from '../context';
import { findingsOf } from '../findings';
import { Disclosure } from '../parts/Disclosure';
import { StageList } from './StageList';
import { WeeksRule } from './WeeksRule';

const useStages = () =>
  findingsOf(
    useSession((state) => state.explanation),
    'stageUsual',
  );

export const WeeksPart = () => {
  const explanation = useSession((state) => state.explanation);
  const stages = useStages();
  if (stages.length === 0) return null;
  return <WeeksRule stages={stages} ranges={findingsOf(explanation, 'backRange')} />;
};

export const StageFold = () => {
  const { say } = usePages();
  const stages = useStages();
  if (stages.length === 0) return null;
  return (
    <Disclosure title={say('back.stages')}>
      <StageList stages={stages} />
    </Disclosure>
  );
};
