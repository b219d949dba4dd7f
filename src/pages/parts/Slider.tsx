/** A slider with its name, its value in words, and a way back to what holds without it. */
import { type ReactNode, useId, useRef } from 'react';
import { useWords } from '../context';

interface Properties {
  readonly label: string;
  readonly low: number;
  readonly high: number;
  readonly step: number;
  readonly value: number;
  /** The value as it is read and spoken. */
  readonly text: string;
  readonly onChange: (value: number) => void;
  /** Beside the value, not spoken with each step. */
  readonly note?: ReactNode;
  /** Given while the value is a what-if: takes it back. */
  readonly onDrop?: (() => void) | undefined;
}

export const Slider = ({ label, low, high, step, value, text, onChange, note, onDrop }: Properties) => {
  const say = useWords();
  const id = useId();
  const input = useRef<HTMLInputElement>(null);
  return (
    <div className="slider">
      <label htmlFor={id}>{label}</label>
      <input
        ref={input}
        id={id}
        type="range"
        min={low}
        max={high}
        step={step}
        value={value}
        aria-valuetext={text}
        onChange={(event) => onChange(Number(event.currentTarget.value))}
      />
      <span className="slider-value">
        <output htmlFor={id}>{text}</output> {note}
        {onDrop !== undefined && (
          <button
            type="button"
            className="linkish"
            aria-label={say('whatIf.asItWasOf', { what: label })}
            onClick={() => {
              // The button goes with the what-if: the hand stays at its slider.
              input.current?.focus();
              onDrop();
            }}
          >
            {say('whatIf.asItWas')}
          </button>
        )}
      </span>
    </div>
  );
};
