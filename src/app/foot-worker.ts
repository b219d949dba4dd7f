/** Builds feet away from the page, and measures them: the only place besides the explain worker where the wasm simplifier runs. */
import * as v from 'valibot';
import { buildFoot, prepareAnatomy, type Shape, shapeSchema, startFrom } from '../anatomy';
import { type Angle, radiographicAngles } from '../anatomy/angles';
import type { Foot, FootParameters, PoseName } from '../anatomy/types';

export type FromFootWorker =
  | { readonly foot: Foot }
  | { readonly angles: readonly Angle[] }
  | { readonly failed: string };
/** First the shape and the usual foot, then any number of feet to build or to measure. */
export type ToFootWorker =
  | { readonly ask: 'start'; readonly shape: unknown; readonly usual: Foot | null }
  | { readonly ask: 'build' | 'measure'; readonly parameters: FootParameters; readonly pose: PoseName };

const ready = prepareAnatomy();
let shape: Shape | null = null;
let order: Promise<void> = Promise.resolve();

/** Measures are taken on the fine surface: on the few facets that are drawn some of them lie many degrees off. */
const answer = async (ask: 'build' | 'measure', parameters: FootParameters, pose: PoseName): Promise<void> => {
  await ready;
  if (shape === null) throw new Error('the worker was asked for a foot before it had a shape');
  const given: FromFootWorker =
    ask === 'build'
      ? { foot: buildFoot(shape, parameters, pose) }
      : { angles: radiographicAngles(buildFoot(shape, parameters, pose, 'fine')) };
  self.postMessage(given);
};

const refuse = (reason: unknown): void => {
  const failure: FromFootWorker = { failed: String(reason) };
  self.postMessage(failure);
};

self.onmessage = ({ data }: MessageEvent<ToFootWorker>) => {
  if (data.ask === 'start') {
    shape = v.parse(shapeSchema, data.shape);
    if (data.usual !== null) startFrom(shape, data.usual);
  } else order = order.then(() => answer(data.ask, data.parameters, data.pose)).catch(refuse);
};
