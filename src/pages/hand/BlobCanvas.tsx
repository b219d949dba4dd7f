/** Shows a picture made in the browser. A canvas, because the app's policy admits no image from a blob or data address. */
import { useEffect, useRef } from 'react';

interface Properties {
  readonly blob: Blob | null;
  readonly alt: string;
  /** Out of sight, for a screen reader too, until the picture is on it. */
  readonly hidden: boolean;
  /** Told once for each blob: whether it could be drawn. */
  readonly onDone: (drawn: boolean) => void;
}

export const BlobCanvas = ({ blob, alt, hidden, onDone }: Properties) => {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    if (canvas.current !== null) canvas.current.dataset.drawn = 'false';
    if (blob === null) return;
    let gone = false;
    const draw = async () => {
      const bitmap = await createImageBitmap(blob);
      const target = canvas.current;
      if (!gone && target !== null) {
        target.width = bitmap.width;
        target.height = bitmap.height;
        target.getContext('2d')?.drawImage(bitmap, 0, 0);
        target.dataset.drawn = 'true';
        onDone(true);
      }
      bitmap.close();
    };
    draw().catch((failure: unknown) => {
      console.warn(failure);
      if (!gone) onDone(false);
    });
    return () => {
      gone = true;
    };
  }, [blob, onDone]);
  return (
    <canvas ref={canvas} role="img" aria-label={alt} width={680} height={300} data-drawn="false" hidden={hidden} />
  );
};
