/** Question 5: the stages on a rule in weeks, what opens each next one, and the published range with its endpoint. */
import { usePages, useSession } from '../context';
import { findingsOf } from '../findings';
import { Disclosure } from '../parts/Disclosure';
import { StageList } from './StageList';
import { WeeksRule } from './WeeksRule';

export const BackPart = () => {
  const { say } = usePages();
  const explanation = useSession((state) => state.explanation);
  const stages = findingsOf(explanation, 'stageUsual');
  if (stages.length === 0) return null;
  return (
    <>
      <WeeksRule stages={stages} ranges={findingsOf(explanation, 'backRange')} />
      <div className="folds">
        <Disclosure title={say('back.stages')}>
          <StageList stages={stages} />
        </Disclosure>
      </div>
    </>
  );
};
