/** The only way from a what-if into the case: one part at a time, saying how well it is known and from whom. */
import { type FormEvent, useState } from 'react';
import { type ClaimableKey, currentClaims } from '../../cases';
import { usePages, useSession } from '../context';
import { thenHeading } from '../parts/focus-onward';
import { AS_TOLD, HowKnownFields, saidOf } from './HowKnownFields';

const CLAIMABLE = ['place', 'massKg', 'footShape', 'activity'] as const satisfies readonly ClaimableKey[];

export const KeepWhatIf = () => {
  const { say, session, announce } = usePages();
  const whatIf = useSession((state) => state.whatIf);
  const [known, setKnown] = useState(AS_TOLD);
  const set = CLAIMABLE.filter((key) => whatIf[key] !== undefined);
  const [chosen, setChosen] = useState<ClaimableKey | null>(null);
  if (set.length === 0) return null;
  const key = chosen !== null && set.includes(chosen) ? chosen : set[0];
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (key === undefined) return;
    const before = currentClaims(session.getState().file).filter((claim) => claim.subject === key);
    const [only] = before;
    session.commands.claimWhatIf(key, {
      ...saidOf(known),
      // Two claims that disagree are not settled by a third: only a single one is replaced.
      ...(only !== undefined && before.length === 1 ? { supersedes: only.id } : {}),
    });
    if (session.getState().problem !== null) return;
    announce(say('claim.added'));
  };
  return (
    <form ref={thenHeading} className="claim-form" onSubmit={submit}>
      <h2>{say('keepWhatIf.title')}</h2>
      <p>{say('keepWhatIf.what')}</p>
      <fieldset className="plain-choices">
        <legend>{say('keepWhatIf.which')}</legend>
        {set.map((each) => (
          <label key={each}>
            <input type="radio" name="keep-what-if" checked={each === key} onChange={() => setChosen(each)} />{' '}
            {say(`subject.${each}`)}
          </label>
        ))}
      </fieldset>
      <HowKnownFields value={known} onChange={setKnown} />
      <div className="row">
        <button type="submit" className="button button-main">
          {say('keepWhatIf.do')}
        </button>
        <button type="button" className="button" onClick={() => session.commands.dropWhatIf()}>
          {say('whatIf.drop')}
        </button>
      </div>
    </form>
  );
};
