/** Moving the break along its bone without a mouse: the same what-if as dragging it in the figure. */
import { useId } from 'react';
import { usePages, useSession } from '../context';
import { Disclosure } from '../parts/Disclosure';

export const BreakSlider = () => {
  const { say, session } = usePages();
  const explanation = useSession((state) => state.explanation);
  const id = useId();
  const at = explanation?.breakAt ?? null;
  const end = explanation?.zones.at(-1)?.toMm ?? null;
  if (at === null || end === null) return <p className="small-print">{say('whatIf.noBreak')}</p>;
  return (
    <p className="slider">
      <label htmlFor={id}>{say('whatIf.place')}</label>
      <input
        id={id}
        type="range"
        min={0}
        max={Math.floor(end)}
        step={1}
        value={Math.round(at.sMm)}
        aria-valuetext={say('whatIf.placeValue', { mm: Math.round(at.sMm) })}
        onChange={(event) =>
          session.commands.setWhatIf({ place: { by: 'distance', mm: Number(event.currentTarget.value) } })
        }
      />
      <output htmlFor={id}>{say('whatIf.placeValue', { mm: Math.round(at.sMm) })}</output>
    </p>
  );
};

export const MoveBreak = () => {
  const { say } = usePages();
  return (
    <Disclosure title={say('whatIf.try')}>
      <p>{say('whatIf.moveHint')}</p>
      <BreakSlider />
    </Disclosure>
  );
};
