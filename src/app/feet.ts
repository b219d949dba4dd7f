/**
 * Which foot the stage shows. The usual foot comes ready-made as a file; any other is built in a worker, and until it is there
 * the one before stays. A right foot always: the left is its mirror image, made while drawing.
 */
import * as v from 'valibot';
import { assembleFoot, DEFAULT_FOOT, decodeGlb, shapeSchema } from '../anatomy';
import type { Foot, FootParameters, Level } from '../anatomy/types';
import type { Session } from '../session/types';
import type { BuiltFoot } from './foot-worker';
import workerUrl from './foot-worker?worker&url';
import { trustedWorkerUrl } from './trusted-types';

const keyOf = (parameters: FootParameters): string => JSON.stringify(parameters, Object.keys(parameters).sort());

const buildInWorker = (shape: unknown, parameters: FootParameters): Promise<Foot> =>
  new Promise((resolve, reject) => {
    const worker = new Worker(trustedWorkerUrl(workerUrl), { type: 'module' });
    worker.onmessage = ({ data }: MessageEvent<BuiltFoot>) => {
      worker.terminate();
      resolve(data);
    };
    worker.onerror = (event) => {
      worker.terminate();
      reject(new Error(event.message));
    };
    worker.postMessage({ shape, parameters });
  });

const FILES: Readonly<Record<Level, string>> = {
  display: 'models/foot-right.glb',
  fine: 'models/foot-right-fine.glb',
};

/** The default foot as it is shipped: few facets to draw, or many to compute on. */
export const usualFoot = async (shape: unknown, level: Level): Promise<Foot> => {
  const answer = await fetch(new URL(FILES[level], document.baseURI));
  if (!answer.ok) throw new Error(`The model of the foot could not be read: ${answer.status}`);
  const model = decodeGlb(new Uint8Array(await answer.arrayBuffer()));
  return assembleFoot(v.parse(shapeSchema, shape), DEFAULT_FOOT, 'standing', model);
};

export interface Feet {
  readonly getFoot: () => Foot | null;
  readonly subscribe: (listener: () => void) => () => void;
}

export const followFoot = (session: Session, usual: Promise<Foot>): Feet => {
  const listeners = new Set<() => void>();
  const built = new Map([[keyOf(DEFAULT_FOOT), usual]]);
  let shown: Foot | null = null;
  let wanted = keyOf(DEFAULT_FOOT);

  const footFor = (parameters: FootParameters): Promise<Foot> => {
    const key = keyOf(parameters);
    const ready = built.get(key) ?? buildInWorker(session.getState().content.shape, parameters);
    built.set(key, ready);
    return ready;
  };
  const want = async (parameters: FootParameters) => {
    const key = keyOf(parameters);
    wanted = key;
    try {
      const foot = await footFor(parameters);
      if (wanted !== key) return;
      shown = foot;
      for (const listener of listeners) listener();
    } catch (failure) {
      // Try again when it is asked for next; the pages work without the picture.
      built.delete(key);
      console.error(failure);
    }
  };
  void want(DEFAULT_FOOT);
  session.subscribe((state, previous) => {
    const parameters = state.explanation?.foot;
    if (parameters !== undefined && parameters !== previous.explanation?.foot && keyOf(parameters) !== wanted)
      void want(parameters);
  });
  return {
    getFoot: () => shown,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
};
