/**
 * The shipped feet, quicker to read than to build: as it is drawn, and the fine one on which the app computes. Told stresses of the two
 * differ by up to a tenth, so that nothing is explained on the drawn one.
 */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { assembleFoot, DEFAULT_FOOT, decodeGlb, type Foot, type Level } from '../../src/anatomy';
import { takeSections } from '../../src/mechanics/foot/ray-sections';
import { readSections } from '../../src/mechanics/foot/shipped-sections';
import { shape } from './built-foot';

const FILES: Readonly<Record<Level, string>> = { display: 'foot-right.glb', fine: 'foot-right-fine.glb' };

const shipped = (name: string): Buffer =>
  readFileSync(fileURLToPath(new URL(`../../public/models/${name}`, import.meta.url)));

const read = (level: Level): Foot =>
  assembleFoot(shape, DEFAULT_FOOT, 'standing', { ...decodeGlb(new Uint8Array(shipped(FILES[level]))), level });

let drawn: Foot | undefined;
let fine: Foot | undefined;

/** One for all files of a worker: what is computed on a foot is kept with it. */
export const modelFoot = (): Foot => {
  drawn ??= read('display');
  return drawn;
};
/** With the sections that are shipped; tests/unit/anatomy/glb.test.ts holds them against sections cut anew. */
export const fineModelFoot = (): Foot => {
  if (fine === undefined) {
    fine = read('fine');
    takeSections(fine, readSections(JSON.parse(shipped('foot-right-sections.json').toString())));
  }
  return fine;
};
