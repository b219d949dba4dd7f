/**
 * A way in: four choices make a case, each of which may stay "not stated". Every choice writes its claims at once, so that the
 * plate follows; what is not chosen is listed as taken for usual, not hidden.
 */
import { useEffect, useId, useState } from 'react';
import { type CaseFile, currentClaims, type Subject } from '../../cases';
import type { ClaimValue } from '../../explain/messages';
import { BONE_IDS } from '../../ids';
import { usePages, useSession } from '../context';
import { boneName, bonesInOrder } from '../note/BoneList';
import { PageLink } from '../parts/Bar';
import { Defaults } from './Defaults';
import { dateOf } from './raw-value';
import { HEARD, type Heard, heardFrom, injuryValues, withHeard, withValues } from './way-in';

const saidAbout = (file: CaseFile, subject: Subject): ClaimValue | null => {
  const claim = currentClaims(file).find((each) => each.subject === subject);
  return claim === undefined ? null : (claim as ClaimValue);
};

interface RadiosProperties {
  readonly name: string;
  readonly legend: string;
  readonly chosen: string | null;
  readonly choices: readonly { readonly value: string; readonly text: string }[];
  readonly onChoose: (value: string) => void;
}

const Radios = ({ name, legend, chosen, choices, onChoose }: RadiosProperties) => (
  <fieldset className="ask">
    <legend>{legend}</legend>
    <div className="chips">
      {choices.map((choice) => (
        <label key={choice.value} className="chip">
          <input
            type="radio"
            name={name}
            value={choice.value}
            checked={choice.value === chosen}
            onChange={() => onChoose(choice.value)}
          />
          <span>{choice.text}</span>
        </label>
      ))}
    </div>
  </fieldset>
);

const NOT_STATED = 'notStated';

