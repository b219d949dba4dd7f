/** What is known: every claim with its stamp, what it replaced, what disagrees; add, change, remove, undo. */
import { useRef, useState } from 'react';
import { type Claim, currentClaims, type Facts, factsOf, isSingle, writeCase } from '../../cases';
import type { ClaimValue } from '../../explain/messages';
import { formatDate, wordValue } from '../../wording';
import { usePages, useSession } from '../context';
import { thenNextItem } from '../parts/focus-onward';
import { NothingYet } from '../parts/NothingYet';
import { PressButton } from '../parts/PressButton';
import { Stamp } from '../parts/Stamp';
import { ClaimForm } from './ClaimForm';
import { KeepWhatIf } from './KeepWhatIf';
import { saveCaseFile } from './save-file';

interface ItemProperties {
  readonly claim: Claim;
  readonly current: boolean;
  readonly disagrees: boolean;
  readonly onChange: () => void;
}

const ClaimItem = ({ claim, current, disagrees, onChange }: ItemProperties) => {
  const { say, session, announce } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  const subject = say(`subject.${claim.subject}`);
  const injury = useSession((state) => state.explanation?.injury ?? null);
  const value = wordValue(content, claim as ClaimValue, reader, injury);
  const { on, kind } = claim.source;
  return (
    <li ref={thenNextItem} className={current ? 'claim' : 'claim claim-old'}>
      <Stamp kind={claim.status} />
      <div>
        <p>
          <b>{subject}</b> {value}
        </p>
        <p className="claim-status">
          {say(`stamp.${claim.status}`)}. {say(`sourceKind.${kind}`)}
          {on === undefined ? '' : `, ${formatDate(on)}`}
          {current ? '' : ` ${say('claim.replaced')}`}
        </p>
        {disagrees && (
          <p className="claim-status">
            <Stamp kind="contradiction" /> {say('claim.disagrees')}
          </p>
        )}
        {claim.note !== undefined && <p className="claim-status">{say('claim.noteShown', { note: claim.note })}</p>}
        {current && (
          <p className="row">
            <button type="button" className="small" aria-label={say('claim.changeOf', { subject })} onClick={onChange}>
              {say('claim.change')}
            </button>
            <button
              type="button"
              className="small"
              aria-label={say('claim.removeOf', { subject })}
              onClick={() => {
                session.commands.removeClaim(claim.id);
                announce(say('claim.removed'));
              }}
            >
              {say('claim.remove')}
            </button>
          </p>
        )}
      </div>
    </li>
  );
};

const disagrees = (facts: Facts, claim: Claim): boolean => {
  const { subject } = claim;
  return isSingle(subject) && facts[subject].state === 'contradiction';
};

export const KnownPage = () => {
  const { say, session } = usePages();
  const file = useSession((state) => state.file);
  const canUndo = useSession((state) => state.canUndo);
  const canRedo = useSession((state) => state.canRedo);
  const keep = useSession((state) => state.keepOnDevice);
  const [form, setForm] = useState<{ readonly replaces: Claim | null } | null>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  const current = currentClaims(file);
  const facts = factsOf(file);
  const { commands } = session;
  const done = () => {
    setForm(null);
    heading.current?.focus();
  };
  return (
    <>
      <p className="question-count">{say('known.kicker')}</p>
      <h1 ref={heading} className="question-title" tabIndex={-1}>
        {say('known.title')}
      </h1>
      <p>{say(file.demo ? 'known.demo' : 'known.what')}</p>
      <KeepWhatIf />
      <div className="row">
        <button type="button" className="button button-main" onClick={() => setForm({ replaces: null })}>
          {say('claim.add')}
        </button>
        <PressButton off={!canUndo} onPress={commands.undo}>
          {say('known.undo')}
        </PressButton>
        <PressButton off={!canRedo} onPress={commands.redo}>
          {say('known.redo')}
        </PressButton>
        <button type="button" className="button" onClick={() => saveCaseFile(file, writeCase(file))}>
          {say('panel.save')}
        </button>
      </div>
      <p className="small-print">{say(keep ? 'panel.keepOn' : 'panel.keepOff')}</p>
      {form !== null && <ClaimForm key={form.replaces?.id ?? 'new'} replaces={form.replaces} onDone={done} />}
      {file.claims.length === 0 ? (
        <NothingYet page="known" />
      ) : (
        <ul className="claim-list">
          {file.claims.map((claim) => (
            <ClaimItem
              key={claim.id}
              claim={claim}
              current={current.includes(claim)}
              disagrees={current.includes(claim) && disagrees(facts, claim)}
              onChange={() => setForm({ replaces: claim })}
            />
          ))}
        </ul>
      )}
    </>
  );
};
