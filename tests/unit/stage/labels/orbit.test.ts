/**
 * Labels of the real foot along continuous paths of the camera. While it moves they keep their places; at rest none overlaps, none
 * crosses, all are whole, leaders keep off foreign dots. How much they may move: design, look document, section 6, the table of
 * simulated orbits, its "lazy" column.
 */
import { describe, expect, it } from 'vitest';
import type { PlacedLabel } from '../../../../src/stage/labels/layout';
import { leaderToDot } from '../../../../src/stage/labels/place';
import { cross } from '../../../../src/stage/labels/segments';
import { sizeOf } from '../../../../src/stage/overlay/labels';
import { seededRandom } from '../../../../src/units';
import { type Looked, plateFor } from './real-foot';

const STEP_RAD = 0.03;

const sound = (placed: readonly PlacedLabel[], plate: ReturnType<typeof plateFor>): void => {
  const { showing, size } = plate;
  const boxes = placed.map(({ id, x, y }) => {
    const label = showing.labels.find((each) => each.id === id);
    if (label === undefined) throw new Error('a label nobody asked for');
    const { width, height } = sizeOf(label, showing.fonts, showing.measure);
    return { x0: x, y0: y, x1: x + width, y1: y + height };
  });
  for (const [i, a] of boxes.entries()) {
    expect(a.x0).toBeGreaterThanOrEqual(0);
    expect(a.y0).toBeGreaterThanOrEqual(0);
    expect(a.x1).toBeLessThanOrEqual(size.width);
    expect(a.y1).toBeLessThanOrEqual(size.height);
    for (const b of boxes.slice(i + 1)) {
      expect(a.x1 <= b.x0 || b.x1 <= a.x0 || a.y1 <= b.y0 || b.y1 <= a.y0).toBe(true);
    }
  }
  for (const [i, a] of placed.entries()) {
    for (const b of placed.slice(i + 1)) {
      expect(cross(a.leader[1], a.leader[2], b.leader[1], b.leader[2])).toBe(false);
    }
  }
};

describe('along random continuous paths, on plates of any size', () => {
  it('labels keep their places while the camera moves, and are sound at every rest', () => {
    const random = seededRandom(20_261_128);
    let [leaders, close, moved] = [0, 0, 0];
    for (let path = 0; path < 40; path += 1) {
      const width = Math.round(320 + random() * 1120);
      const plate = plateFor(path % 2 === 0 ? 'study' : 'patient', {
        width,
        height: Math.round(Math.max(260, width * 0.62)),
      });
      let at: Looked = { azimuthRad: random() * 2 * Math.PI, elevationRad: (random() - 0.4) * 2 };
      let rest = plate.look(at, true);
      let [turn, tilt] = [random() - 0.5, random() - 0.5];
      for (let frame = 1; frame <= 24; frame += 1) {
        turn = 0.9 * turn + 0.4 * (random() - 0.5);
        tilt = 0.9 * tilt + 0.2 * (random() - 0.5);
        at = {
          azimuthRad: at.azimuthRad + turn * STEP_RAD * 3,
          elevationRad: Math.max(-1.5, Math.min(1.5, at.elevationRad + tilt * STEP_RAD * 3)),
        };
        const frameNow = plate.look(at, frame % 8 === 0);
        if (frame % 8 !== 0) {
          expect(frameNow.memory.placed).toBe(rest.memory.placed);
          moved += frameNow.labels.length;
          continue;
        }
        rest = frameNow;
        sound(rest.memory.placed, plate);
        for (const a of rest.memory.placed) {
          leaders += 1;
          if (rest.memory.placed.some((b) => a !== b && leaderToDot(a, b) < 4)) close += 1;
        }
      }
    }
    expect(moved).toBeGreaterThan(1500);
    expect(leaders).toBeGreaterThan(400);
    // The look document had 8 to 15 % of label-frames closer than 4 px.
    expect(close / leaders).toBeLessThan(0.005);
  }, 60_000);
});

describe("the look document's orbit of 20 degrees to and fro, 720 x 560, 360 frames", () => {
  // The study wording labels nine bones: the row of eight labels is the nearest.
  it('moves labels no more than its lazy layout did, resting twelve times on the way', () => {
    const plate = plateFor('study', { width: 720, height: 560 });
    let [jumps, way, count, frames] = [0, 0, 0, 0];
    let before: readonly PlacedLabel[] = [];
    for (let frame = 0; frame < 360; frame += 1) {
      const azimuthRad = -1.15 + 0.349 * Math.sin((2 * Math.PI * frame) / 180);
      const { placed } = plate.look({ azimuthRad, elevationRad: 0.42 }, frame % 30 === 0).memory;
      for (const label of placed) {
        const old = before.find(({ id }) => id === label.id);
        if (old === undefined) continue;
        const px = Math.hypot(label.x - old.x, label.y - old.y);
        way += px;
        count += 1;
        if (px > 20) jumps += 1;
      }
      before = placed;
      frames += 1;
    }
    expect(frames).toBe(360);
    expect(count).toBeGreaterThan(1000);
    expect(jumps).toBeLessThanOrEqual(25);
    expect(way / count).toBeLessThanOrEqual(0.78);
  });
});

describe('a bone that goes out of sight', () => {
  it('keeps its label faded while the foot turns, and dashed at rest where it is the one that was chosen', () => {
    const plate = plateFor('patient', { width: 960, height: 690 }, 'sesamoidMedial');
    plate.look({ azimuthRad: -1.57, elevationRad: -1.3 }, true);
    const moving = plate.look({ azimuthRad: -1.57, elevationRad: 1.4 }, false);
    expect(moving.labels.find(({ key }) => key.startsWith('sesamoidMedial'))?.faded).toBe(true);
    const resting = plate.look({ azimuthRad: -1.57, elevationRad: 1.4 }, true);
    const chosen = resting.labels.find(({ key }) => key.startsWith('sesamoidMedial'));
    expect(chosen?.faded).toBe(false);
    expect(chosen?.shapes.some((shape) => shape.kind === 'line' && shape.dashed === true)).toBe(true);
    const seen = resting.labels.filter(({ key }) => !key.startsWith('sesamoidMedial'));
    expect(seen.length).toBeGreaterThan(1);
    expect(seen.some(({ shapes }) => shapes.some((shape) => shape.kind === 'line' && shape.dashed === true))).toBe(
      false,
    );
  });
});
