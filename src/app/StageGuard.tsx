/** Keeps a failure of the 3D figure away from the words beside it. */
import { Component, type ReactNode } from 'react';
import type { Foot } from '../anatomy/types';

interface Properties {
  /** What was being drawn, and on which foot: when either changes, drawing is tried again. */
  readonly what: string;
  readonly foot: Foot;
  readonly instead: ReactNode;
  readonly children: ReactNode;
}

interface State {
  readonly failed: boolean;
  readonly failedAt: Pick<Properties, 'what' | 'foot'> | null;
}

export class StageGuard extends Component<Properties, State> {
  override state: State = { failedAt: null, failed: false };

  static getDerivedStateFromError(): Partial<State> {
    return { failed: true };
  }

  static getDerivedStateFromProps({ what, foot }: Properties, { failed, failedAt }: State): Partial<State> | null {
    if (!failed) return null;
    if (failedAt === null) return { failedAt: { what, foot } };
    return failedAt.what === what && failedAt.foot === foot ? null : { failed: false, failedAt: null };
  }

  override componentDidCatch(failure: unknown) {
    console.warn('The figure could not be drawn', failure);
  }

  override render() {
    return this.state.failed ? this.props.instead : this.props.children;
  }
}
