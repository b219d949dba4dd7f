/**
 * How wide a drawing is laid out. Where it stands wider than usual it grows whole, letters too; where it stands narrower it is laid
 * out anew, for scaled down its letters could not be read.
 */
import { type RefObject, useLayoutEffect, useRef, useState } from 'react';

/** CSS px, whole, at most `usual`. */
export const useWidth = <E extends Element>(
  usual: number,
): { readonly ref: RefObject<E | null>; readonly width: number } => {
  const ref = useRef<E>(null);
  const [width, setWidth] = useState(usual);
  useLayoutEffect(() => {
    const element = ref.current;
    if (element === null) return;
    const read = (px: number): void => {
      if (px > 0) setWidth(Math.min(usual, Math.round(px)));
    };
    read(element.getBoundingClientRect().width);
    const observer = new ResizeObserver(([entry]) => read(entry?.contentRect.width ?? 0));
    observer.observe(element);
    return () => observer.disconnect();
  }, [usual]);
  return { ref, width };
};
