/** Shows a picture made in the browser. A canvas, because the app's policy admits no image from a blob or data address. */
import { useEffect, useRef } from 'react';

interface Properties {
  readonly blob: Blob | null;
  readonly alt: string;
}

export const BlobCanvas = ({ blob, alt }: Properties) => {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    if (blob === null) return;
    let gone = false;
    void createImageBitmap(blob).then((bitmap) => {
      const target = canvas.current;
      if (!gone && target !== null) {
        target.width = bitmap.width;
        target.height = bitmap.height;
        target.getContext('2d')?.drawImage(bitmap, 0, 0);
        target.dataset.drawn = 'true';
      }
      bitmap.close();
    });
    return () => {
      gone = true;
    };
  }, [blob]);
  return <canvas ref={canvas} role="img" aria-label={alt} width={680} height={300} data-drawn="false" />;
};
