/**
 * Labels of the real foot along continuous paths of the camera, near and far, with and without a break. While it moves they keep
 * their places; at rest none overlaps, none crosses, all are whole, none hides another's dot, leaders keep off foreign dots.
 */
import { describe, expect, it } from 'vitest';
import type { PlacedLabel } from '../../../../src/stage/labels/layout';
import { seededRandom } from '../../../../src/units';
import { LONG } from '../../../tools/long';
import { countOf } from './faults';
import { type Looked, plateFor, withBreak } from './real-foot';

const PATHS = LONG ? 30 : 12;
const FRAMES = 12;
const REST_EVERY = 4;

const keysOf = ({ labels }: { readonly labels: readonly { readonly key: string }[] }): string[] =>
  labels.map(({ key }) => key).sort();

describe(`${PATHS} random continuous paths, on plates of any size`, () => {
  it('labels keep their places while the camera moves, and are sound at every rest', () => {
    const random = seededRandom(20_261_128);
    const broken = withBreak();
    const sum = countOf([]);
    let [labels, moved, own, left] = [0, 0, 0, 0];
    for (let path = 0; path < PATHS; path += 1) {
      const width = Math.round(320 + random() * 1120);
      const plate = plateFor(
        (['study', 'patient', 'broadcast'] as const)[path % 3] ?? 'study',
        { width, height: Math.round(Math.max(260, width * (0.45 + 0.4 * random()))) },
        { wide: random() < 0.7 ? 'sides' : 'ends', explanation: path % 2 === 0 ? broken : null },
      );
      let at: Looked = { azimuthRad: random() * 2 * Math.PI, elevationRad: (random() - 0.4) * 2 };
      let [turn, tilt, nearer] = [random() - 0.5, random() - 0.5, path % 4 < 2 ? 0 : random()];
      let rest = plate.look(at, true);
      for (let frame = 1; frame <= FRAMES; frame += 1) {
        turn = 0.9 * turn + 0.4 * (random() - 0.5);
        tilt = 0.9 * tilt + 0.2 * (random() - 0.5);
        nearer *= 0.97;
        at = {
          azimuthRad: at.azimuthRad + 0.12 * turn,
          elevationRad: Math.max(-1.5, Math.min(1.5, at.elevationRad + 0.12 * tilt)),
          zoom: (at.zoom ?? 1) * (1 + 0.08 * nearer),
          panPx: [(at.panPx?.[0] ?? 0) + 12 * nearer * turn, (at.panPx?.[1] ?? 0) + 12 * nearer * tilt],
        };
        const atRest = frame % REST_EVERY === 0;
        const now = plate.look(at, atRest);
        if (!atRest) {
          expect(now.memory.placed).toBe(rest.memory.placed);
          expect(now.gone).toEqual([]);
          moved += now.labels.length;
          continue;
        }
        rest = now;
        const faults = plate.faults(rest);
        // A text over its own dot: the bone is seen under the margin only. It is counted apart.
        own += faults.filter(({ ids }) => ids[0] === ids[1] && ids.length === 2).length;
        const counted = countOf(faults.filter(({ ids }) => ids.length === 1 || ids[0] !== ids[1]));
        for (const fault of Object.keys(sum) as (keyof typeof sum)[]) sum[fault] += counted[fault];
        labels += rest.memory.placed.length;
        left += rest.memory.left.length;
      }
    }
    expect(moved / PATHS).toBeGreaterThan(1000 / 30);
    expect(labels / PATHS).toBeGreaterThan(350 / 30);
    expect(sum).toMatchObject({ overlap: 0, crossing: 0, cut: 0, through: 0, under: 0 });
    // The look document had 8 to 15 % of label-frames closer than 4 px to a foreign dot; here none when this was written.
    expect(sum.close / labels).toBeLessThan(0.005);
    expect(own / labels).toBeLessThan(0.01);
    expect(left / labels).toBeLessThan(0.05);
  }, 60_000);
});

