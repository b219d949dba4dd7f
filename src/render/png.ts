/** The canvas as a PNG. Called in the task that rendered: a later one may find the picture gone. */
export const pngOf = (canvas: HTMLCanvasElement): Promise<Blob> =>
  new Promise((resolve, reject) => {
    canvas.toBlob((blob) => {
      if (blob === null) reject(new Error('the browser made no PNG of the picture'));
      else resolve(blob);
    }, 'image/png');
  });
