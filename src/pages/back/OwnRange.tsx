/** From and to as the clinic sets them, kept when the field is left; both empty: nothing of its own. What does not fit is said. */
import { useId, useState } from 'react';
import { usePages } from '../context';

interface Range {
  readonly low: number;
  readonly high: number;
}

interface Properties {
  readonly legend: string;
  readonly unit: string;
  readonly most: number;
  readonly value: Range | null;
  readonly onSet: (range: Range | null) => void;
}

type Read = { readonly range: Range | null } | 'half' | 'wrong';

export const readRange = (low: string, high: string, most: number): Read => {
  const [from, to] = [low.trim(), high.trim()];
  if (from === '' && to === '') return { range: null };
  if (from === '' || to === '') return 'half';
  const [a, b] = [Number(from), Number(to)];
  return Number.isFinite(a) && Number.isFinite(b) && a >= 0 && a <= b && b <= most
    ? { range: { low: a, high: b } }
    : 'wrong';
};

export const OwnRange = ({ legend, unit, most, value, onSet }: Properties) => {
  const { say, announce } = usePages();
  const id = useId();
  const [wrong, setWrong] = useState(false);
  const field = (end: 'low' | 'high') => (
    <label>
      {say(end === 'low' ? 'stages.from' : 'stages.to')}{' '}
      <input
        id={`${id}-${end}`}
        type="number"
        inputMode="decimal"
        min={0}
        max={most}
        defaultValue={value?.[end] ?? ''}
        aria-describedby={wrong ? `${id}-wrong` : undefined}
        aria-invalid={wrong || undefined}
      />
    </label>
  );
  return (
    <fieldset
      className="own-range"
      // Undone or opened anew, the fields show what the case says.
      key={value === null ? '' : `${value.low} ${value.high}`}
      onBlur={(event) => {
        // From one end to the other is not done yet.
        if (event.currentTarget.contains(event.relatedTarget)) return;
        const typed = (end: string) =>
          event.currentTarget.querySelector<HTMLInputElement>(`[id="${id}-${end}"]`)?.value ?? '';
        const read = readRange(typed('low'), typed('high'), most);
        setWrong(read === 'wrong');
        if (typeof read === 'string') return;
        const { range } = read;
        if (range?.low === value?.low && range?.high === value?.high) return;
        onSet(range);
        announce(say('stages.kept'));
      }}
    >
      <legend className="own-mark">{legend}</legend>
      {field('low')} {field('high')} {unit}
      {wrong && (
        <span id={`${id}-wrong`} className="own-wrong" role="alert">
          {say('stages.wrong', { most })}
        </span>
      )}
    </fieldset>
  );
};
