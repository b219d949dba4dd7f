/** A picture in memory, several of them put side by side, and the bytes of its PNG. */
import { PNG } from 'pngjs';

export interface Picture {
  readonly width: number;
  readonly height: number;
  /** Red, green, blue a pixel. */
  readonly rgb: Uint8Array;
}

/** Pictures in rows, the first pictures at the top, all of one size; what no picture covers is `paper`. */
export const tiled = (rows: readonly (readonly Picture[])[], paper: number): Picture => {
  const cell = rows[0]?.[0];
  if (!cell) throw new RangeError('tiled: no picture');
  const width = cell.width * Math.max(...rows.map((row) => row.length));
  const height = cell.height * rows.length;
  const rgb = new Uint8Array(3 * width * height).fill(paper);
  rows.forEach((row, i) => {
    row.forEach((picture, j) => {
      for (let y = 0; y < picture.height; y++) {
        const from = 3 * y * picture.width;
        rgb.set(
          picture.rgb.subarray(from, from + 3 * picture.width),
          3 * ((i * cell.height + y) * width + j * cell.width),
        );
      }
    });
  });
  return { width, height, rgb };
};

export const pngOf = ({ width, height, rgb }: Picture): Buffer => {
  const png = new PNG({ width, height, colorType: 2, inputHasAlpha: false });
  png.data = Buffer.from(rgb);
  return PNG.sync.write(png, { colorType: 2, inputHasAlpha: false });
};
