/** Builds feet away from the page: the only place besides the explain worker where the wasm simplifier runs. */
import * as v from 'valibot';
import { buildFoot, prepareAnatomy, type Shape, shapeSchema, startFrom } from '../anatomy';
import type { Foot, FootParameters, PoseName } from '../anatomy/types';

export type BuiltFoot = { readonly foot: Foot } | { readonly failed: string };
/** First the shape and the usual foot, then any number of feet. */
export type ToFootWorker =
  | { readonly shape: unknown; readonly usual: Foot | null }
  | { readonly parameters: FootParameters; readonly pose: PoseName };

const ready = prepareAnatomy();
let shape: Shape | null = null;
let order: Promise<void> = Promise.resolve();

const answer = async (parameters: FootParameters, pose: PoseName): Promise<void> => {
  await ready;
  if (shape === null) throw new Error('the worker was asked for a foot before it had a shape');
  const built: BuiltFoot = { foot: buildFoot(shape, parameters, pose) };
  self.postMessage(built);
};

const refuse = (reason: unknown): void => {
  const failure: BuiltFoot = { failed: String(reason) };
  self.postMessage(failure);
};

self.onmessage = ({ data }: MessageEvent<ToFootWorker>) => {
  if ('shape' in data) {
    shape = v.parse(shapeSchema, data.shape);
    if (data.usual !== null) startFrom(shape, data.usual);
  } else order = order.then(() => answer(data.parameters, data.pose)).catch(refuse);
};
