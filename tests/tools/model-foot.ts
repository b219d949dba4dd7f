/**
 * The shipped feet, quicker to read than to build: as it is drawn, and the fine one on which the app computes. Told stresses of the two
 * differ by up to a tenth, so that nothing is explained on the drawn one.
 */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { assembleFoot, DEFAULT_FOOT, decodeGlb, type Foot, type Level } from '../../src/anatomy';
import { shape } from './built-foot';

const FILES: Readonly<Record<Level, string>> = { display: 'foot-right.glb', fine: 'foot-right-fine.glb' };

const read = (level: Level): Foot => {
  const path = fileURLToPath(new URL(`../../public/models/${FILES[level]}`, import.meta.url));
  return assembleFoot(shape, DEFAULT_FOOT, 'standing', { ...decodeGlb(new Uint8Array(readFileSync(path))), level });
};

let drawn: Foot | undefined;
let fine: Foot | undefined;

/** One for all files of a worker: what is computed on a foot is kept with it. */
export const modelFoot = (): Foot => {
  drawn ??= read('display');
  return drawn;
};
export const fineModelFoot = (): Foot => {
  fine ??= read('fine');
  return fine;
};