export const WayIn = () => {
  const { say, session, hrefOf } = usePages();
  const content = useSession((state) => state.content);
  const file = useSession((state) => state.file);
  const reader = useSession((state) => state.reader);
  const [heard, setHeard] = useState<Heard>(() => (file.demo === undefined ? heardFrom(file) : 'told'));
  /** Choices answered with "not stated": they make no claim, so only this form remembers them. */
  const [open, setOpen] = useState<ReadonlySet<string>>(new Set());
  const id = useId();
  const notStated = { value: NOT_STATED, text: say('choice.notStated') };

  // An invented example is not the place for what somebody knows: an address that leads here starts empty.
  useEffect(() => {
    if (session.getState().file.demo !== undefined) session.commands.newCase();
  }, [session]);

  const put = (question: string, subjects: readonly Subject[], values: readonly ClaimValue[]) => {
    const still = new Set(open);
    if (values.length === 0) still.add(question);
    else still.delete(question);
    setOpen(still);
    session.commands.changeCase(withValues(session.getState().file, subjects, values, heard));
  };
  const chosen = (question: string, value: string | undefined): string | null =>
    value ?? (open.has(question) ? NOT_STATED : null);

  const side = saidAbout(file, 'side');
  const injury = saidAbout(file, 'injury');
  const bone = saidAbout(file, 'bone');
  const mechanism = saidAbout(file, 'mechanism');
  const treatment = saidAbout(file, 'treatment');
  const injuryDate = saidAbout(file, 'injuryDate');
  const record = content.injuries.find((each) => injury?.subject === 'injury' && each.id === injury.value);
  const names = (list: readonly { readonly id: string; readonly term: string; readonly plain?: string }[]) =>
    list.map((item) => ({ value: item.id, text: (reader === 'patient' ? item.plain : undefined) ?? item.term }));
  const mechanisms = content.mechanisms.filter((each) => record === undefined || record.mechanisms.includes(each.id));
  const options = content.options.filter((each) =>
    record === undefined ? each.named : record.options.includes(each.id),
  );

  const chooseWhere = (value: string) => {
    const found = content.injuries.find((each) => each.id === value);
    put('where', ['bone', 'place', 'injury'], found === undefined ? [] : injuryValues(found));
  };
  const chooseBone = (value: string) => {
    const found = BONE_IDS.find((each) => each === value);
    put('where', ['bone', 'place', 'injury'], found === undefined ? [] : [{ subject: 'bone', value: found }]);
  };
  const chooseTreatment = (value: string, on: string) => {
    const found = content.options.find((each) => each.id === value);
    const date = dateOf(on);
    const values: ClaimValue[] =
      found === undefined
        ? []
        : [{ subject: 'treatment', value: { option: found.id, ...(date === null ? {} : { on: date }) } }];
    put('done', ['treatment'], values);
  };
  const treatmentOption = treatment?.subject === 'treatment' ? treatment.value.option : undefined;
  const treatmentDate = treatment?.subject === 'treatment' ? (treatment.value.on ?? '') : '';
  const dateOfInjury = injuryDate?.subject === 'injuryDate' ? injuryDate.value : '';

  return (
    <>
      <p className="question-count">{say('wayIn.kicker')}</p>
      <h1 className="question-title" tabIndex={-1}>
        {say('wayIn.title')}
      </h1>
      <p>{say('wayIn.what')}</p>
      <Radios
        name={`${id}side`}
        legend={say('wayIn.side')}
        chosen={chosen('side', side?.subject === 'side' ? side.value : undefined)}
        choices={[
          { value: 'right', text: say('side.chooseRight') },
          { value: 'left', text: say('side.chooseLeft') },
          notStated,
        ]}
        onChoose={(value) =>
          put('side', ['side'], value === 'right' || value === 'left' ? [{ subject: 'side', value }] : [])
        }
      />
      <Radios
        name={`${id}where`}
        legend={say('wayIn.where')}
        chosen={chosen('where', injury?.subject === 'injury' ? injury.value : undefined)}
        choices={[...names(content.injuries), notStated]}
        onChoose={chooseWhere}
      />
      <p className="way-in-find">
        <a href={hrefOf({ page: 'find', card: null })}>{say('seek.fromWayIn')}</a>
      </p>
      <p className="field">
        <label htmlFor={`${id}bone`}>{say('wayIn.otherBone')}</label>
        <select
          id={`${id}bone`}
          value={injury === null && bone?.subject === 'bone' ? bone.value : ''}
          onChange={(event) => chooseBone(event.currentTarget.value)}
        >
          <option value="">{say('choice.choose')}</option>
          {bonesInOrder(content).map((each) => (
            <option key={each.id} value={each.id}>
              {boneName(each, reader)}
            </option>
          ))}
        </select>
      </p>
      <Radios
        name={`${id}heard`}
        legend={say('wayIn.heard')}
        chosen={heard}
        choices={HEARD.map((each) => ({ value: each, text: say(`heard.${each}`) }))}
        onChoose={(value) => {
          const next = HEARD.find((each) => each === value) ?? 'told';
          setHeard(next);
          session.commands.changeCase(withHeard(session.getState().file, next));
        }}
      />
      <p className="small-print">{say('wayIn.heardNote')}</p>
      <Radios
        name={`${id}how`}
        legend={say('wayIn.how')}
        chosen={chosen('how', mechanism?.subject === 'mechanism' ? mechanism.value : undefined)}
        choices={[...names(mechanisms), notStated]}
        onChoose={(value) => {
          const found = content.mechanisms.find((each) => each.id === value);
          put('how', ['mechanism'], found === undefined ? [] : [{ subject: 'mechanism', value: found.id }]);
        }}
      />
      <p className="field">
        <label htmlFor={`${id}injuryDate`}>{say('wayIn.injuryDate')}</label>
        <input
          id={`${id}injuryDate`}
          type="date"
          value={dateOfInjury}
          onChange={(event) => {
            const on = dateOf(event.currentTarget.value);
            put('when', ['injuryDate'], on === null ? [] : [{ subject: 'injuryDate', value: on }]);
          }}
        />
      </p>
      <Radios
        name={`${id}done`}
        legend={say('wayIn.done')}
        chosen={chosen('done', treatmentOption)}
        choices={[...names(options), notStated]}
        onChoose={(value) => chooseTreatment(value, treatmentDate)}
      />
      {treatmentOption !== undefined && (
        <p className="field">
          <label htmlFor={`${id}doneOn`}>{say('wayIn.doneOn')}</label>
          <input
            id={`${id}doneOn`}
            type="date"
            value={treatmentDate}
            onChange={(event) => chooseTreatment(treatmentOption, event.currentTarget.value)}
          />
        </p>
      )}
      <Defaults />
      <div className="row">
        <PageLink page="explain" className={reader === 'broadcast' ? '' : 'button-main'}>
          {say('wayIn.show')}
        </PageLink>
        <PageLink page="say" className={reader === 'broadcast' ? 'button-main' : ''}>
          {say('bar.say')}
        </PageLink>
        <PageLink page="hand">{say('bar.hand')}</PageLink>
      </div>
    </>
  );
};
