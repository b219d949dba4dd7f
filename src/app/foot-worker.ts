/** Builds a foot away from the page: the only place besides the explain worker where the wasm simplifier runs. */
import * as v from 'valibot';
import { buildFoot, prepareAnatomy, shapeSchema } from '../anatomy';
import type { Foot, FootParameters } from '../anatomy/types';

export type BuiltFoot = Foot;

self.onmessage = async ({ data }: MessageEvent<{ readonly shape: unknown; readonly parameters: FootParameters }>) => {
  await prepareAnatomy();
  const foot: BuiltFoot = buildFoot(v.parse(shapeSchema, data.shape), data.parameters);
  self.postMessage(foot);
};
