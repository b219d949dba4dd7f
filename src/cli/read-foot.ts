/** The default foot from the fine model that is shipped: what the app computes on, without building it. */
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { assembleFoot, DEFAULT_FOOT, decodeGlb, type Foot } from '../anatomy';
import { readShape } from './read-shape';

const MODEL = fileURLToPath(new URL('../../public/models/foot-right-fine.glb', import.meta.url));

/** Null when `npm run model` has not been run yet: then every foot is built. */
export const readFoot = (): Foot | null => {
  if (!existsSync(MODEL)) return null;
  const model = decodeGlb(new Uint8Array(readFileSync(MODEL)));
  return assembleFoot(readShape(), DEFAULT_FOOT, 'standing', { ...model, level: 'fine' });
};
