/** The way of the load: which parts are drawn, how wide, where, and what lies over them. */
import { describe, expect, it } from 'vitest';
import { motionsOf } from '../../../src/anatomy/stance/stance';
import type { Foot, FootParameters, PoseName } from '../../../src/anatomy/types';
import { readShape } from '../../../src/cli/read-shape';
import { type ActivityId, idOf, type Reader } from '../../../src/ids';
import { placingOf } from '../../../src/mechanics/foot/placing';
import { VIEWS } from '../../../src/session/types';
import { basisOf, project } from '../../../src/stage/camera/camera';
import { frameView, labelSpace, NARROW_PX, shownOf } from '../../../src/stage/camera/framing';
import { outlineOf } from '../../../src/stage/labels/outline';
import { blocks, cord } from '../../../src/stage/overlay/cord-and-blocks';
import { piecesOutside } from '../../../src/stage/overlay/cut';
import { NO_LABELS } from '../../../src/stage/overlay/labelled';
import { pathShapes } from '../../../src/stage/overlay/load-path';
import { overlayOf } from '../../../src/stage/overlay/overlay';
import type { Shape } from '../../../src/stage/overlay/shapes';
import { loadPathOf } from '../../../src/stage/scene/load-path';
import { showingOf } from '../../../src/stage/showing';
import type { Point } from '../../../src/stage/types';
import { length, subtract, type Vec3 } from '../../../src/units';
import { LEAST_WIDTH, mainLoadsOf, widestOf } from '../../../src/wording/load-scale';
import { content, demoOnDefaultFoot, explained, drawnFoot as foot } from '../../tools/explained';
import { mesh } from './labels/real-foot';
import { plainShowing } from './plain-showing';

const explanation = explained(demoOnDefaultFoot('handball-zone-2'));
const { loads } = explanation;
if (loads === null) throw new Error('the demo has no loads');

/** Of a cut only the order is told; walking has sizes. */
const walking = explained(demoOnDefaultFoot('handball-zone-2'), { activity: idOf<ActivityId>('walking') });

const pathFor = (few: boolean, on = foot, of = explanation) => {
  const path = loadPathOf({ foot: on, shape: content.shape, explanation: of, few });
  if (path === null) throw new Error('no way of the load');
  return path;
};
const near = (a: Vec3 | undefined, b: Vec3 | undefined): number =>
  a === undefined || b === undefined ? Number.NaN : length(subtract(a, b));

describe('the parts drawn', () => {
  it('are parts of the explanation, with its sense and force', () => {
    const { parts } = pathFor(false);
    expect(parts.length).toBeGreaterThan(20);
    for (const { id, kind, sense, forceN } of parts)
      expect(loads.told.path).toContainEqual(expect.objectContaining({ id, kind, sense, forceN }));
  });

  it('are as wide as the square root of their force, never narrower than can be read', () => {
    const widest = widestOf(loads);
    for (const { width, forceN } of pathFor(false).parts) {
      const asked = Math.sqrt(forceN / widest);
      expect(width).toBeCloseTo(Math.max(LEAST_WIDTH, asked), 10);
      expect(width).toBeLessThanOrEqual(1);
    }
  });

  it('run from the leg to the ground whatever they carry: leg, talus, five rays, fascia, heel cord, pads', () => {
    for (const few of [true, false]) {
      const ids = pathFor(few).parts.map(({ kind, id }) => `${kind} ${id}`);
      expect(ids).toEqual(expect.arrayContaining(['leg tibia', 'joint talus-navicular', 'tendon achilles']));
      for (const ray of [1, 2, 3, 4, 5]) expect(ids).toContain(`bone metatarsal${ray}`);
      expect(ids.some((id) => id.startsWith('tie fascia'))).toBe(true);
      expect(ids.some((id) => id.startsWith('ground'))).toBe(true);
    }
  });

  it('for a patient are put together: one fascia, one ground a place, with the sum of their forces', () => {
    const { parts } = pathFor(true);
    const sums = mainLoadsOf(loads);
    const fascia = parts.filter(({ kind }) => kind === 'tie');
    expect(fascia.map(({ forceN }) => forceN)).toEqual([expect.closeTo(sums.fasciaN, 6)]);
    expect(sums.fasciaN).toBeCloseTo(loads.told.fasciaN, -1);
    const ground = parts.filter(({ kind }) => kind === 'ground').reduce((sum, { forceN }) => sum + forceN, 0);
    expect(ground).toBeCloseTo(sums.forefootN + sums.outerEdgeN + sums.heelN, 6);
    expect(parts.length).toBeLessThan(pathFor(false).parts.length);
  });

  it('leave out a joint that is pushed across itself more than together: it is neither pressed nor pulled', () => {
    const across = loads.told.joints.filter(({ normalN, shearN }) => shearN > Math.abs(normalN));
    expect(across.length).toBeGreaterThan(0);
    const ids = pathFor(false).parts.map(({ id }) => id);
    for (const { id } of across) expect(ids).not.toContain(id);
  });

  it('are none where nothing was solved', () => {
    const plain = { ...explanation, loads: null };
    expect(loadPathOf({ foot, shape: content.shape, explanation: plain, few: false })).toBeNull();
  });
});

