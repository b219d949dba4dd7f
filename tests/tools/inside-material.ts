/** The inside as content has it, the shipped foot, and bars whose inside is known. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import * as v from 'valibot';
import { parse } from 'yaml';
import { decodeGlb, type Foot, type Mesh } from '../../src/anatomy';
import { type Inside, type InsideOfShape, insideSchema } from '../../src/anatomy/inside';
import { DEFAULT_FOOT } from '../../src/anatomy/parameters';

const FILE = fileURLToPath(new URL('../../content/anatomy/inside.yaml', import.meta.url));

export const inside: Inside = v.parse(insideSchema, parse(readFileSync(FILE, 'utf8')).inside);
export const shape: InsideOfShape = { scale: { referenceHMm: DEFAULT_FOOT.heelToSecondHeadMm }, inside };

const MODEL = fileURLToPath(new URL('../../public/models/foot-right-fine.glb', import.meta.url));

/** The bones of the fine model that is shipped; joints are not needed here. */
export const fineFoot = (): Foot => ({
  ...decodeGlb(new Uint8Array(readFileSync(MODEL))),
  parameters: DEFAULT_FOOT,
  pose: 'standing',
  side: 'right',
  joints: new Map(),
});

/** A foot whose fifth metatarsal is this mesh; `h` is its size. */
export const footOf = (mesh: Mesh, h = DEFAULT_FOOT.heelToSecondHeadMm): Foot => ({
  parameters: { ...DEFAULT_FOOT, heelToSecondHeadMm: h },
  pose: 'standing',
  side: 'right',
  bones: new Map([['metatarsal5', mesh]]),
  leg: new Map(),
  joints: new Map(),
  outline: { positions: new Float32Array(), indices: new Uint32Array() },
});

/** The fifth metatarsal under an even shell; thick everywhere, or on each side its own. */
export const shelled = (mm: number): InsideOfShape => ({
  ...shape,
  inside: { tubes: [], shells: [{ bone: 'metatarsal5', cortex: { band: [mm, mm, mm], how: 'assumed' } }] },
});
