/** The shape and size of the foot, tried: what-ifs over the person's own. The picture follows the hand; the case stays. */
import { DEFAULT_FOOT, FORM_BOUNDS, footLengthOf, hOfFootLength } from '../../anatomy/parameters';
import type { FootParameters } from '../../anatomy/types';
import { usePages, useSession } from '../context';
import { SideBySide } from '../pair/SideBySide';
import { PressButton } from '../parts/PressButton';
import { Slider } from '../parts/Slider';
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

const Back = () => {
  const { say, session } = usePages();
  const tried = useSession(({ whatIf }) => whatIf.foot !== undefined || whatIf.footShape !== undefined);
  return (
    <div className="row">
      <SideBySide />
      <PressButton off={!tried} onPress={() => session.commands.dropWhatIf('foot', 'footShape')}>
        {say('foot.asBefore')}
      </PressButton>
    </div>
  );
};

/** The measures of a foot and its length, each tried over the person's own. */
export const FormSliders = () => {
  const { say } = usePages();
  const foot = useFoot();
  const tryOut = useTry();
  const lengthMm = Math.round(footLengthOf(foot.heelToSecondHeadMm));
  return (
    <>
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
      <Back />
    </>
  );
};

export const ShapeSliders = () => {
  const { say } = usePages();
  const foot = useFoot();
  const tryOut = useTry();
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
      <FormSliders />
      <p className="disclaimer">{say('foot.fewFeet')}</p>
    </section>
  );
};
