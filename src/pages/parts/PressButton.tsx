/**
 * A button that can have nothing to do for a while. It is told as disabled but keeps the focus: one that the browser disables
 * under the hand lets the focus fall to the top of the page.
 */
import type { ReactNode } from 'react';

interface Properties {
  readonly off: boolean;
  readonly onPress: () => void;
  readonly children: ReactNode;
}

export const PressButton = ({ off, onPress, children }: Properties) => (
  <button
    type="button"
    className="button"
    aria-disabled={off || undefined}
    onClick={() => {
      if (!off) onPress();
    }}
  >
    {children}
  </button>
);
