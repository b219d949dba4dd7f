/** A case file chosen from this device. One that cannot be used is refused with what, where and what to do; nothing changes. */
import { usePages } from '../context';

/** Above this a file is refused by the reader of case files; here it is not even read into memory. */
const MOST_BYTES = 2 * 1024 * 1024;

export const OpenFile = ({ onDone }: { readonly onDone?: () => void }) => {
  const { say, session, go } = usePages();
  const read = async (input: HTMLInputElement) => {
    const file = input.files?.[0];
    if (file === undefined) return;
    try {
      // One byte more than allowed is enough for the reader to say that the file is too large.
      session.commands.openText(await file.slice(0, MOST_BYTES + 1).text());
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
