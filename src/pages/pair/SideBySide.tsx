/** The button that sets two feet side by side, and the dialog it opens: over the page, so that the case beside it stays as it is. */
import { useId, useState } from 'react';
import { usePages } from '../context';
import { useDialog } from '../parts/use-dialog';
import { PairOfFeet } from './PairOfFeet';
import './pair.css';

export const SideBySide = () => {
  const { say } = usePages();
  const [open, setOpen] = useState(false);
  const titleId = useId();
  const { dialog, closed } = useDialog(open, () => setOpen(false));
  return (
    <>
      <button type="button" className="button" aria-haspopup="dialog" onClick={() => setOpen(true)}>
        {say('pair.open')}
      </button>
      <dialog ref={dialog} className="pair" aria-labelledby={titleId} onClose={closed}>
        {open && (
          <>
            <div className="row row-spread pair-head">
              <h2 id={titleId}>{say('pair.title')}</h2>
              <button type="button" className="button" onClick={() => setOpen(false)}>
                {say('close')}
              </button>
            </div>
            <PairOfFeet />
          </>
        )}
      </dialog>
    </>
  );
};
