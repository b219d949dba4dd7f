/** The inside as content has it, the shipped foot, and bars whose inside is known. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import * as v from 'valibot';
import { parse } from 'yaml';
import { decodeGlb, type Foot, type Mesh } from '../../src/anatomy';
import { type BoneCut, type Inside, type InsideOfShape, insideSchema } from '../../src/anatomy/inside';
import { DEFAULT_FOOT } from '../../src/anatomy/parameters';
import type { Vec3 } from '../../src/units';
import { UNMOVED } from './tubes';

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
  level: 'fine',
  joints: new Map(),
  reference: UNMOVED,
});

/** A foot whose fifth metatarsal is this mesh; `h` is its size. */
export const footOf = (mesh: Mesh, h = DEFAULT_FOOT.heelToSecondHeadMm): Foot => ({
  parameters: { ...DEFAULT_FOOT, heelToSecondHeadMm: h },
  pose: 'standing',
  side: 'right',
  level: 'display',
  bones: new Map([['metatarsal5', mesh]]),
  leg: new Map(),
  joints: new Map(),
  reference: UNMOVED,
  outline: { positions: new Float32Array(), indices: new Uint32Array() },
});

/** Nothing but the fifth metatarsal under an even shell. */
export const shelled = (mm: number): InsideOfShape => ({
  ...shape,
  inside: {
    cortex: { even: { band: [mm, mm, mm], how: 'assumed' } },
    canals: [],
    tubes: [],
    shells: [{ bones: ['metatarsal5'], cortex: 'even' }],
  },
});

/** Nothing but the fifth metatarsal as a tube; a cortex named `2.5` is 2.5 mm thick. */
export const tubed = (stations: Inside['tubes'][number]['stations'], canals: Inside['canals'] = []): InsideOfShape => {
  const names = stations.flatMap((s) => (typeof s.cortex === 'string' ? [s.cortex] : Object.values(s.cortex)));
  const cortex = names
    .filter((name) => name !== 'fromCanal')
    .map((name) => [name, { band: [Number(name), Number(name), Number(name)], how: 'assumed' }] as const);
  return {
    ...shape,
    inside: {
      cortex: Object.fromEntries(cortex) as Inside['cortex'],
      canals,
      tubes: [{ bones: ['metatarsal5'], stations }],
      shells: [],
    },
  };
};

export const cutOf = (cut: BoneCut | null): BoneCut => {
  if (!cut) throw new Error('the plane misses the bone');
  return cut;
};
export const X: Vec3 = [1, 0, 0];
export const Y: Vec3 = [0, 1, 0];
export const Z: Vec3 = [0, 0, 1];