describe("the look document's orbit of 20 degrees to and fro, 720 x 560, 360 frames, twelve rests", () => {
  // The nine labels of the study wording, with their choice of points and sides; the nearest row of the table (section 6, lazy) has eight.
  it('jumps no more than 25 times and moves labels no more than 0.78 px a frame', () => {
    const plate = plateFor('study', { width: 720, height: 560 });
    let [jumps, way, labelFrames] = [0, 0, 0];
    let before: readonly PlacedLabel[] = [];
    for (let frame = 0; frame < 360; frame += 30) {
      const azimuthRad = -1.15 + (Math.PI / 9) * Math.sin((2 * Math.PI * frame) / 180);
      const { placed } = plate.look({ azimuthRad, elevationRad: 0.42 }, true).memory;
      for (const label of placed) {
        const old = before.find(({ id }) => id === label.id);
        if (old === undefined) continue;
        const px = Math.hypot(label.x - old.x, label.y - old.y);
        way += px;
        if (px > 20) jumps += 1;
      }
      labelFrames += 30 * placed.length;
      before = placed;
    }
    expect(labelFrames).toBeGreaterThan(1000);
    expect(jumps).toBeLessThanOrEqual(25);
    expect(way / labelFrames).toBeLessThanOrEqual(0.78);
  });
});

describe('a bone that goes out of sight', () => {
  const below: Looked = { azimuthRad: -1.57, elevationRad: -1.3 };
  const above: Looked = { azimuthRad: -1.57, elevationRad: 1.4 };
  const isOf = ({ key }: { readonly key: string }): boolean => key.startsWith('sesamoidMedial');

  it('keeps its label faded while the foot turns, and dashed at rest where it is the one that was chosen', () => {
    const plate = plateFor('patient', { width: 960, height: 690 }, { selectedBone: 'sesamoidMedial' });
    plate.look(below, true);
    const moving = plate.look(above, false);
    expect(moving.labels.find(isOf)?.faded).toBe(true);
    const resting = plate.look(above, true);
    const chosen = resting.labels.find(isOf);
    expect(chosen?.faded).toBe(false);
    expect(chosen?.shapes.some((shape) => shape.kind === 'line' && shape.dashed === true)).toBe(true);
    const seen = resting.labels.filter((label) => !isOf(label));
    expect(seen.length).toBeGreaterThan(1);
    expect(seen.some(({ shapes }) => shapes.some((shape) => shape.kind === 'line' && shape.dashed === true))).toBe(
      false,
    );
  });
});

describe('a label that goes or jumps', () => {
  it('goes out where it was, as it was, while the new one comes in; one that is only shifted stays the same element', () => {
    const plate = plateFor('study', { width: 960, height: 690 });
    plate.look({ azimuthRad: -1.15, elevationRad: 0.42 }, true);
    const moving = plate.look({ azimuthRad: 1.9, elevationRad: 0.44 }, false);
    const resting = plate.look({ azimuthRad: 1.9, elevationRad: 0.44 }, true);
    expect(resting.gone.length).toBeGreaterThan(0);
    for (const gone of resting.gone) {
      expect(moving.labels).toContain(gone);
      expect(keysOf(resting)).not.toContain(gone.key);
    }
    const shifted = plate.look({ azimuthRad: 1.9, elevationRad: 0.448 }, true);
    expect(keysOf(shifted)).toEqual(keysOf(resting));
    expect(shifted.gone).toEqual([]);
  });

  it('draws leaders of one pixel without a wide casing while the foot turns', () => {
    const plate = plateFor('study', { width: 960, height: 690 }, { explanation: withBreak() });
    plate.look({ azimuthRad: -1.15, elevationRad: 0.42 }, true);
    const lines = plate
      .look({ azimuthRad: -1.1, elevationRad: 0.42 }, false)
      .labels.flatMap(({ shapes }) => shapes.flatMap((shape) => (shape.kind === 'line' ? [shape] : [])));
    expect(lines.length).toBeGreaterThan(5);
    for (const { width, casing } of lines) expect([width, casing]).toEqual([1, 2]);
  });

  it('stays in its old margins on the way to a view that takes the other two', () => {
    const sides = plateFor('patient', { width: 960, height: 690 });
    const first = sides.look({ azimuthRad: -1.15, elevationRad: 0.42 }, true);
    const ends = plateFor('patient', { width: 960, height: 690 }, { wide: 'ends' });
    const moving = ends.look({ azimuthRad: -1.1, elevationRad: 0.42 }, false, first.memory);
    expect(moving.memory.placed).toBe(first.memory.placed);
    expect(moving.labels.length).toBe(first.labels.length);
    const resting = ends.look({ azimuthRad: -1.1, elevationRad: 0.42 }, true);
    expect(ends.faults(resting)).toEqual([]);
    expect(keysOf(resting)).not.toEqual(keysOf(first));
  });
});
