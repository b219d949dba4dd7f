/**
 * Arrow keys walk, Escape leaves. Not while something that has its own use for them holds the focus: the picture turns by arrows,
 * a choice moves by them, and a dialog or panel closes by Escape.
 */
import { useEffect, useRef } from 'react';

interface WalkKeys {
  readonly onNext: () => void;
  readonly onBack: () => void;
  readonly onLeave: () => void;
}

const OWN_ARROWS = '[role="application"], input, select, textarea, dialog, [popover]';
const OWN_ESCAPE = 'dialog, [popover]';

const within = (target: EventTarget | null, what: string): boolean =>
  target instanceof Element && target.closest(what) !== null;

export const useWalkKeys = (keys: WalkKeys): void => {
  const newest = useRef(keys);
  useEffect(() => {
    newest.current = keys;
  });
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (event.defaultPrevented || event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
      const { key, target } = event;
      const panelOpen = document.querySelector('dialog[open], [popover]:popover-open') !== null;
      if (key === 'Escape' && !panelOpen && !within(target, OWN_ESCAPE)) newest.current.onLeave();
      if (panelOpen || within(target, OWN_ARROWS)) return;
      if (key === 'ArrowRight') newest.current.onNext();
      else if (key === 'ArrowLeft') newest.current.onBack();
      else return;
      event.preventDefault();
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, []);
};
