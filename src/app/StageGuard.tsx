/** Keeps a failure of the 3D figure away from the words beside it. */
import { Component, type ReactNode } from 'react';

interface Properties {
  /** What was being drawn: when it changes, drawing is tried again. */
  readonly what: string;
  readonly instead: ReactNode;
  readonly children: ReactNode;
}

interface State {
  readonly failed: boolean;
  readonly failedAt: string | null;
}

export class StageGuard extends Component<Properties, State> {
  override state: State = { failedAt: null, failed: false };

  static getDerivedStateFromError(): Partial<State> {
    return { failed: true };
  }

  static getDerivedStateFromProps({ what }: Properties, { failed, failedAt }: State): Partial<State> | null {
    if (!failed) return null;
    if (failedAt === null) return { failedAt: what };
    return failedAt === what ? null : { failed: false, failedAt: null };
  }

  override componentDidCatch(failure: unknown) {
    console.warn('The figure could not be drawn', failure);
  }

  override render() {
    return this.state.failed ? this.props.instead : this.props.children;
  }
}
