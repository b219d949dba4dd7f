/** One claim: what is said, how well it is known, and from whom. The kind of source bounds the status. */
import { type FormEvent, useId, useState } from 'react';
import { type Claim, newClaim, SUBJECTS, type Subject } from '../../cases';
import type { ClaimValue } from '../../explain/messages';
import { usePages, useSession } from '../context';
import { startInFirstField } from '../parts/focus-onward';
import { AS_TOLD, type HowKnown, HowKnownFields, saidOf } from './HowKnownFields';
import { EMPTY_RAW, rawFromValue, valueFromRaw } from './raw-value';
import { ValueField } from './ValueField';

interface Properties {
  /** The claim this one replaces, when one is being changed. */
  readonly replaces: Claim | null;
  readonly onDone: () => void;
}

/** Text longer than a case file admits for one claim's note is not accepted by the field. */
const NOTE_LENGTH = 300;

export const ClaimForm = ({ replaces, onDone }: Properties) => {
  const { say, session, announce } = usePages();
  const content = useSession((state) => state.content);
  const file = useSession((state) => state.file);
  const id = useId();
  const [subject, setSubject] = useState<Subject>(replaces?.subject ?? 'side');
  const [raw, setRaw] = useState(replaces === null ? EMPTY_RAW : rawFromValue(replaces as ClaimValue));
  const [known, setKnown] = useState<HowKnown>(
    replaces === null ? AS_TOLD : { status: replaces.status, kind: replaces.source.kind, on: replaces.source.on ?? '' },
  );
  const [note, setNote] = useState('');
  const [missing, setMissing] = useState(false);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const of = valueFromRaw(content, subject, raw);
    setMissing(of === null);
    if (of === null) return;
    session.commands.addClaim(
      newClaim(file, of.subject, of.value, {
        ...saidOf(known),
        ...(replaces === null ? {} : { supersedes: replaces.id }),
        ...(note.trim() === '' ? {} : { note: note.trim() }),
      }),
    );
    if (session.getState().problem !== null) return;
    announce(say('claim.added'));
    onDone();
  };
  return (
    <form ref={startInFirstField} className="claim-form" onSubmit={submit} noValidate>
      <h2>{say(replaces === null ? 'claim.add' : 'claim.change')}</h2>
      <p className="field">
        <label htmlFor={`${id}subject`}>{say('claim.subject')}</label>
        <select
          id={`${id}subject`}
          value={subject}
          disabled={replaces !== null}
          onChange={(event) => {
            setSubject(SUBJECTS.find((each) => each === event.currentTarget.value) ?? 'side');
            setRaw(EMPTY_RAW);
          }}
        >
          {SUBJECTS.map((each) => (
            <option key={each} value={each}>
              {say(`subject.${each}`)}
            </option>
          ))}
        </select>
      </p>
      <ValueField subject={subject} raw={raw} onChange={setRaw} />
      {missing && (
        <p className="error" role="alert">
          {say('claim.missing')}
        </p>
      )}
      <HowKnownFields value={known} onChange={setKnown} />
      <p className="field">
        <label htmlFor={`${id}note`}>{say('claim.note')}</label>
        <input
          id={`${id}note`}
          type="text"
          maxLength={NOTE_LENGTH}
          autoComplete="off"
          value={note}
          onChange={(event) => setNote(event.currentTarget.value)}
        />
      </p>
      <div className="row">
        <button type="submit" className="button button-main">
          {say(replaces === null ? 'claim.doAdd' : 'claim.doChange')}
        </button>
        <button type="button" className="button" onClick={onDone}>
          {say('cancel')}
        </button>
      </div>
    </form>
  );
};
