/** A dialog of the browser's own, shown while `open`. `closed` is for its `onClose`, which also comes when Escape was pressed. */
import { type RefObject, useEffect, useRef } from 'react';

interface ShownDialog {
  readonly dialog: RefObject<HTMLDialogElement | null>;
  readonly closed: () => void;
}

export const useDialog = (open: boolean, onClose: () => void): ShownDialog => {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    if (open) dialog.current?.showModal();
    else dialog.current?.close();
  }, [open]);
  // The browser tells of a closing a moment later: by then it may have been opened again, and that one stays.
  const closed = (): void => {
    if (!dialog.current?.open) onClose();
  };
  return { dialog, closed };
};
