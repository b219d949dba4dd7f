/**
 * The ensemble as the app's worker makes it for a foot that is new to it: figures that the press allows are drawn, then a hundred of
 * them answer a case and its reference. Runs as a worker thread, cold: the first ensemble of a page is what somebody waits for.
 */
import { parentPort } from 'node:worker_threads';
import { loadBands, loadDraws } from '../../src/mechanics/foot/bands';
import { heldDraws } from '../../src/mechanics/foot/held-draws';
import { bandedCase, FRAME_BANDS, HELD_WITHIN, modelLoadedFoot, PERSON } from '../tools/loaded-foot';

const CASE = 'side-step-cut';
const DRAWS = 100;

const foot = modelLoadedFoot();
const [banded, reference] = [bandedCase(CASE), bandedCase('walking')];

const ensemble = (seed: number): string => {
  const started = performance.now();
  const { draws: frames, tried } = heldDraws(foot, FRAME_BANDS, HELD_WITHIN, DRAWS, seed);
  const held = performance.now();
  const bands = loadBands(foot, loadDraws(frames, banded, reference, seed), banded, reference, PERSON, 5, {
    seed,
    tried,
  });
  if (bands === null) throw new Error(`${CASE}: the told values find no answer`);
  const done = performance.now();
  return `${(done - started).toFixed(0)} ms (${tried} sets of figures in the press ${(held - started).toFixed(0)}, ${DRAWS} draws of two cases ${(done - held).toFixed(0)})`;
};

/** Three seeds: other draws, so that nothing but the machine code is warm from the second on. */
const [first, second, third] = [1, 2, 3].map(ensemble);
parentPort?.postMessage(`ensemble in a worker: first ${first}; with other seeds ${second}, ${third}`);
