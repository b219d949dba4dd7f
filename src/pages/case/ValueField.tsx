/** The field or fields that ask for the value of one subject. */
import { useId } from 'react';
import type { Subject } from '../../cases';
import { usePages, useSession } from '../context';
import { choicesFor, resultChoices } from './choices';
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
  const needsDate = field === 'choiceAndNeededDate' || field === 'outcome';
  const withDate = field === 'date' || field === 'choiceAndDate' || needsDate;
  return (
    <>
      {choices.length > 0 && (
        <p className="field">
          <label htmlFor={`${id}main`}>
            {say(field === 'outcome' || field === 'timetable' ? 'field.endpoint' : `subject.${subject}`)}
          </label>
          <select
            id={`${id}main`}
            value={raw.main}
            onChange={(event) => onChange({ ...raw, main: event.currentTarget.value })}
          >
            <option value="">{say(field === 'timetable' ? 'choice.notStated' : 'choice.choose')}</option>
            {choices.map((choice) => (
              <option key={choice.value} value={choice.value}>
                {choice.text}
              </option>
            ))}
          </select>
        </p>
      )}
      {field === 'outcome' && (
        <p className="field">
          <label htmlFor={`${id}result`}>{say('field.result')}</label>
          <select
            id={`${id}result`}
            value={raw.result}
            onChange={(event) => onChange({ ...raw, result: event.currentTarget.value })}
          >
            <option value="">{say('choice.choose')}</option>
            {resultChoices(say).map((choice) => (
              <option key={choice.value} value={choice.value}>
                {choice.text}
              </option>
            ))}
          </select>
        </p>
      )}
      {field === 'timetable' && (
        <p className="field">
          <label htmlFor={`${id}weeks`}>{say('field.weeks')}</label>
          <input
            id={`${id}weeks`}
            type="text"
            inputMode="decimal"
            autoComplete="off"
            value={raw.weeks}
            onChange={(event) => onChange({ ...raw, weeks: event.currentTarget.value })}
          />
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
      {(field === 'place' || field === 'displacement' || field === 'measure') && (
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
          <label htmlFor={`${id}date`}>{say(needsDate ? 'field.onNeeded' : 'field.on')}</label>
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
