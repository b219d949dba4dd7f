/** A ring that follows the pointer, large enough to be seen across a room. Nothing of it stays. */
import { useEffect, useRef } from 'react';

export const Pointer = ({ surface }: { readonly surface: HTMLElement | null }) => {
  const ring = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (surface === null) return;
    const follow = (event: PointerEvent): void => {
      const rect = surface.getBoundingClientRect();
      const element = ring.current;
      if (element === null) return;
      element.style.transform = `translate(${event.clientX - rect.left}px, ${event.clientY - rect.top}px)`;
      element.dataset.shown = 'true';
    };
    const leave = (): void => {
      if (ring.current !== null) ring.current.dataset.shown = 'false';
    };
    surface.addEventListener('pointermove', follow);
    surface.addEventListener('pointerdown', follow);
    surface.addEventListener('pointerleave', leave);
    return () => {
      surface.removeEventListener('pointermove', follow);
      surface.removeEventListener('pointerdown', follow);
      surface.removeEventListener('pointerleave', leave);
    };
  }, [surface]);
  return <div ref={ring} className="stage-pointer" data-shown="false" aria-hidden="true" />;
};
