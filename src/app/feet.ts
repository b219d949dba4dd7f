/**
 * Which foot the stage shows. The usual foot comes ready-made as a file; any other is built in a worker, and until it is there
 * the one before stays. A right foot always: the left is its mirror image, made while drawing.
 */
import * as v from 'valibot';
import { assembleFoot, DEFAULT_FOOT, decodeGlb, previewFoot, type Shape, shapeSchema } from '../anatomy';
import type { Foot, FootParameters, Level } from '../anatomy/types';
import type { Session } from '../session/types';
import type { BuiltFoot } from './foot-worker';
import workerUrl from './foot-worker?worker&url';
import { trustedWorkerUrl } from './trusted-types';

const keyOf = (parameters: FootParameters): string => JSON.stringify(parameters, Object.keys(parameters).sort());

/** One worker for the page's life: it keeps the bones that every other foot starts from. Answers come in the order asked. */
const footBuilder = (shape: unknown): ((parameters: FootParameters) => Promise<Foot>) => {
  let worker: Worker | null = null;
  const waiting: { resolve: (foot: Foot) => void; reject: (error: Error) => void }[] = [];
  const start = (): Worker => {
    const made = new Worker(trustedWorkerUrl(workerUrl), { type: 'module' });
    made.onmessage = ({ data }: MessageEvent<BuiltFoot>) => {
      const next = waiting.shift();
      if ('foot' in data) next?.resolve(data.foot);
      else next?.reject(new Error(data.failed));
    };
    made.onerror = (event) => {
      made.terminate();
      worker = null;
      for (const { reject } of waiting.splice(0)) reject(new Error(event.message));
    };
    made.postMessage({ shape });
    return made;
  };
  return (parameters) =>
    new Promise((resolve, reject) => {
      worker ??= start();
      waiting.push({ resolve, reject });
      worker.postMessage({ parameters });
    });
};

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

/** Feet kept ready, the usual one apart. */
const KEPT = 8;

export interface Feet {
  readonly getFoot: () => Foot | null;
  readonly subscribe: (listener: () => void) => () => void;
}

export const followFoot = (session: Session, usual: Promise<Foot>): Feet => {
  const listeners = new Set<() => void>();
  const build = footBuilder(session.getState().content.shape);
  const built = new Map([[keyOf(DEFAULT_FOOT), usual]]);
  let shown: Foot | null = null;
  let wanted = keyOf(DEFAULT_FOOT);
  let shape: Shape | null = null;

  const footFor = (parameters: FootParameters): Promise<Foot> => {
    const key = keyOf(parameters);
    const ready = built.get(key) ?? build(parameters);
    built.set(key, ready);
    const oldest = [...built.keys()].find((other) => other !== key && other !== keyOf(DEFAULT_FOOT));
    if (built.size > KEPT && oldest !== undefined) built.delete(oldest);
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
  /** Follows a hand on a slider at once with a foot whose surfaces are nearly right; the exact one takes its place. */
  const preview = async (measures: Partial<FootParameters>) => {
    const from = await usual;
    const parameters = { ...(session.getState().explanation?.foot ?? DEFAULT_FOOT), ...measures };
    if (keyOf(parameters) === wanted || session.getState().whatIf.foot !== measures) return;
    shape ??= v.parse(shapeSchema, session.getState().content.shape);
    shown = previewFoot(shape, from, parameters);
    for (const listener of listeners) listener();
  };
  void want(DEFAULT_FOOT);
  session.subscribe((state, previous) => {
    if (state.whatIf.foot !== undefined && state.whatIf.foot !== previous.whatIf.foot) void preview(state.whatIf.foot);
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
