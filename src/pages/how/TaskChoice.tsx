/** Which movement, and on which edge of the foot where the same movement is known on either. */
import { useId } from 'react';
import type { Activity } from '../../content/schema';
import type { ActivityId } from '../../ids';
import { usePages, useSession } from '../context';
import { useActivityName } from './use-activity-name';
import { useActivity, useCurrentRun } from './use-current';

/** A speed or a slope that was tried belongs to the movement it was tried in. */
const useChoose = () => {
  const { session } = usePages();
  return (activity: ActivityId): void => {
    const { speed, tiltDeg } = session.getState().whatIf;
    if (speed !== undefined || tiltDeg !== undefined) session.commands.dropWhatIf('speed', 'tiltDeg');
    session.commands.setWhatIf({ activity });
  };
};

export const TaskChoice = () => {
  const { say } = usePages();
  const id = useId();
  const content = useSession((state) => state.content);
  const chosen = useSession((state) => state.whatIf.activity);
  const run = useCurrentRun();
  const named = useActivityName();
  const choose = useChoose();
  return (
    <p className="slider">
      <label htmlFor={id}>{say('whatIf.activity')}</label>
      <select
        id={id}
        value={chosen ?? run?.activity ?? ''}
        onChange={(event) => {
          const activity = content.activities.find((each) => each.id === event.currentTarget.value);
          if (activity !== undefined) choose(activity.id);
        }}
      >
        {run === null && chosen === undefined && <option value="">{say('choice.notStated')}</option>}
        {content.activities.map((activity) => (
          <option key={activity.id} value={activity.id}>
            {named(activity.id)}
          </option>
        ))}
      </select>
      {chosen === undefined && run?.activityAssumed && <span>{say('whatIf.assumed')}</span>}
    </p>
  );
};

/** The task of the two in which the ground is higher under the outer edge loads that edge. */
const onOuterEdge = (activity: Activity): boolean => activity.figures.tilt.value > 0;

export const EdgeChoice = () => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const activity = useActivity(useCurrentRun());
  const name = useId();
  const choose = useChoose();
  const other = content.activities.find(({ id }) => id === activity?.otherEdge);
  if (activity === null || other === undefined) return null;
  const [outer, inner] = onOuterEdge(activity) ? [activity, other] : [other, activity];
  return (
    <fieldset className="plain-choices">
      <legend>{say('whatIf.edge')}</legend>
      {(
        [
          ['whatIf.outerEdge', outer],
          ['whatIf.innerEdge', inner],
        ] as const
      ).map(([key, each]) => (
        <label key={key}>
          <input type="radio" name={name} checked={each.id === activity.id} onChange={() => choose(each.id)} />{' '}
          {say(key)}
        </label>
      ))}
    </fieldset>
  );
};
