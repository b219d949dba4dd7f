/** Entry of the worker that makes explanations. Nothing here but the wiring. */
import { prepareAnatomy } from '../anatomy';
import { factsOf } from '../cases';
import { explain } from '../explain';
import type { ToWorker } from './run-explain';
import { serveExplain } from './serve-explain';

const serve = serveExplain(
  (content, { file, whatIf, bands }, foot) => explain(content, factsOf(file), whatIf, foot ?? undefined, { bands }),
  prepareAnatomy(),
  (message) => self.postMessage(message),
);
self.addEventListener('message', (event: MessageEvent<ToWorker>) => void serve(event.data));
