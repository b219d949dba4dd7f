/** Type what you look for: a bone, a question, an injury, a page, a side. Enter takes the first. */
import { type FormEvent, useId, useMemo, useState } from 'react';
import { usePages, useSession } from '../context';
import { useDialog } from '../parts/use-dialog';
import { type Act, entriesOf, found, seekEntry } from './entries';
import './find.css';

const useAct = () => {
  const { session, go, address } = usePages();
  return (act: Act): void => {
    const { commands } = session;
    if (act.do === 'bone') {
      if (address.page !== 'explain' && address.page !== 'walk' && address.page !== 'find') go({ page: 'explain' });
      commands.selectBone(act.bone);
    } else if (act.do === 'question') go({ page: 'explain', question: act.question });
    else if (act.do === 'page') go({ page: act.page, card: null });
    else if (act.do === 'card') go({ page: 'find', card: act.card });
    else if (act.do === 'seek') {
      commands.seek({ words: act.words });
      go({ page: 'find', card: null });
    } else if (act.do === 'view') commands.lookFrom(act.view);
    else if (act.do === 'reader') commands.setReader(act.reader);
    else commands.setTheme(act.theme);
  };
};

const FindForm = ({ id, onClose }: { readonly id: string; readonly onClose: () => void }) => {
  const { say, announce } = usePages();
  const content = useSession((state) => state.content);
  const reader = useSession((state) => state.reader);
  const [typed, setTyped] = useState('');
  const act = useAct();
  const entries = useMemo(() => entriesOf(content, reader, say), [content, reader, say]);
  const named = found(entries, typed);
  const hits = [...named, ...seekEntry(typed, say)];
  const take = (index: number): void => {
    const hit = hits[index];
    if (hit === undefined) return;
    onClose();
    act(hit.act);
    announce(`${hit.sort}: ${hit.text}`);
  };
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    take(0);
  };
  return (
    <>
      <form onSubmit={submit}>
        <label id={`${id}title`} htmlFor={`${id}typed`}>
          {say('find.title')}
        </label>
        <input
          id={`${id}typed`}
          type="search"
          autoComplete="off"
          value={typed}
          aria-describedby={`${id}count`}
          onChange={(event) => setTyped(event.currentTarget.value)}
        />
      </form>
      <p id={`${id}count`} className="small-print" role="status">
        {named.length === 0 ? say('find.none') : say('find.hint')}
      </p>
      <ul className="plain-list find-hits">
        {hits.map((hit, index) => (
          <li key={hit.key}>
            <button type="button" className="choice" onClick={() => take(index)}>
              {hit.text} <small>{hit.sort}</small>
            </button>
          </li>
        ))}
      </ul>
      <button type="button" className="button" onClick={onClose}>
        {say('close')}
      </button>
    </>
  );
};

/** What was typed lives as long as one opening: emptied afterwards it would still stand there for the first keys of a fast hand. */
export const FindDialog = ({ open, onClose }: { readonly open: boolean; readonly onClose: () => void }) => {
  const { dialog, closed } = useDialog(open, onClose);
  const id = useId();
  return (
    <dialog ref={dialog} className="find" aria-labelledby={`${id}title`} onClose={closed}>
      {open ? <FindForm id={id} onClose={onClose} /> : null}
    </dialog>
  );
};
