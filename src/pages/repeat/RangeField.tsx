/** A slider with its name and its value in words, the same for the hand, the keyboard and the ear. */
import { useId } from 'react';

interface Properties {
  readonly label: string;
  readonly bounds: { readonly low: number; readonly high: number; readonly step: number };
  readonly value: number;
  readonly words: string;
  readonly onChange: (value: number) => void;
}

export const RangeField = ({ label, bounds, value, words, onChange }: Properties) => {
  const id = useId();
  return (
    <p className="slider">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="range"
        min={bounds.low}
        max={bounds.high}
        step={bounds.step}
        value={value}
        aria-valuetext={words}
        onChange={(event) => onChange(Number(event.currentTarget.value))}
      />
      <output htmlFor={id}>{words}</output>
    </p>
  );
};