describe('numbers', () => {
  it('are two or three, in body weights, of the told run', () => {
    const told = walking.loads?.told;
    if (told === undefined) throw new Error('walking has loads');
    const { numbers } = pathFor(true, foot, walking);
    expect(numbers.map(({ of }) => of)).toEqual(['tibiaN', 'forefootN', 'achillesN']);
    expect(numbers[0]?.bodyWeights).toBeCloseTo(told.tibiaN / told.weightN, 6);
    expect(numbers[2]?.bodyWeights).toBeCloseTo(told.achillesN / told.weightN, 6);
  });

  it('are none where only the order of the load may be read', () => {
    expect(pathFor(true).numbers).toEqual([]);
  });
});

describe('on a foot held or shaped otherwise', () => {
  const shape = readShape();
  const usual = foot.parameters;
  const held = (parameters: FootParameters, pose: PoseName): Foot => ({
    ...foot,
    parameters,
    pose,
    reference: { ...foot.reference, motions: motionsOf(shape, parameters, pose) },
  });

  it.each([
    ['a heel raised', usual, 'heelRaise'],
    ['a high arch', { ...usual, arch: 1 }, 'standing'],
    ['a low arch seated', { ...usual, arch: -1 }, 'seated'],
  ] as const)('%s: each place goes along with its bone, as the frame of the foot carries it', (_, parameters, pose) => {
    const placing = placingOf(shape, foot, parameters, pose);
    let moved = 0;
    for (const part of pathFor(false, held(parameters, pose)).parts) {
      const told = loads.told.path.find(({ id, kind }) => id === part.id && kind === part.kind);
      part.points.forEach((point, i) => {
        const place = told?.points[i];
        if (place === undefined) throw new Error(`${part.id} has more places than it was told with`);
        expect(near(point, placing.point(place)), part.id).toBeLessThan(1e-6);
        moved = Math.max(moved, near(point, place.at));
      });
    }
    expect(moved).toBeGreaterThan(2);
  });

  it('the heel cord pulls up the leg, and the ground still presses upwards', () => {
    const { parts } = pathFor(false, held(usual, 'heelRaise'));
    const up = placingOf(shape, foot, usual, 'heelRaise').direction('tibia', [0, 1, 0]);
    for (const part of parts.filter(({ kind }) => kind === 'leg')) expect(near(part.up, up)).toBeLessThan(1e-9);
    for (const part of parts.filter(({ kind }) => kind === 'ground')) expect(part.up).toEqual([0, 1, 0]);
  });
});

const PLATES = [
  { width: 948, height: 640 },
  { width: 670, height: 540 },
  { width: 364, height: 260 },
] as const;

const drawn = (plate: (typeof PLATES)[number], view: (typeof VIEWS)[number], reader: Reader) => {
  const narrow = plate.width < NARROW_PX;
  const showing = showingOf({
    ...plainShowing(foot, content),
    explanation: walking,
    question: 'how',
    reader,
    labelPx: narrow ? 14 : 15,
    narrow,
  });
  const shown = shownOf(mesh, foot.outline);
  const { camera, mode } = frameView(shown, view, 'metatarsal5', false, plate, labelSpace(showing));
  const frame = { ...showing, mesh, camera, size: plate, mode, before: NO_LABELS, atRest: true };
  const without = overlayOf({ ...frame, scene: { ...showing.scene, loadPath: null } });
  return { overlay: overlayOf(frame), without, loadText: showing.loadText };
};

const pointsOf = (shape: Shape): readonly Point[] =>
  'points' in shape ? shape.points : 'at' in shape ? [shape.at] : [];

