/** What if: another movement, mass, load, speed, ground, sole, foot, or place of the break. Changes the picture, never the case. */
import { useId } from 'react';
import { archShapeOf } from '../../anatomy';
import { usePages, useSession } from '../context';
import { FormSliders } from '../foot/ShapeSliders';
import { Disclosure } from '../parts/Disclosure';
import { LoadSliders } from './LoadSliders';
import { BreakSlider } from './MoveBreak';
import { EdgeChoice, TaskChoice } from './TaskChoice';

const SHAPES = ['neutral', 'high', 'low'] as const;

const Shape = () => {
  const { say, session } = usePages();
  const name = useId();
  const shape = useSession(
    (state) => state.whatIf.footShape ?? (state.explanation ? archShapeOf(state.explanation.foot) : 'neutral'),
  );
  return (
    <fieldset className="plain-choices">
      <legend>{say('whatIf.shape')}</legend>
      {SHAPES.map((each) => (
        <label key={each}>
          <input
            type="radio"
            name={name}
            checked={each === shape}
            onChange={() => session.commands.setWhatIf({ footShape: each })}
          />{' '}
          {say(`footShape.${each}`)}
        </label>
      ))}
    </fieldset>
  );
};

export const Sliders = () => {
  const { say } = usePages();
  return (
    <div>
      <p>{say('whatIf.hint')}</p>
      <TaskChoice />
      <EdgeChoice />
      <LoadSliders />
      <Shape />
      <Disclosure title={say('foot.shape')}>
        <FormSliders />
      </Disclosure>
      <BreakSlider />
    </div>
  );
};
