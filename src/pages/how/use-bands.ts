/** A part of a screen that shows bands, contributors or supports has them worked out while it stands. */
import { useEffect } from 'react';
import { usePages } from '../context';

export const useBands = (shown = true): void => {
  const { session } = usePages();
  useEffect(() => (shown ? session.commands.wantBands() : undefined), [session, shown]);
};
