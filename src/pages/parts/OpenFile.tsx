/** A case file chosen from this device. One that cannot be used is refused with what, where and what to do; nothing changes. */
import { tooBig } from '../../cases';
import { usePages } from '../context';

export const OpenFile = ({ onDone }: { readonly onDone?: () => void }) => {
  const { say, session, go } = usePages();
  const read = async (input: HTMLInputElement) => {
    const file = input.files?.[0];
    if (file === undefined) return;
    try {
      // One that is too large is not even read into memory, and its size is told as the device gives it.
      const big = tooBig(file.size);
      if (big === null) session.commands.openText(await file.text());
      else session.commands.report(big);
      if (session.getState().problem === null) go({ page: 'explain', demo: null });
    } catch (failure) {
      // The device gave no text: a file on a stick that was pulled out, or one that another program holds.
      console.warn(failure);
      session.commands.report({ what: say('file.unread'), where: null, remedy: say('file.unread.remedy') });
    }
    input.value = '';
    onDone?.();
  };
  return (
    <label className="button file-button">
      {say('panel.open')}
      <input
        type="file"
        className="unseen"
        accept=".json,application/json"
        onChange={(event) => void read(event.currentTarget)}
      />
    </label>
  );
};
