/** What if: other body mass, movement, foot shape or place of the break. Changes the picture, never the case. */
import { useId } from 'react';
import { archShapeOf } from '../../anatomy';
import { usePages, useSession } from '../context';
import { BreakSlider } from './MoveBreak';

const SHAPES = ['neutral', 'high', 'low'] as const;
/** Bounds of the slider, kg; the case file admits more. */
const MASS = { low: 30, high: 160 } as const;

const useCurrent = () => {
  const findings = useSession((state) => state.explanation?.questions[1].findings ?? null);
  const peaks = findings?.find((finding) => finding.message.id === 'beamPeaks')?.message;
  return peaks?.id === 'beamPeaks' ? peaks.args : null;
};

const Mass = () => {
  const { say, session } = usePages();
  const id = useId();
  const current = useCurrent();
  const whatIf = useSession((state) => state.whatIf.massKg);
  const value = whatIf ?? current?.mass.value ?? null;
  if (value === null) return null;
  return (
    <p className="slider">
      <label htmlFor={id}>{say('whatIf.mass')}</label>
      <input
        id={id}
        type="range"
        min={MASS.low}
        max={MASS.high}
        step={1}
        value={Math.round(value)}
        aria-valuetext={say('whatIf.massValue', { kg: Math.round(value) })}
        onChange={(event) => session.commands.setWhatIf({ massKg: Number(event.currentTarget.value) })}
      />
      <output htmlFor={id}>
        {say('whatIf.massValue', { kg: Math.round(value) })}
        {whatIf === undefined && current?.massAssumed ? ` ${say('whatIf.assumed')}` : ''}
      </output>
    </p>
  );
};

const Activity = () => {
  const { say, session } = usePages();
  const id = useId();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  const chosen = useSession((state) => state.whatIf.activity);
  const current = useCurrent();
  return (
    <p className="slider">
      <label htmlFor={id}>{say('whatIf.activity')}</label>
      <select
        id={id}
        value={chosen ?? current?.activity ?? ''}
        onChange={(event) => {
          const activity = content.activities.find((each) => each.id === event.currentTarget.value);
          if (activity !== undefined) session.commands.setWhatIf({ activity: activity.id });
        }}
      >
        {current === null && chosen === undefined && <option value="">{say('choice.notStated')}</option>}
        {content.activities.map((activity) => (
          <option key={activity.id} value={activity.id}>
            {reader === 'patient' ? activity.plain : activity.term}
          </option>
        ))}
      </select>
      {chosen === undefined && current?.activityAssumed && <span>{say('whatIf.assumed')}</span>}
    </p>
  );
};

const Shape = () => {
  const { say, session } = usePages();
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
            name="what-if-shape"
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
      <Mass />
      <Activity />
      <Shape />
      <BreakSlider />
    </div>
  );
};
