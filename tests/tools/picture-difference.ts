/**
 * How far two pictures of one size are apart, pixel by pixel, and a picture of where. Without a filter for smoothed edges: such a
 * filter takes fine engraved lines for edges and lets their pitch change unseen.
 */
import { PNG } from 'pngjs';

/**
 * A pixel is another one when red, green or blue is off by more than this, of 255. Two Chromiums of nine versions apart (147, 156)
 * drew every reference picture alike to the last bit; what another processor rounds otherwise is a step or two.
 */
export const STEP = 4;

export interface Difference {
  /** Share of pixels that are others; 1 when the pictures are not of one size. */
  readonly share: number;
  /** Share of pixels that are off by anything at all. */
  readonly touched: number;
  /** Black where they are. */
  readonly map: PNG;
}

export const readPng = (bytes: Buffer): PNG => PNG.sync.read(bytes);
/** No filter and the plain strategy: these flat pictures come out at half the usual size. */
export const writePng = (png: PNG): Buffer =>
  PNG.sync.write(png, { colorType: 2, deflateLevel: 9, deflateStrategy: 0, filterType: 0 });

export const difference = (a: PNG, b: PNG): Difference => {
  const map = new PNG({ width: a.width, height: a.height });
  map.data.fill(255);
  if (a.width !== b.width || a.height !== b.height) return { share: 1, touched: 1, map };
  let [others, touched] = [0, 0];
  for (let i = 0; i < a.data.length; i += 4) {
    let off = 0;
    for (let k = i; k < i + 3; k += 1) off = Math.max(off, Math.abs((a.data[k] ?? 0) - (b.data[k] ?? 0)));
    if (off > 0) touched += 1;
    if (off <= STEP) continue;
    others += 1;
    map.data.fill(0, i, i + 3);
  }
  const all = a.width * a.height;
  return { share: others / all, touched: touched / all, map };
};
