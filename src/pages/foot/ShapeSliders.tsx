/** The shape and size of the foot, tried: what-ifs over the person's own. The picture follows the hand; the case stays. */
import { useId } from 'react';
import { DEFAULT_FOOT, FORM_BOUNDS, footLengthOf, hOfFootLength } from '../../anatomy/parameters';
import type { FootParameters } from '../../anatomy/types';
import { usePages, useSession } from '../context';
import { SideBySide } from '../pair/SideBySide';
import { PressButton } from '../parts/PressButton';
import { FORM_MEASURES, formText, lengthText } from './shape-words';

const PRESETS = { low: -1, neutral: 0, high: 1 } as const;
const LENGTH_MM = { low: 200, high: 320 } as const;

const useFoot = (): FootParameters => {
  const known = useSession((state) => state.explanation?.foot) ?? DEFAULT_FOOT;
  const tried = useSession((state) => state.whatIf.foot);
  return { ...known, ...tried };
};

const useTry = () => {
  const { session } = usePages();
  return (patch: Partial<FootParameters>): void =>
    session.commands.setWhatIf({ foot: { ...session.getState().whatIf.foot, ...patch } });
};

interface SliderProperties {
  readonly label: string;
  readonly low: number;
  readonly high: number;
  readonly step: number;
  readonly value: number;
  readonly text: string;
  readonly onChange: (value: number) => void;
}

const Slider = ({ label, low, high, step, value, text, onChange }: SliderProperties) => {
  const id = useId();
  return (
    <p className="slider">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="range"
        min={low}
        max={high}
        step={step}
        value={value}
        aria-valuetext={text}
        onChange={(event) => onChange(Number(event.currentTarget.value))}
      />
      <output htmlFor={id}>{text}</output>
    </p>
  );
};

export const ShapeSliders = () => {
  const { say, session } = usePages();
  const foot = useFoot();
  const tryOut = useTry();
  const tried = useSession(({ whatIf }) => whatIf.foot !== undefined || whatIf.footShape !== undefined);
  const lengthMm = Math.round(footLengthOf(foot.heelToSecondHeadMm));
  return (
    <section aria-labelledby="foot-shape">
      <h2 id="foot-shape" className="fold-head">
        {say('foot.shape')}
      </h2>
      <p>{say('whatIf.hint')}</p>
      <fieldset className="plain-choices">
        <legend>{say('whatIf.shape')}</legend>
        {(['low', 'neutral', 'high'] as const).map((name) => (
          <label key={name}>
            <input
              type="radio"
              name="foot-preset"
              checked={foot.arch === PRESETS[name]}
              onChange={() => tryOut({ arch: PRESETS[name] })}
            />{' '}
            {say(`footShape.${name}`)}
          </label>
        ))}
      </fieldset>
      {FORM_MEASURES.map(({ key, step, unit }) => {
        const [low, high] = FORM_BOUNDS[key];
        return (
          <Slider
            key={key}
            label={say(`foot.${key}`)}
            low={low}
            high={high}
            step={step}
            value={foot[key]}
            text={formText(say, unit, foot[key])}
            onChange={(next) => tryOut({ [key]: next })}
          />
        );
      })}
      <Slider
        label={say('foot.length')}
        low={LENGTH_MM.low}
        high={LENGTH_MM.high}
        step={1}
        value={lengthMm}
        text={lengthText(say, foot)}
        onChange={(next) => tryOut({ heelToSecondHeadMm: hOfFootLength(next) })}
      />
      <div className="row">
        <SideBySide />
        <PressButton off={!tried} onPress={() => session.commands.dropWhatIf('foot', 'footShape')}>
          {say('foot.asBefore')}
        </PressButton>
      </div>
      <p className="disclaimer">{say('foot.fewFeet')}</p>
    </section>
  );
};
