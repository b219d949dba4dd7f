/** How the foot in the picture is held. Explanations stay those of the standing foot, and the page says so. */
import { POSE_NAMES } from '../../anatomy/types';
import { usePages, useSession } from '../context';

export const PoseChoice = () => {
  const { say, session } = usePages();
  const pose = useSession((state) => state.pose);
  return (
    <section aria-labelledby="foot-pose">
      <h2 id="foot-pose" className="fold-head">
        {say('foot.pose')}
      </h2>
      <fieldset className="plain-choices">
        <legend>{say('foot.poseHint')}</legend>
        {POSE_NAMES.map((name) => (
          <label key={name}>
            <input
              type="radio"
              name="foot-pose"
              checked={name === pose}
              onChange={() => session.commands.setPose(name)}
            />{' '}
            {say(`foot.pose.${name}`)}
          </label>
        ))}
      </fieldset>
    </section>
  );
};
