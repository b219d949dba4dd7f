/**
 * How far labels move on the look document's orbit: 360 frames at 720 x 560, labels left and right. The figures are the "lazy" column
 * of the table in its section 6. It does not say which points it labelled; here they are bones of the shipped foot under
 * their own names, mean of several choices of bones.
 */
import { describe, expect, it } from 'vitest';
import { BONE_IDS, type BoneId } from '../../../../src/ids';
import { basisOf, fitCamera, project } from '../../../../src/stage/camera/camera';
import { VIEW_ANGLES } from '../../../../src/stage/camera/views';
import { type LabelItem, layout, type PlacedLabel } from '../../../../src/stage/labels/layout';
import { sizeOf } from '../../../../src/stage/overlay/labels';
import { fontsFor } from '../../../../src/stage/overlay/shapes';
import { seededRandom } from '../../../../src/units';
import { mesh, namesOf, whole } from './real-foot';

const FRAMES = 360;
const CHOICES = 6;
const size = { width: 720, height: 560 };
const { azimuthRad: from, elevationRad } = VIEW_ANGLES.outer;

type Path = 'to and fro' | 'full turn';
const azimuthAt = (path: Path, frame: number): number =>
  path === 'to and fro'
    ? from + (Math.PI / 9) * Math.sin((2 * Math.PI * frame) / 180)
    : from + (2 * Math.PI * frame) / FRAMES;

const someBones = (count: number, seed: number): BoneId[] => {
  const random = seededRandom(seed);
  return BONE_IDS.map((bone) => [random(), bone] as const)
    .sort(([a], [b]) => a - b)
    .slice(0, count)
    .map(([, bone]) => bone);
};

interface Moved {
  jumps: number;
  way: number;
  labelFrames: number;
}

/** A label moves by its end of the leader. */
const addMoves = (sum: Moved, before: readonly PlacedLabel[], now: readonly PlacedLabel[]): void => {
  for (const { id, leader } of now) {
    const old = before.find((each) => each.id === id);
    if (old === undefined) continue;
    const px = Math.hypot(leader[0][0] - old.leader[0][0], leader[0][1] - old.leader[0][1]);
    sum.way += px;
    if (px > 20) sum.jumps += 1;
  }
};

const none = (): Moved => ({ jumps: 0, way: 0, labelFrames: 0 });
const meanOf = ({ jumps, way, labelFrames }: Moved): { jumps: number; pxPerFrame: number } => ({
  jumps: jumps / CHOICES,
  pxPerFrame: way / labelFrames,
});

/** `every`: 1 as the look document measured, places looked for in each frame; more where they are looked for at rests only, as on the stage. */
const orbited = (count: number, path: Path, every: number): ReturnType<typeof meanOf> => {
  const sum = none();
  for (let seed = 1; seed <= CHOICES; seed += 1) {
    const fonts = fontsFor(15);
    const extents = namesOf(someBones(count, seed), 'patient').map((label) => ({
      ...label,
      ...sizeOf(label, fonts, (text, { px }) => text.length * px * 0.5),
      centre: mesh.ranges.find(({ bone }) => bone === label.id)?.centre ?? [0, 0, 0],
    }));
    const column = 38 + Math.max(...extents.map(({ width }) => width));
    const fitted = fitCamera(whole, { azimuthRad: from, elevationRad }, size, {
      left: column,
      right: column,
      top: 16,
      bottom: 16,
    });
    let before: readonly PlacedLabel[] = [];
    for (let frame = 0; frame < FRAMES; frame += 1) {
      const camera = { ...fitted, azimuthRad: azimuthAt(path, frame) };
      const basis = basisOf(camera);
      const items = extents.map(({ id, width, height, priority, centre }): LabelItem => {
        const [x, y] = project(camera, basis, size, centre);
        return { id, width, height, priority, prefer: null, anchor: [x, y] };
      });
      const placed = frame % every === 0 ? layout(items, { mode: 'sides', ...size, pad: 12 }, before) : before;
      addMoves(sum, before, placed);
      sum.labelFrames += placed.length;
      before = placed;
    }
  }
  return meanOf(sum);
};

describe('to and fro by 20 degrees, placed anew in every frame', () => {
  it.each([
    { count: 8, jumps: 25, pxPerFrame: 0.78 },
    { count: 12, jumps: 27, pxPerFrame: 0.56 },
    { count: 16, jumps: 18, pxPerFrame: 0.43 },
  ])('$count labels jump no more than $jumps times and move no more than $pxPerFrame px a frame', (lazy) => {
    const moved = orbited(lazy.count, 'to and fro', 1);
    expect(moved.jumps).toBeLessThanOrEqual(lazy.jumps);
    expect(moved.pxPerFrame).toBeLessThanOrEqual(lazy.pxPerFrame);
  });
});

describe('a full turn with twelve rests', () => {
  // 1.4 px and 82 jumps when this was written. In every frame anew it would be 2.3 px and 144 jumps: these bones, seen from 24 degrees
  // above, change their order more often than the document's points did, whose lazy layout jumped 61 times. Its fresh one, 108.
  it('moves 12 labels no more than 1.71 px a frame, and jumps less often than a layout that keeps no place', () => {
    const moved = orbited(12, 'full turn', 30);
    expect(moved.pxPerFrame).toBeLessThanOrEqual(1.71);
    expect(moved.jumps).toBeLessThan(108);
  });
});
