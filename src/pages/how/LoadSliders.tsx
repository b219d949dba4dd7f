/** The sliders that only the frame of the foot knows: mass, load carried, speed, ground, sole. Each says its value and can be put back. */
import { usePages, useSession } from '../context';
import { Slider } from '../parts/Slider';
import { SLIDER_BOUNDS, soleText, speedText, tiltText } from './slider-words';
import { useActivity, useCurrentRun } from './use-current';

const SPEED_STEP = 0.1;

const Mass = () => {
  const { say, session } = usePages();
  const run = useCurrentRun();
  const tried = useSession((state) => state.whatIf.massKg);
  const value = tried ?? run?.mass.value ?? null;
  if (value === null) return null;
  const [low, high] = SLIDER_BOUNDS.massKg;
  return (
    <Slider
      label={say('whatIf.mass')}
      low={low}
      high={high}
      step={1}
      value={Math.round(value)}
      text={say('whatIf.massValue', { kg: Math.round(value) })}
      note={tried === undefined && run?.massAssumed ? say('whatIf.assumed') : null}
      onChange={(massKg) => session.commands.setWhatIf({ massKg })}
      onDrop={tried === undefined ? undefined : () => session.commands.dropWhatIf('massKg')}
    />
  );
};

const Carried = () => {
  const { say, session } = usePages();
  const tried = useSession((state) => state.whatIf.carriedKg);
  const [low, high] = SLIDER_BOUNDS.carriedKg;
  return (
    <Slider
      label={say('whatIf.carried')}
      low={low}
      high={high}
      step={1}
      value={tried ?? 0}
      text={say('whatIf.massValue', { kg: tried ?? 0 })}
      onChange={(carriedKg) => session.commands.setWhatIf({ carriedKg })}
      onDrop={tried === undefined ? undefined : () => session.commands.dropWhatIf('carriedKg')}
    />
  );
};

/** Only for tasks of which a source says how their force grows with speed. */
const Speed = () => {
  const { say, session } = usePages();
  const tried = useSession((state) => state.whatIf.speed);
  const speed = useActivity(useCurrentRun())?.speed;
  if (speed === undefined) return null;
  const value = tried ?? speed.usual;
  return (
    <Slider
      label={say('whatIf.speed')}
      low={speed.low}
      high={speed.high}
      step={SPEED_STEP}
      value={value}
      text={speedText(say, value)}
      onChange={(next) => session.commands.setWhatIf({ speed: next })}
      onDrop={tried === undefined ? undefined : () => session.commands.dropWhatIf('speed')}
    />
  );
};

const Tilt = () => {
  const { say, session } = usePages();
  const tried = useSession((state) => state.whatIf.tiltDeg);
  const usual = useActivity(useCurrentRun())?.figures.tilt.value ?? 0;
  const value = tried ?? usual;
  // A landing on the edge of the foot begins beyond what else is asked.
  const [low, high] = SLIDER_BOUNDS.tiltDeg;
  return (
    <Slider
      label={say('whatIf.tilt')}
      low={Math.min(low, usual)}
      high={Math.max(high, usual)}
      step={1}
      value={value}
      text={tiltText(say, value)}
      onChange={(tiltDeg) => session.commands.setWhatIf({ tiltDeg })}
      onDrop={tried === undefined ? undefined : () => session.commands.dropWhatIf('tiltDeg')}
    />
  );
};

const Sole = () => {
  const { say, session } = usePages();
  const reader = useSession((state) => state.reader);
  const tried = useSession((state) => state.whatIf.soleBending);
  const [low, high] = SLIDER_BOUNDS.soleBending;
  return (
    <Slider
      label={say('whatIf.sole')}
      low={low}
      high={high}
      step={1}
      value={tried ?? 0}
      text={soleText(say, tried ?? 0, reader !== 'patient')}
      note={reader === 'study' ? say('whatIf.soleNote') : null}
      onChange={(soleBending) => session.commands.setWhatIf({ soleBending })}
      onDrop={tried === undefined ? undefined : () => session.commands.dropWhatIf('soleBending')}
    />
  );
};

export const LoadSliders = () => {
  const run = useCurrentRun();
  const content = useSession((state) => state.content);
  if (run === null || content.activities.length === 0) return null;
  return (
    <>
      <Mass />
      <Carried />
      <Speed />
      <Tilt />
      <Sole />
    </>
  );
};
