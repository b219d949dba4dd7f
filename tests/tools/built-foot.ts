/**
 * The shape as content has it and feet built of it, each once for all files of a worker: the triangles of the usual foot, which go
 * with the shape, cost more than any foot that is made of them. Await `prepareAnatomy` before.
 */
import { buildFoot, DEFAULT_FOOT, type Foot, type FootParameters, type Level, type PoseName } from '../../src/anatomy';
import { readShape } from '../../src/cli/read-shape';

export const shape = readShape();

const feet = new Map<string, Foot>();
export const builtFoot = (
  form: Partial<FootParameters> = {},
  pose: PoseName = 'standing',
  level: Level = 'display',
): Foot => {
  const parameters = { ...DEFAULT_FOOT, ...form };
  const key = `${JSON.stringify(parameters)} ${pose} ${level}`;
  const foot = feet.get(key) ?? buildFoot(shape, parameters, pose, level);
  feet.set(key, foot);
  return foot;
};
