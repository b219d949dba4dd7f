/** A button whose work takes a while: it says so in its own place, and to a screen reader, until the work is done. */
import { type ReactNode, useState } from 'react';
import { PressButton } from './PressButton';

interface Properties {
  /** Something else of its kind is at work. */
  readonly off?: boolean;
  /** What is said while it works. */
  readonly meanwhile: string;
  readonly work: () => Promise<void>;
  readonly children: ReactNode;
}

/** A page that is not in sight draws no frame: after this it works all the same. */
const LONGEST_WAIT_MS = 100;
/** The work may take the page's only hand: what is said of it has to be on the screen before. */
const onScreen = (): Promise<void> =>
  new Promise((done) => {
    setTimeout(done, LONGEST_WAIT_MS);
    requestAnimationFrame(() => setTimeout(done));
  });

export const WorkButton = ({ off = false, meanwhile, work, children }: Properties) => {
  const [busy, setBusy] = useState(false);
  const press = async () => {
    setBusy(true);
    await onScreen();
    try {
      await work();
    } finally {
      setBusy(false);
    }
  };
  return (
    <>
      <PressButton off={off || busy} onPress={() => void press()}>
        {busy ? meanwhile : children}
      </PressButton>
      <span className="unseen" role="status">
        {busy ? meanwhile : ''}
      </span>
    </>
  );
};
