/**
 * Labels of a cloud of bones, each a cluster of points, under a camera that goes on without a jump, on plates of 320 to 1440 px.
 * Pure placing: what the real foot does to it is in orbit.test.ts.
 */
import { describe, expect, it } from 'vitest';
import { basisOf, type Camera, project, type Size } from '../../../../src/stage/camera/camera';
import { NARROW_PX } from '../../../../src/stage/camera/framing';
import { type LabelBox, layout, openArea, type PlacedLabel } from '../../../../src/stage/labels/layout';
import { type LabelWish, type Placing, placeLabels } from '../../../../src/stage/labels/place';
import type { Point } from '../../../../src/stage/types';
import { seededRandom, type Vec3 } from '../../../../src/units';
import { countOf, faultsOf } from './faults';

const PATHS = 2000;
const RESTS = 3;
/** Between two rests the camera turns this often, by a few degrees each time. */
const FRAMES = 6;

interface Cloud {
  readonly box: LabelBox;
  readonly size: Size;
  readonly mmPerPx: number;
  readonly bones: readonly (Omit<LabelWish, 'anchors' | 'prefer'> & { readonly points: readonly Vec3[] })[];
}

const cloudOf = (random: () => number): Cloud => {
  const width = Math.round(320 + random() * 1120);
  const height = Math.round(Math.max(260, width * (0.45 + 0.4 * random())));
  const mode = width < NARROW_PX || random() < 0.3 ? 'ends' : 'sides';
  const count = 2 + Math.floor(random() * 12);
  const bones = Array.from({ length: count }, (_, i) => {
    // A box as long, wide and high as a foot, mm.
    const middle: Vec3 = [(random() - 0.5) * 80, (random() - 0.5) * 60, (random() - 0.5) * 220];
    const points = Array.from(
      { length: 3 + Math.floor(random() * 3) },
      (): Vec3 => [
        middle[0] + (random() - 0.5) * 22,
        middle[1] + (random() - 0.5) * 22,
        middle[2] + (random() - 0.5) * 22,
      ],
    );
    const [wide, high] = [Math.round(40 + random() * 120), 18 + Math.round(random()) * 16];
    return { id: `b${i}`, width: wide, height: high, priority: count - i, points };
  });
  const box: LabelBox = { mode, width, height, pad: 12 };
  const { from, to } = openArea(bones, box);
  return {
    box,
    size: { width, height },
    bones,
    mmPerPx: 240 / Math.max(40, Math.min(to[0] - from[0], 1.6 * (to[1] - from[1]))),
  };
};

const wishesOf = ({ box, size, mmPerPx, bones }: Cloud, azimuthRad: number, elevationRad: number): LabelWish[] => {
  const camera: Camera = { target: [0, 0, 0], azimuthRad, elevationRad, mmPerPx };
  const basis = basisOf(camera);
  const { from, to } = openArea(bones, box);
  return bones.flatMap(({ points, ...rest }): LabelWish[] => {
    const anchors = points
      .map((p): Point => {
        const [x, y] = project(camera, basis, size, p);
        return [x, y];
      })
      .filter(([x, y]) => x > from[0] && x < to[0] && y > from[1] && y < to[1]);
    return anchors.length === 0 ? [] : [{ ...rest, anchors, prefer: null }];
  });
};

/** The rests of one path. */
const walked = (seed: number): { cloud: Cloud; rests: { wishes: LabelWish[]; placing: Placing }[] } => {
  const random = seededRandom(seed);
  const cloud = cloudOf(random);
  let [azimuth, elevation] = [random() * 2 * Math.PI, (random() - 0.4) * 2];
  let [turn, tilt] = [random() - 0.5, random() - 0.5];
  let before: readonly PlacedLabel[] = [];
  const rests = Array.from({ length: RESTS }, () => {
    for (let frame = 0; frame < FRAMES; frame += 1) {
      turn = 0.9 * turn + 0.4 * (random() - 0.5);
      tilt = 0.9 * tilt + 0.2 * (random() - 0.5);
      azimuth += 0.1 * turn;
      elevation = Math.max(-1.5, Math.min(1.5, elevation + 0.1 * tilt));
    }
    const wishes = wishesOf(cloud, azimuth, elevation);
    const placing = placeLabels(wishes, cloud.box, before);
    before = placing.placed;
    return { wishes, placing };
  });
  return { cloud, rests };
};

const extentsIn =
  (wishes: readonly LabelWish[]) =>
  (id: string): LabelWish => {
    const wish = wishes.find((each) => each.id === id);
    if (wish === undefined) throw new Error('a label nobody asked for');
    return wish;
  };

describe(`${PATHS} continuous paths with ${RESTS} rests each`, () => {
  it('overlap nothing, cross nothing, cut nothing, hide nothing, keep what fits in a margin; hardly a leader is close to a foreign dot', () => {
    const sum = countOf([]);
    let [labels, left, firstClose, overfull] = [0, 0, 0, 0];
    for (let seed = 1; seed <= PATHS; seed += 1) {
      const { cloud, rests } = walked(seed);
      const along = cloud.box.mode === 'sides' ? cloud.size.height : cloud.size.width;
      for (const { wishes, placing } of rests) {
        const extentOf = extentsIn(wishes);
        const faults = countOf(faultsOf(placing.placed, extentOf, cloud.size));
        for (const fault of Object.keys(sum) as (keyof typeof sum)[]) sum[fault] += faults[fault];
        labels += placing.placed.length;
        left += placing.left.length;
        if (placing.placed.length + placing.left.length !== wishes.length)
          throw new Error(`seed ${seed}: a label is lost`);
        for (const side of ['low', 'high']) {
          const need = placing.placed
            .filter((label) => label.side === side)
            .reduce((total, { id }) => total + extentOf(id)[cloud.box.mode === 'sides' ? 'height' : 'width'], 0);
          if (need > along - 24) overfull += 1;
        }
        const first = layout(
          wishes.map(({ anchors: [anchor = [0, 0]], ...item }) => ({ ...item, anchor })),
          cloud.box,
        );
        firstClose += countOf(faultsOf(first, extentOf, cloud.size)).close;
      }
    }
    expect(sum).toMatchObject({ overlap: 0, crossing: 0, cut: 0, through: 0, under: 0 });
    expect(overfull).toBe(0);
    // When this was written: 1040 leaders close to a foreign dot with each bone's first point, 7 of 41 774 labels with the choice: no
    // change of one label made these better.
    expect(labels).toBeGreaterThan(30_000);
    expect(firstClose).toBeGreaterThan(500);
    expect(sum.close / labels).toBeLessThan(0.0005);
    // Up to thirteen names on plates from 320 px: 6 % found no room.
    expect(left / labels).toBeLessThan(0.08);
  }, 60_000);

  it('are walked again label for label', () => {
    for (const seed of [3, 77, 1234]) expect(walked(seed)).toEqual(walked(seed));
  });
});
