/** The look a person chose, or the one their device asks for, on the root element where the colours hang. */
import type { Session, Theme } from '../session/types';

type Look = Exclude<Theme, 'auto'>;

const DARK = matchMedia('(prefers-color-scheme: dark)');
const CONTRAST = matchMedia('(prefers-contrast: more)');

const lookOf = (theme: Theme): Look => {
  if (theme !== 'auto') return theme;
  if (CONTRAST.matches) return 'contrast';
  return DARK.matches ? 'slate' : 'paper';
};

export const followLook = (session: Session): void => {
  const apply = () => {
    document.documentElement.dataset.look = lookOf(session.getState().theme);
  };
  apply();
  DARK.addEventListener('change', apply);
  CONTRAST.addEventListener('change', apply);
  session.subscribe((state, previous) => {
    if (state.theme !== previous.theme) apply();
  });
};
