/** When drawing a screen fails: says so, and gives the person their case file back. */
import { Component, type ReactNode } from 'react';
import { writeCase } from '../cases';
import type { Session } from '../session/types';
import { saveCaseFile } from './case/save-file';
import type { Say } from './words';

interface Properties {
  readonly session: Session;
  readonly say: Say;
  readonly children: ReactNode;
}

export class Rescue extends Component<Properties, { readonly failed: Error | null }> {
  override state: { readonly failed: Error | null } = { failed: null };

  static getDerivedStateFromError(failed: unknown) {
    return { failed: failed instanceof Error ? failed : new Error(String(failed)) };
  }

  override render() {
    const { session, say, children } = this.props;
    const { failed } = this.state;
    if (failed === null) return children;
    const { file } = session.getState();
    return (
      <main className="rescue" role="alert">
        <h1>{say('rescue.title')}</h1>
        <p>{say('rescue.what')}</p>
        <p>
          <code>{failed.message}</code>
        </p>
        <div className="row">
          <button type="button" className="button button-main" onClick={() => saveCaseFile(file, writeCase(file))}>
            {say('panel.save')}
          </button>
          <button type="button" className="button" onClick={() => this.setState({ failed: null })}>
            {say('rescue.again')}
          </button>
        </div>
      </main>
    );
  }
}
