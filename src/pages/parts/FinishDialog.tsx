/** The one control that wipes this device. It asks once, wipes, and says that it has. */
import { useId } from 'react';
import { usePages } from '../context';
import { useDialog } from './use-dialog';

export const FinishDialog = ({ open, onClose }: { readonly open: boolean; readonly onClose: () => void }) => {
  const { say, session, go, announce } = usePages();
  const { dialog, closed } = useDialog(open, onClose);
  const titleId = useId();
  const finish = async () => {
    await session.commands.finish();
    onClose();
    go({ page: 'start', question: 'where', demo: null });
    announce(say('finish.done'));
  };
  return (
    <dialog ref={dialog} aria-labelledby={titleId} onClose={closed}>
      <h2 id={titleId}>{say('finish.title')}</h2>
      <p>{say('finish.what')}</p>
      <div className="row">
        <button type="button" className="button" onClick={onClose}>
          {say('finish.no')}
        </button>
        <button type="button" className="button button-main" onClick={() => void finish()}>
          {say('finish.yes')}
        </button>
      </div>
    </dialog>
  );
};
