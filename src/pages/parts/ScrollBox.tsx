/** A wide table in a narrow place: scrolls sideways, and can be reached and scrolled by keyboard. */
import type { ReactNode } from 'react';

export const ScrollBox = ({ label, children }: { readonly label: string; readonly children: ReactNode }) => (
  // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by keyboard
  <section className="scroll" tabIndex={0} aria-label={label}>
    {children}
  </section>
);
