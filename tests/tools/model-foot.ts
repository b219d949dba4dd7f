/** The foot of the model that is shipped: the same the app starts with, and quicker than building it. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { assembleFoot, DEFAULT_FOOT, decodeGlb, type Foot } from '../../src/anatomy';
import { readShape } from '../../src/cli/read-shape';

const MODEL = fileURLToPath(new URL('../../public/models/foot-right.glb', import.meta.url));

export const modelFoot = (): Foot => {
  const model = decodeGlb(new Uint8Array(readFileSync(MODEL)));
  return assembleFoot(readShape(), DEFAULT_FOOT, 'standing', { ...model, level: 'display' });
};
