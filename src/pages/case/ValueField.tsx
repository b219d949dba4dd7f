/** The field or fields that ask for the value of one subject. */
import { useId } from 'react';
import type { Subject } from '../../cases';
import { usePages, useSession } from '../context';
import { choicesFor } from './choices';
import { FIELDS, type Raw } from './raw-value';

interface Properties {
  readonly subject: Subject;
  readonly raw: Raw;
  readonly onChange: (raw: Raw) => void;
}

export const ValueField = ({ subject, raw, onChange }: Properties) => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  const id = useId();
  const field = FIELDS[subject];
  const choices = choicesFor(content, subject, reader, say);
  const withDate = field === 'date' || field === 'choiceAndDate' || field === 'choiceAndNeededDate';
  return (
    <>
      {choices.length > 0 && (
        <p className="field">
          <label htmlFor={`${id}main`}>{say(`subject.${subject}`)}</label>
          <select
            id={`${id}main`}
            value={raw.main}
            onChange={(event) => onChange({ ...raw, main: event.currentTarget.value })}
          >
            <option value="">{say('choice.choose')}</option>
            {choices.map((choice) => (
              <option key={choice.value} value={choice.value}>
                {choice.text}
              </option>
            ))}
          </select>
        </p>
      )}
      {field === 'number' && (
        <p className="field">
          <label htmlFor={`${id}number`}>{say(`field.${subject}`)}</label>
          <input
            id={`${id}number`}
            type="text"
            inputMode="decimal"
            autoComplete="off"
            value={raw.main}
            onChange={(event) => onChange({ ...raw, main: event.currentTarget.value })}
          />
        </p>
      )}
      {(field === 'place' || field === 'displacement') && (
        <p className="field">
          <label htmlFor={`${id}mm`}>{say(`field.${subject}`)}</label>
          <input
            id={`${id}mm`}
            type="text"
            inputMode="decimal"
            autoComplete="off"
            value={raw.mm}
            onChange={(event) => onChange({ ...raw, mm: event.currentTarget.value })}
          />
        </p>
      )}
      {withDate && (
        <p className="field">
          <label htmlFor={`${id}date`}>{say(field === 'choiceAndNeededDate' ? 'field.onNeeded' : 'field.on')}</label>
          <input
            id={`${id}date`}
            type="date"
            value={raw.date}
            onChange={(event) => onChange({ ...raw, date: event.currentTarget.value })}
          />
        </p>
      )}
    </>
  );
};
