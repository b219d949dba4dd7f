/** How hard each step of the weeks ahead is, against one before. */
import { useId } from 'react';
import type { Quantity } from '../../units';
import { usePages, useSession } from '../context';
import { BOUNDS, type DiaryState } from './diary-state';
import { RangeField } from './RangeField';
import { shortNumber } from './wear';

interface Properties {
  readonly state: DiaryState;
  readonly task: Quantity | null;
  readonly onChange: (state: DiaryState) => void;
}

const useTaskName = (): string => {
  const content = useSession((session) => session.content);
  const activity = useSession((session) => session.explanation?.loads?.activity ?? null);
  const reader = useSession((session) => session.reader);
  const found = content.activities.find((each) => each.id === activity);
  return (reader === 'patient' ? found?.plain : found?.term) ?? '';
};

export const StepFields = ({ state, task, onChange }: Properties) => {
  const { say } = usePages();
  const name = useId();
  const taskName = useTaskName();
  const [low, high] = task?.lowHigh ?? [task?.value ?? 1, task?.value ?? 1];
  const option = (step: DiaryState['step'], words: string) => (
    <label>
      <input type="radio" name={name} checked={state.step === step} onChange={() => onChange({ ...state, step })} />{' '}
      <span>{words}</span>
    </label>
  );
  return (
    <>
      <fieldset className="plain-choices repeat-step">
        <legend>{say('repeat.step')}</legend>
        {option('same', say('repeat.step.same'))}
        {option('own', say('repeat.step.own'))}
        {task !== null &&
          option(
            'task',
            say('repeat.step.task', {
              task: taskName,
              value: shortNumber(task.value),
              low: shortNumber(low),
              high: shortNumber(high),
            }),
          )}
      </fieldset>
      {state.step === 'own' && (
        <RangeField
          label={say('repeat.own')}
          bounds={BOUNDS.own}
          value={state.ownStep}
          words={say('repeat.ownValue', { times: state.ownStep.toFixed(2) })}
          onChange={(ownStep) => onChange({ ...state, ownStep })}
        />
      )}
    </>
  );
};
