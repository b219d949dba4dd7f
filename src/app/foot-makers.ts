/** The page's side of the workers that build feet and measure them. */
import type { Angle } from '../anatomy/angles';
import type { Foot, FootParameters, PoseName } from '../anatomy/types';
import type { FromFootWorker, ToFootWorker } from './foot-worker';
import workerUrl from './foot-worker?worker&url';
import { trustedWorkerUrl } from './trusted-types';

export interface FootMakers {
  /** The foot as it is drawn. */
  readonly build: (parameters: FootParameters, pose: PoseName) => Promise<Foot>;
  /** What is measured on its fine surface. */
  readonly measure: (parameters: FootParameters, pose: PoseName) => Promise<readonly Angle[]>;
}

type Answer = Exclude<FromFootWorker, { readonly failed: string }>;

/**
 * One worker for the page's life, started when it is first asked: it keeps the bones that every other foot starts from, as shipped
 * when they could be read. Answers come in the order asked.
 */
const askWorker = (shape: unknown, usual: Promise<Foot>) => {
  let worker: Worker | null = null;
  const waiting: { resolve: (answer: Answer) => void; reject: (error: Error) => void }[] = [];
  const start = (shipped: Foot | null): Worker => {
    const made = new Worker(trustedWorkerUrl(workerUrl), { type: 'module' });
    made.onmessage = ({ data }: MessageEvent<FromFootWorker>) => {
      const next = waiting.shift();
      if ('failed' in data) next?.reject(new Error(data.failed));
      else next?.resolve(data);
    };
    made.onerror = (event) => {
      made.terminate();
      worker = null;
      for (const { reject } of waiting.splice(0)) reject(new Error(event.message));
    };
    const first: ToFootWorker = { ask: 'start', shape, usual: shipped };
    made.postMessage(first);
    return made;
  };
  return async (asked: ToFootWorker): Promise<Answer> => {
    const shipped = await usual.catch(() => null);
    return new Promise((resolve, reject) => {
      worker ??= start(shipped);
      waiting.push({ resolve, reject });
      worker.postMessage(asked);
    });
  };
};

/** Two workers: a picture never waits for measures. */
export const footMakers = (shape: unknown, usual: Promise<Foot>, usualFine: Promise<Foot>): FootMakers => {
  const builder = askWorker(shape, usual);
  const measurer = askWorker(shape, usualFine);
  return {
    build: async (parameters, pose) => {
      const answer = await builder({ ask: 'build', parameters, pose });
      if (!('foot' in answer)) throw new Error('the worker gave no foot');
      return answer.foot;
    },
    measure: async (parameters, pose) => {
      const answer = await measurer({ ask: 'measure', parameters, pose });
      if (!('angles' in answer)) throw new Error('the worker gave no measures');
      return answer.angles;
    },
  };
};
