/**
 * Where the focus goes when what had it vanishes under the hand. Without this the browser drops it: the next Tab starts at the top
 * of the page, and a screen reader says nothing.
 */

/** The heading of the place: every page has one that takes the focus. */
export const focusHeading = (): void => document.querySelector<HTMLElement>('.page h1[tabindex="-1"]')?.focus();

/** The `ref` of something that can vanish: its cleanup is called while the node still stands and still has the focus. */
const leaving = (next: (gone: HTMLElement) => void) => (node: HTMLElement | null) => (): void => {
  if (node?.contains(document.activeElement)) next(node);
};

export const thenHeading = leaving(focusHeading);

const siblings = (from: HTMLElement, step: 'nextElementSibling' | 'previousElementSibling'): Element[] => {
  const found: Element[] = [];
  for (let each = from[step]; each !== null; each = each[step]) found.push(each);
  return found;
};

/** Of a list: the first button of the next item that has one, or of the one before; the heading where none is left. */
export const thenNextItem = leaving((gone) => {
  const others = [...siblings(gone, 'nextElementSibling'), ...siblings(gone, 'previousElementSibling')];
  const next = others.map((each) => each.querySelector('button')).find((button) => button !== null);
  if (next) next.focus();
  else focusHeading();
});

/** The `ref` of a form that somebody asked for: they go on in its first field. */
export const startInFirstField = (form: HTMLFormElement | null): void =>
  form?.querySelector<HTMLElement>('select:not(:disabled), input:not(:disabled)')?.focus();

/**
 * Back to what opened a dialog, where the browser could not do that itself: a button in a popover is hidden by the time the dialog
 * closes, and the button of the popover stands for it.
 */
export const focusBack = (opener: Element | null): void => {
  // A button of the dialog that was just pressed still counts as having the focus, until the next frame takes it away.
  const nowhere = (): boolean =>
    document.activeElement === document.body || document.activeElement?.checkVisibility() !== true;
  if (!nowhere()) return;
  const popover = opener?.closest('[popover]');
  const behind = popover ? document.querySelector(`[popovertarget="${CSS.escape(popover.id)}"]`) : null;
  for (const each of [opener, behind]) if (each instanceof HTMLElement && nowhere()) each.focus();
  if (nowhere()) focusHeading();
};
