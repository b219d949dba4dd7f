/**
 * The page's side of the worker: one question at a time, an answer or a rejection. A worker that breaks rejects what it was
 * asked with `WorkerBroken`, so that the caller can do the work itself.
 */
import type { Explanation } from '../explain/types';
import type { ExplainRequest, FromWorker, ToWorker } from './run-explain';

/** The part of `Worker` that is used. */
export interface WorkerLike {
  postMessage(message: ToWorker): void;
  addEventListener(type: 'message' | 'messageerror' | 'error', listener: (event: unknown) => void): void;
  terminate(): void;
}

export class WorkerBroken extends Error {}

export interface WorkerClient {
  readonly explain: (request: ExplainRequest) => Promise<Explanation>;
  readonly broken: () => boolean;
}

export const workerClient = (worker: WorkerLike, start: Extract<ToWorker, { kind: 'start' }>): WorkerClient => {
  interface Asked {
    readonly run: number;
    readonly resolve: (explanation: Explanation) => void;
    readonly reject: (error: Error) => void;
  }
  let asked: Asked | null = null;
  let broken = false;
  let run = 0;

  const breakDown = (why: string): void => {
    broken = true;
    worker.terminate();
    asked?.reject(new WorkerBroken(why));
    asked = null;
  };
  worker.addEventListener('error', () => breakDown('the worker stopped'));
  worker.addEventListener('messageerror', () => breakDown('the worker sent what cannot be read'));
  worker.addEventListener('message', (event) => {
    const message = (event as MessageEvent<FromWorker>).data;
    if (asked === null || message.run !== asked.run) return;
    const { resolve, reject } = asked;
    asked = null;
    if (message.kind === 'explained') resolve(message.explanation);
    else reject(new Error(message.message));
  });
  worker.postMessage(start);

  return {
    broken: () => broken,
    explain: (request) =>
      new Promise((resolve, reject) => {
        if (broken) return reject(new WorkerBroken('the worker stopped before'));
        if (asked !== null) throw new Error('workerClient: one question at a time');
        run += 1;
        asked = { run, resolve, reject };
        worker.postMessage({ kind: 'explain', run, request });
      }),
  };
};
