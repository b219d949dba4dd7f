/** A dialog of the browser's own, shown while `open`. `closed` is for its `onClose`, which also comes when Escape was pressed. */
import { type RefObject, useEffect, useRef } from 'react';
import { focusBack } from './focus-onward';

interface ShownDialog {
  readonly dialog: RefObject<HTMLDialogElement | null>;
  readonly closed: () => void;
}

export const useDialog = (open: boolean, onClose: () => void): ShownDialog => {
  const dialog = useRef<HTMLDialogElement>(null);
  const opener = useRef<Element | null>(null);
  useEffect(() => {
    if (open) {
      opener.current = document.activeElement;
      dialog.current?.showModal();
    } else dialog.current?.close();
  }, [open]);
  // The browser tells of a closing a moment later: by then it may have been opened again, and that one stays.
  const closed = (): void => {
    if (dialog.current?.open) return;
    onClose();
    focusBack(opener.current);
  };
  return { dialog, closed };
};
