/** Keeps a failure of the 3D figure away from the words beside it. */
import { Component, type ReactNode } from 'react';

interface Properties {
  readonly instead: ReactNode;
  readonly children: ReactNode;
}

export class StageGuard extends Component<Properties, { readonly failed: boolean }> {
  override state = { failed: false };

  static getDerivedStateFromError() {
    return { failed: true };
  }

  override componentDidCatch(failure: unknown) {
    console.warn('The figure could not be drawn', failure);
  }

  override render() {
    return this.state.failed ? this.props.instead : this.props.children;
  }
}
