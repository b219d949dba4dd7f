/** How long feet take: the whole foot cold, a slider's preview, the exact foot of another shape. ms; never a timed test. */
import { buildFoot, DEFAULT_FOOT, prepareAnatomy, previewFoot, startFrom } from '../../src/anatomy';
import { radiographicAngles } from '../../src/anatomy/angles';
import { readShape } from '../../src/cli/read-shape';
import { modelFoot } from '../tools/model-foot';
import { median, RUNS } from './runs';

const timed = (work: () => void): number => {
  const start = performance.now();
  work();
  return performance.now() - start;
};

export const timesOfFeet = async (): Promise<string> => {
  await prepareAnatomy();
  const shape = readShape();
  const cold = timed(() => buildFoot(shape, DEFAULT_FOOT, 'standing'));
  const usual = buildFoot(shape, DEFAULT_FOOT, 'standing');
  const fine = timed(() => buildFoot(shape, DEFAULT_FOOT, 'standing', 'fine'));
  const fineFoot = buildFoot(shape, DEFAULT_FOOT, 'standing', 'fine');
  const measures = median(Array.from({ length: RUNS }, () => timed(() => radiographicAngles(fineFoot))));
  const shapes = Array.from({ length: RUNS }, (_, i) => ({ ...DEFAULT_FOOT, arch: (i - 3) / 4, adductusDeg: i }));
  // What the app does: its worker starts from the shipped foot.
  const fresh = readShape();
  startFrom(fresh, modelFoot());
  const first = timed(() => buildFoot(fresh, { ...DEFAULT_FOOT, arch: 0.4 }, 'standing'));
  const preview = median(shapes.map((form) => timed(() => previewFoot(shape, usual, { ...form }))));
  const exact = median(shapes.map((form) => timed(() => buildFoot(shape, { ...form }, 'standing'))));
  return (
    `foot: cold ${cold.toFixed(0)} ms, its fine surfaces then ${fine.toFixed(0)} ms, its measures ${measures.toFixed(0)} ms; first foot of another shape from the shipped ` +
    `one ${first.toFixed(0)} ms; slider: preview ${preview.toFixed(0)} ms, exact foot ${exact.toFixed(0)} ms (median of ${RUNS} shapes)`
  );
};