describe('the picture', () => {
  const SCENES = PLATES.flatMap((plate) =>
    VIEWS.flatMap((view) =>
      (['patient', 'study'] as const).map((reader) => ({
        name: `${plate.width}, ${view}, ${reader}`,
        ...drawn(plate, view, reader),
      })),
    ),
  );
  const numbersIn = ({ overlay }: (typeof SCENES)[number]) =>
    overlay.marks.flatMap((shape) => (shape.kind === 'text' && shape.text.includes('body weight') ? [shape.text] : []));

  it('tells pulled from pressed without colour: three threads against blocks', () => {
    const way: Point[] = [
      [0, 0],
      [100, 0],
    ];
    const threads = cord(way, { widthPx: 10, heads: 'none' }).filter((s) => s.kind === 'line' && s.colour === 'pulled');
    expect(threads).toHaveLength(3);
    for (const thread of threads) expect(pointsOf(thread).map(([x]) => x)).toEqual([0, 100]);
    const row = blocks(way, { widthPx: 10, heads: 'none' }).filter((s) => s.kind === 'line' && s.colour === 'pressed');
    expect(row.length).toBeGreaterThan(5);
    const ends = row.map((block) => pointsOf(block).map(([x]) => x));
    for (const [i, [from]] of ends.entries()) if (i > 0) expect(from).toBeGreaterThan(ends[i - 1]?.at(-1) ?? 0);
  });

  it('has the tibia’s number wherever the leg is in the picture of the whole foot from a side', () => {
    const sides = SCENES.filter(({ name }) => /outer|inner/.test(name) && !name.startsWith('364'));
    for (const scene of sides)
      expect(numbersIn(scene), scene.name).toContain(
        scene.loadText({
          of: 'tibiaN',
          bodyWeights: (walking.loads?.told.tibiaN ?? Number.NaN) / (walking.loads?.told.weightN ?? Number.NaN),
        }),
      );
  });

  it('says of a sum what it is the sum of: it stands at one arrow of several', () => {
    const sums = SCENES.flatMap(numbersIn).filter((text) => text.includes(':'));
    expect(sums.length).toBeGreaterThan(0);
    for (const text of sums) expect(text).toMatch(/^(front of the foot|band under the sole): [\d.]+ × body weight$/);
    // Only tibia and heel cord have one arrow each.
    for (const { overlay } of SCENES)
      expect(
        numbersIn({ overlay } as (typeof SCENES)[number]).filter((text) => !text.includes(':')).length,
      ).toBeLessThanOrEqual(2);
  });

  it('never has more than three numbers, and fewer where it is small', () => {
    for (const scene of SCENES) expect(numbersIn(scene).length, scene.name).toBeLessThanOrEqual(3);
    for (const scene of SCENES.filter(({ name }) => !name.startsWith('948')))
      expect(numbersIn(scene).length, scene.name).toBeLessThanOrEqual(2);
  });

  it('loses no label to the way of the load', () => {
    for (const { name, overlay, without } of SCENES)
      expect(overlay.memory.placed.length, name).toBe(without.memory.placed.length);
  });
});

describe('the bone in question', () => {
  it('has no line of the way of the load over it, in any view', () => {
    const range = mesh.ranges.find(({ bone }) => bone === 'metatarsal5');
    if (range === undefined) throw new Error('no fifth metatarsal');
    const plate = PLATES[0];
    let lines = 0;
    for (const view of VIEWS) {
      const space = { widest: 0, tallest: 0, totalWidth: 0 };
      const { camera } = frameView(shownOf(mesh, foot.outline), view, 'metatarsal5', false, plate, space);
      const basis = basisOf(camera);
      const toScreen = (p: Vec3): Point => {
        const [x, y] = project(camera, basis, plate, p);
        return [x, y];
      };
      const corners = Array.from({ length: range.count }, (_, i) =>
        toScreen([...mesh.positions.subarray(3 * (range.start + i), 3 * (range.start + i) + 3)] as unknown as Vec3),
      );
      const outline = outlineOf(corners);
      const middle = outline.reduce<Point>(
        ([x, y], p) => [x + p[0] / outline.length, y + p[1] / outline.length],
        [0, 0],
      );
      // A line that ends at the outline reaches in by half its width, or by less than a third of the way to the middle.
      const core = outline.map(
        ([x, y]): Point => [middle[0] + (x - middle[0]) * 0.7, middle[1] + (y - middle[1]) * 0.7],
      );
      for (const shape of pathShapes(pathFor(false), {
        toScreen,
        outline,
        mmPerPx: camera.mmPerPx,
        k: 0.5,
        reach: 1,
      })) {
        if (shape.kind !== 'line') continue;
        lines += 1;
        expect(piecesOutside(shape.points, core), view).toEqual([shape.points]);
      }
    }
    expect(lines).toBeGreaterThan(200);
  });
});
