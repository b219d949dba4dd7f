/** Colours and letters as the page has them now: read again when the look changes, the fonts have come or the plate is laid out anew. */
import { useEffect, useState } from 'react';
import type { Theme } from '../session/types';
import type { Size } from './camera/camera';
import { readTokens, type Tokens } from './draw/tokens';
import { measureWith } from './overlay/paint';
import type { Measure } from './overlay/shapes';

const newMeasure = (): Measure | null => {
  const context = document.createElement('canvas').getContext('2d');
  return context === null ? null : measureWith(context);
};

/** Browsers' own size of text, which people may have set larger. */
const USUAL_TEXT_PX = 16;
const textScaleNow = (): number =>
  Number.parseFloat(getComputedStyle(document.documentElement).fontSize) / USUAL_TEXT_PX || 1;

export const useLook = (surface: HTMLElement | null, theme: Theme, size: Size | null) => {
  const [tokens, setTokens] = useState<Tokens | null>(null);
  const [measure, setMeasure] = useState<Measure | null>(null);
  const [textScale, setTextScale] = useState(1);

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

  // Larger text lays the page out anew, and the plate with it.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the size is when, not what
  useEffect(() => setTextScale(textScaleNow()), [size]);

  return { tokens, measure, textScale };
};
