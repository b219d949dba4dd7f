/** The default foot as it is shipped: few facets to draw, or many to compute on, and what was cut from these. */
import * as v from 'valibot';
import { assembleFoot, DEFAULT_FOOT, decodeGlb, shapeSchema } from '../anatomy';
import type { Foot, Level } from '../anatomy/types';
import { type RaySections, readSections } from '../mechanics';

const FILES: Readonly<Record<Level, string>> = {
  display: 'foot-right.glb',
  fine: 'foot-right-fine.glb',
};

const shipped = async (name: string): Promise<Response> => {
  const answer = await fetch(new URL(`models/${name}`, document.baseURI));
  if (!answer.ok) throw new Error(`The model of the foot could not be read: ${answer.status}`);
  return answer;
};

export const usualSections = async (): Promise<RaySections> =>
  readSections(await (await shipped('foot-right-sections.json')).json());

export const usualFoot = async (shape: unknown, level: Level): Promise<Foot> => {
  const model = decodeGlb(new Uint8Array(await (await shipped(FILES[level])).arrayBuffer()));
  return assembleFoot(v.parse(shapeSchema, shape), DEFAULT_FOOT, 'standing', { ...model, level });
};
