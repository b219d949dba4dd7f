/** The default foot as it is shipped: few facets to draw, or many to compute on. */
import * as v from 'valibot';
import { assembleFoot, DEFAULT_FOOT, decodeGlb, shapeSchema } from '../anatomy';
import type { Foot, Level } from '../anatomy/types';

const FILES: Readonly<Record<Level, string>> = {
  display: 'models/foot-right.glb',
  fine: 'models/foot-right-fine.glb',
};

export const usualFoot = async (shape: unknown, level: Level): Promise<Foot> => {
  const answer = await fetch(new URL(FILES[level], document.baseURI));
  if (!answer.ok) throw new Error(`The model of the foot could not be read: ${answer.status}`);
  const model = decodeGlb(new Uint8Array(await answer.arrayBuffer()));
  return assembleFoot(v.parse(shapeSchema, shape), DEFAULT_FOOT, 'standing', { ...model, level });
};
