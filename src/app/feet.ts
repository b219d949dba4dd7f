/**
 * Which foot the stage shows. The usual foot comes ready-made as a file; any other is built in a worker, and until it is there
 * the one before stays. A right foot always: the left is its mirror image, made while drawing.
 */
import * as v from 'valibot';
import { assembleFoot, DEFAULT_FOOT, decodeGlb, previewFoot, type Shape, shapeSchema } from '../anatomy';
import type { Foot, FootParameters, Level, PoseName } from '../anatomy/types';
import type { Session } from '../session/types';
import type { BuiltFoot, ToFootWorker } from './foot-worker';
import workerUrl from './foot-worker?worker&url';
import { trustedWorkerUrl } from './trusted-types';

const keyOf = (parameters: FootParameters, pose: PoseName): string =>
  `${pose} ${JSON.stringify(parameters, Object.keys(parameters).sort())}`;

/**
 * One worker for the page's life: it keeps the bones that every other foot starts from, as shipped when they could be read. Answers
 * come in the order asked.
 */
const footBuilder = (
  shape: unknown,
  usual: Promise<Foot>,
): ((parameters: FootParameters, pose: PoseName) => Promise<Foot>) => {
  let worker: Worker | null = null;
  const waiting: { resolve: (foot: Foot) => void; reject: (error: Error) => void }[] = [];
  const start = (shipped: Foot | null): Worker => {
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
    const first: ToFootWorker = { shape, usual: shipped };
    made.postMessage(first);
    return made;
  };
  return async (parameters, pose) => {
    const shipped = await usual.catch(() => null);
    return new Promise((resolve, reject) => {
      worker ??= start(shipped);
      waiting.push({ resolve, reject });
      const asked: ToFootWorker = { parameters, pose };
      worker.postMessage(asked);
    });
  };
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
  return assembleFoot(v.parse(shapeSchema, shape), DEFAULT_FOOT, 'standing', { ...model, level });
};

/** Feet kept ready, the usual one apart. */
const KEPT = 8;

export interface Feet {
  readonly getFoot: () => Foot | null;
  readonly subscribe: (listener: () => void) => () => void;
}

interface Wanted {
  readonly key: string;
  readonly parameters: FootParameters;
  readonly pose: PoseName;
}
const wantedOf = (parameters: FootParameters, pose: PoseName): Wanted => ({
  key: keyOf(parameters, pose),
  parameters,
  pose,
});

export const followFoot = (session: Session, usual: Promise<Foot>): Feet => {
  const listeners = new Set<() => void>();
  const build = footBuilder(session.getState().content.shape, usual);
  const usualOne = wantedOf(DEFAULT_FOOT, 'standing');
  const built = new Map([[usualOne.key, usual]]);
  let shown: Foot | null = null;
  let wanted = usualOne;
  let exact: Wanted | null = null;
  let busy = false;
  let shape: Shape | null = null;

  const show = (foot: Foot): void => {
    shown = foot;
    for (const listener of listeners) listener();
  };
  const footFor = ({ key, parameters, pose }: Wanted): Promise<Foot> => {
    const ready = built.get(key) ?? build(parameters, pose);
    built.set(key, ready);
    const oldest = [...built.keys()].find((other) => other !== key && other !== usualOne.key);
    if (built.size > KEPT && oldest !== undefined) built.delete(oldest);
    return ready;
  };
  /** One foot at a time: what is overtaken while another is built is never built. */
  const fetchWanted = async () => {
    if (busy) return;
    busy = true;
    for (let last: Wanted | null = null; last !== wanted; ) {
      const target: Wanted = wanted;
      last = target;
      try {
        const foot = await footFor(target);
        if (wanted === target) {
          exact = target;
          show(foot);
        }
      } catch (failure) {
        // Try again when it is asked for next; the pages work without the picture.
        built.delete(target.key);
        console.error(failure);
      }
    }
    busy = false;
  };
  const want = (parameters: FootParameters, pose: PoseName): void => {
    const next = wantedOf(parameters, pose);
    if (next.key === wanted.key) return;
    wanted = next;
    void fetchWanted();
  };
  /** Follows a hand on a slider at once with a foot whose surfaces are nearly right; the exact one takes its place. */
  const preview = async (parameters: FootParameters) => {
    const from = await usual;
    if (keyOf(parameters, 'standing') !== wanted.key || exact === wanted) return;
    shape ??= v.parse(shapeSchema, session.getState().content.shape);
    show(previewFoot(shape, from, parameters));
  };
  void fetchWanted();
  session.subscribe((state, previous) => {
    const { whatIf, pose, explanation } = state;
    const known = explanation?.foot ?? DEFAULT_FOOT;
    const tried = whatIf.foot !== previous.whatIf.foot && whatIf.foot !== undefined;
    if (tried) {
      const parameters = { ...known, ...whatIf.foot };
      want(parameters, pose);
      if (pose === 'standing') void preview(parameters);
    } else if (explanation?.foot !== previous.explanation?.foot || pose !== previous.pose) want(known, pose);
  });
  return {
    getFoot: () => shown,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
};
