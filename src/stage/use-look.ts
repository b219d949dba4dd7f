/** Colours and letter widths as the page has them now: read again when the look changes or the fonts have come. */
import { useEffect, useState } from 'react';
import type { Theme } from '../session/types';
import { readTokens, type Tokens } from './draw/tokens';
import { measureWith } from './overlay/paint';
import type { Measure } from './overlay/shapes';

const newMeasure = (): Measure | null => {
  const context = document.createElement('canvas').getContext('2d');
  return context === null ? null : measureWith(context);
};

export const useLook = (surface: HTMLElement | null, theme: Theme) => {
  const [tokens, setTokens] = useState<Tokens | null>(null);
  const [measure, setMeasure] = useState<Measure | null>(null);

  // biome-ignore lint/correctness/useExhaustiveDependencies: the theme changes what the style sheet answers
  useEffect(() => {
    if (surface === null) return;
    const read = (): void =>
      setTokens((old) => {
        const next = readTokens(surface);
        return JSON.stringify(old) === JSON.stringify(next) ? old : next;
      });
    read();
    const dark = matchMedia('(prefers-color-scheme: dark)');
    dark.addEventListener('change', read);
    const watcher = new MutationObserver(read);
    watcher.observe(document.documentElement, { attributes: true, attributeFilter: ['data-look'] });
    return () => {
      dark.removeEventListener('change', read);
      watcher.disconnect();
    };
  }, [surface, theme]);

  useEffect(() => {
    const again = (): void => setMeasure(newMeasure);
    again();
    // A font comes when its first letters are drawn: Latin names bring one more, long after the page's own are there.
    document.fonts.addEventListener('loadingdone', again);
    return () => document.fonts.removeEventListener('loadingdone', again);
  }, []);

  return { tokens, measure };
};
