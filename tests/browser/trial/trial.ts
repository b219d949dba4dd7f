/** Trial page: what the app relies on, tried together under the real policy. Results go to the page for the spec to read. */
import { trustedWorkerUrl } from '../../../src/app/trusted-types';
import workerUrl from './trial-worker?worker&url';

const refuses = (attempt: () => unknown): boolean => {
  try {
    attempt();
    return false;
  } catch {
    return true;
  }
};

const askWorker = (): Promise<{ before: number; after: number }> =>
  new Promise((resolve, reject) => {
    const worker = new Worker(trustedWorkerUrl(workerUrl), { type: 'module' });
    worker.onmessage = (event) => resolve(event.data);
    worker.onerror = (event) => reject(new Error(event.message));
    worker.postMessage('simplify');
  });

/** An empty wasm module: eight bytes of magic number and version. */
const EMPTY_WASM = new Uint8Array([0, 97, 115, 109, 1, 0, 0, 0]);

const result = {
  worker: await askWorker().catch((error: Error) => error.message),
  foreignWorkerRefused: refuses(() => trustedWorkerUrl('https://example.org/worker.js')),
  dataWorkerRefused: refuses(() => trustedWorkerUrl('data:text/javascript,1')),
  plainWorkerUrlRefused: refuses(() => new Worker(workerUrl, { type: 'module' })),
  // The direct call is the point: it is what the policy has to stop.
  evalRefused: refuses(() => new Function('return 1')()),
  wasmOnPageRefused: await WebAssembly.instantiate(EMPTY_WASM).then(
    () => false,
    () => true,
  ),
  secondPolicyRefused: refuses(() =>
    (
      globalThis as unknown as { trustedTypes: { createPolicy: (n: string, r: object) => unknown } }
    ).trustedTypes.createPolicy('another', {}),
  ),
  htmlRefused: refuses(() => {
    document.body.insertAdjacentHTML('beforeend', '<b>text</b>');
  }),
};
const output = document.querySelector('#result');
if (output) output.textContent = JSON.stringify(result);
