/** The zones' numbers in every named view, at the sizes of plates that people have: all three or none, with nothing over them. */
import { describe, expect, it } from 'vitest';
import { VIEWS } from '../../../../src/session/types';
import { frameView, labelSpace, NARROW_PX, shownOf } from '../../../../src/stage/camera/framing';
import { NO_LABELS } from '../../../../src/stage/overlay/labelled';
import { allShapes, overlayOf } from '../../../../src/stage/overlay/overlay';
import { showingOf } from '../../../../src/stage/showing';
import type { Point } from '../../../../src/stage/types';
import { content, drawnFoot as foot } from '../../../tools/explained';
import { plainShowing } from '../plain-showing';
import { mesh, withBreak } from './real-foot';

/** Plates as the pages cut them: desk, tablet, phone, the patient's screen. */
const PLATES = [
  { width: 948, height: 640, large: false },
  { width: 670, height: 540, large: false },
  { width: 364, height: 260, large: false },
  { width: 1374, height: 546, large: true },
  { width: 956, height: 450, large: true },
  { width: 364, height: 260, large: true },
] as const;
const shown = shownOf(mesh, foot.outline);
const broken = withBreak();

const drawn = (plate: (typeof PLATES)[number], view: (typeof VIEWS)[number], reader: 'patient' | 'study') => {
  const narrow = plate.width < NARROW_PX;
  const labelPx = (narrow ? 14 : 15) * (plate.large ? 1.35 : 1);
  const showing = showingOf({ ...plainShowing(foot, content), explanation: broken, reader, labelPx, narrow });
  const { camera, mode } = frameView(shown, view, 'metatarsal5', false, plate, labelSpace(showing));
  const overlay = overlayOf({ ...showing, mesh, camera, size: plate, mode, before: NO_LABELS, atRest: true });
  return { overlay, shapes: allShapes(overlay), fonts: showing.fonts };
};

const numbersIn = ({ shapes }: ReturnType<typeof drawn>) =>
  shapes.flatMap((shape) => (shape.kind === 'text' && /^\d$/.test(shape.text) ? [shape] : []));

/** Points every pixel or so along a leader. */
const walked = (points: readonly Point[]): Point[] =>
  points.slice(1).flatMap(([bx, by], i) => {
    const [ax, ay] = points[i] ?? [bx, by];
    const steps = Math.ceil(Math.hypot(bx - ax, by - ay));
    return Array.from({ length: steps + 1 }, (_, k): Point => {
      const t = steps === 0 ? 0 : k / steps;
      return [ax + (bx - ax) * t, ay + (by - ay) * t];
    });
  });

const SCENES = PLATES.flatMap((plate) =>
  VIEWS.flatMap((view) =>
    (['patient', 'study'] as const).map((reader) => ({
      name: `${plate.width} x ${plate.height}${plate.large ? ', large' : ''}, ${view}, ${reader}`,
      scene: drawn(plate, view, reader),
    })),
  ),
);

describe('the numbers of the zones', () => {
  it('stand there all three or not at all, and are seen on plates of every kind', () => {
    const counts = SCENES.map(({ name, scene }) => [name, numbersIn(scene).length] as const);
    for (const [name, count] of counts) expect([0, 3], name).toContain(count);
    expect(counts.filter(([, count]) => count === 3).length).toBeGreaterThan(12);
  });

  it('have no leader and no label over them', () => {
    for (const { name, scene } of SCENES) {
      for (const { at, font } of numbersIn(scene)) {
        const middle: Point = [at[0], at[1] - 0.36 * font.px];
        const half = 0.72 * font.px;
        const isOn = ([x, y]: Point): boolean => Math.abs(x - middle[0]) < half && Math.abs(y - middle[1]) < half;
        for (const { id, leader } of scene.overlay.memory.placed)
          expect(walked(leader).some(isOn), `${name}: ${id} over a number`).toBe(false);
        const areas = scene.overlay.labels.flatMap(({ shapes }) => shapes.filter((shape) => shape.kind === 'area'));
        for (const { points } of areas) {
          const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
          const apart =
            Math.min(...xs) > middle[0] + half ||
            Math.max(...xs) < middle[0] - half ||
            Math.min(...ys) > middle[1] + half ||
            Math.max(...ys) < middle[1] - half;
          expect(apart, `${name}: a label over a number`).toBe(true);
        }
      }
    }
  });
});
