/** What is told of the weeks before and ahead. */
import { useId } from 'react';
import type { Quantity } from '../../units';
import { useWords } from '../context';
import { amountsOf, BOUNDS, DIARY_KINDS, type DiaryState, ofKind, typed } from './diary-state';
import { RangeField } from './RangeField';
import { StepFields } from './StepFields';
import { shortNumber } from './wear';

interface Properties {
  readonly state: DiaryState;
  readonly task: Quantity | null;
  readonly onChange: (state: DiaryState) => void;
}

const Choice = <T extends string>({
  legend,
  options,
  value,
  onChange,
}: {
  readonly legend: string;
  readonly options: readonly (readonly [value: T, words: string])[];
  readonly value: T;
  readonly onChange: (value: T) => void;
}) => {
  const name = useId();
  return (
    <fieldset className="plain-choices">
      <legend>{legend}</legend>
      {options.map(([each, words]) => (
        <label key={each}>
          <input type="radio" name={name} checked={each === value} onChange={() => onChange(each)} /> {words}
        </label>
      ))}
    </fieldset>
  );
};

const EachWeek = ({ state, onChange }: Properties) => {
  const say = useWords();
  const id = useId();
  const amounts = amountsOf(state);
  return (
    <ol className="repeat-weeks">
      {amounts.map((amount, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a week is known by its number
        <li key={i} className="field">
          <label htmlFor={`${id}${i}`}>{say(`repeat.week.${state.kind}`, { week: i + 1 })}</label>
          <input
            id={`${id}${i}`}
            type="number"
            min={0}
            max={BOUNDS[state.kind].high * 10}
            step="any"
            value={amount}
            onChange={(event) => {
              const value = event.currentTarget.valueAsNumber;
              if (value >= 0) onChange({ ...state, each: amounts.map((old, j) => (j === i ? value : old)) });
            }}
          />
        </li>
      ))}
    </ol>
  );
};

export const DiaryFields = (properties: Properties) => {
  const say = useWords();
  const { state, onChange } = properties;
  const { kind } = state;
  const change = (part: Partial<DiaryState>) => onChange({ ...state, ...part });
  const stride = (metres: number): string => say('repeat.strideValue', { metres: metres.toFixed(1) });
  return (
    <div className="repeat-fields">
      <Choice
        legend={say('repeat.kind')}
        options={DIARY_KINDS.map((each) => [each, say(`repeat.kind.${each}`)] as const)}
        value={kind}
        onChange={(next) => onChange(ofKind(state, next))}
      />
      <RangeField
        label={say('repeat.before')}
        bounds={BOUNDS[kind]}
        value={state.before}
        words={say(`repeat.amount.${kind}`, { amount: state.before })}
        onChange={(before) => change({ before })}
      />
      {kind === 'distance' ? (
        <>
          <RangeField
            label={say('repeat.strideBefore')}
            bounds={BOUNDS.stride}
            value={state.strideBeforeM}
            words={stride(state.strideBeforeM)}
            onChange={(strideBeforeM) => change({ strideBeforeM })}
          />
          <RangeField
            label={say('repeat.strideAhead')}
            bounds={BOUNDS.stride}
            value={state.strideAheadM}
            words={stride(state.strideAheadM)}
            onChange={(strideAheadM) => change({ strideAheadM })}
          />
        </>
      ) : (
        <RangeField
          label={say('repeat.strides')}
          bounds={BOUNDS.strides}
          value={state.stridesPerSession}
          words={say('repeat.stridesValue', { strides: state.stridesPerSession })}
          onChange={(stridesPerSession) => change({ stridesPerSession })}
        />
      )}
      <RangeField
        label={say('repeat.weeks')}
        bounds={BOUNDS.weeks}
        value={state.weekCount}
        words={say('repeat.weeksValue', { weeks: state.weekCount })}
        onChange={(weekCount) => change({ weekCount })}
      />
      <Choice
        legend={say('repeat.plan')}
        options={[
          ['ramp', say('repeat.plan.ramp')],
          ['each', say('repeat.plan.each')],
        ]}
        value={state.plan}
        onChange={(plan) => onChange(plan === 'each' ? typed(state) : { ...state, plan })}
      />
      {state.plan === 'ramp' ? (
        <RangeField
          label={say('repeat.ramp')}
          bounds={BOUNDS.ramp}
          value={state.rampPercent}
          words={say('repeat.rampValue', {
            percent: state.rampPercent,
            last: say(`repeat.amount.${kind}`, { amount: shortNumber(amountsOf(state).at(-1) ?? 0) }),
          })}
          onChange={(rampPercent) => change({ rampPercent })}
        />
      ) : (
        <EachWeek {...properties} />
      )}
      <StepFields {...properties} />
    </div>
  );
};
