/** Depth on request: a native details element with a line above it. */
import type { ReactNode } from 'react';

interface Properties {
  readonly title: string;
  readonly children: ReactNode;
  readonly open?: boolean;
  readonly onToggle?: (open: boolean) => void;
}

export const Disclosure = ({ title, children, open = false, onToggle }: Properties) => (
  <details className="fold" open={open} onToggle={(event) => onToggle?.(event.currentTarget.open)}>
    <summary>{title}</summary>
    <div className="fold-body">{children}</div>
  </details>
);
