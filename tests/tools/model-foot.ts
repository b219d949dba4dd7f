/**
 * The shipped foot as it is drawn, quicker to read than to build. The app computes loads on the fine one: told stresses of the two
 * differ by up to a tenth, so that a size from here is never quoted.
 */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { assembleFoot, DEFAULT_FOOT, decodeGlb, type Foot } from '../../src/anatomy';
import { shape } from './built-foot';

const MODEL = fileURLToPath(new URL('../../public/models/foot-right.glb', import.meta.url));

let made: Foot | undefined;

/** One for all files of a worker: what is computed on a foot is kept with it. */
export const modelFoot = (): Foot => {
  made ??= assembleFoot(shape, DEFAULT_FOOT, 'standing', {
    ...decodeGlb(new Uint8Array(readFileSync(MODEL))),
    level: 'display',
  });
  return made;
};
