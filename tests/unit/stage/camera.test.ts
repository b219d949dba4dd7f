import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  basisOf,
  between,
  type Camera,
  fitCamera,
  keepInside,
  orbit,
  pan,
  project,
  rayAt,
  zoomAbout,
} from '../../../src/stage/camera/camera';
import { anglesOf, VIEW_ANGLES } from '../../../src/stage/camera/views';
import { scaleBar } from '../../../src/stage/scale-bar';
import { cross, dot, radians, subtract, type Vec3 } from '../../../src/units';

const size = { width: 900, height: 600 };
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const cameras: fc.Arbitrary<Camera> = fc.record({
  target: fc.tuple(number(-40, 40), number(0, 90), number(0, 240)) as fc.Arbitrary<Vec3>,
  azimuthRad: number(-4, 4),
  elevationRad: number(-Math.PI / 2, Math.PI / 2),
  mmPerPx: number(0.05, 1),
});

describe('the camera', () => {
  it('has a right-handed basis of unit vectors, at the poles too', () => {
    fc.assert(
      fc.property(cameras, (camera) => {
        const { right, up, eye } = basisOf(camera);
        expect(Math.hypot(...subtract(cross(right, up), eye))).toBeLessThan(1e-9);
        for (const v of [right, up, eye]) expect(dot(v, v)).toBeCloseTo(1, 9);
      }),
    );
  });

  it('looks at a right foot from its outer side with the toes at the right', () => {
    const camera: Camera = { target: [0, 0, 0], azimuthRad: radians(-90), elevationRad: 0, mmPerPx: 1 };
    const [x, y] = project(camera, basisOf(camera), size, [0, 10, 100]);
    expect([x, y]).toEqual([550, 290]);
  });

  it('sends rays through the pixels its points fall on', () => {
    fc.assert(
      fc.property(cameras, number(0, 900), number(0, 600), (camera, x, y) => {
        const { from } = rayAt(camera, size, x, y);
        const [px, py] = project(camera, basisOf(camera), size, from);
        expect(px).toBeCloseTo(x, 6);
        expect(py).toBeCloseTo(y, 6);
      }),
    );
  });

  it('zooms about the pixel under the hand', () => {
    fc.assert(
      fc.property(cameras, number(0, 900), number(0, 600), number(0.6, 1.6), (camera, x, y, factor) => {
        const p = rayAt(camera, size, x, y).from;
        const closer = zoomAbout(camera, size, factor, x, y);
        const [px, py] = project(closer, basisOf(closer), size, p);
        expect(Math.hypot(px - x, py - y)).toBeLessThan(1e-6);
      }),
    );
  });

  it('pans as the hand moves', () => {
    fc.assert(
      fc.property(cameras, number(-50, 50), number(-50, 50), (camera, dx, dy) => {
        const before = project(camera, basisOf(camera), size, [0, 0, 0]);
        const moved = pan(camera, dx, dy);
        const after = project(moved, basisOf(moved), size, [0, 0, 0]);
        expect(after[0] - before[0]).toBeCloseTo(dx, 6);
        expect(after[1] - before[1]).toBeCloseTo(dy, 6);
      }),
    );
  });

  it('never turns over the pole and never loses the foot', () => {
    const bounds = { min: [-45, 0, 0] as Vec3, max: [45, 90, 240] as Vec3 };
    fc.assert(
      fc.property(
        cameras,
        fc.array(fc.tuple(fc.constantFrom('orbit', 'pan', 'zoom'), number(-400, 400), number(-400, 400))),
        (start, steps) => {
          let camera = start;
          for (const [kind, x, y] of steps) {
            const next =
              kind === 'orbit'
                ? orbit(camera, x, y)
                : kind === 'pan'
                  ? pan(camera, x, y)
                  : zoomAbout(camera, size, Math.exp(x / 100), 0, 0);
            camera = keepInside(next, bounds, 0.8);
            expect(Math.abs(camera.elevationRad)).toBeLessThanOrEqual(Math.PI / 2);
            expect(camera.mmPerPx).toBeLessThanOrEqual(0.8);
            const [cx, cy] = project(camera, basisOf(camera), size, camera.target);
            expect([cx, cy]).toEqual([450, 300]);
            camera.target.forEach((value, k) => {
              expect(value).toBeGreaterThanOrEqual((bounds.min[k] ?? 0) - 1e-9);
              expect(value).toBeLessThanOrEqual((bounds.max[k] ?? 0) + 1e-9);
            });
          }
        },
      ),
    );
  });

  it('fits what it is given between its insets, whatever the view', () => {
    const insets = { left: 100, right: 60, top: 50, bottom: 90 };
    const clouds = fc.array(fc.tuple(number(-50, 50), number(0, 90), number(0, 250)), { minLength: 3, maxLength: 30 });
    fc.assert(
      fc.property(clouds, fc.constantFrom(...Object.values(VIEW_ANGLES)), (cloud, angles) => {
        const camera = fitCamera(cloud.flat(), angles, size, insets);
        const basis = basisOf(camera);
        for (const p of cloud) {
          const [x, y] = project(camera, basis, size, p);
          expect(x).toBeGreaterThanOrEqual(insets.left - 1e-6);
          expect(x).toBeLessThanOrEqual(size.width - insets.right + 1e-6);
          expect(y).toBeGreaterThanOrEqual(insets.top - 1e-6);
          expect(y).toBeLessThanOrEqual(size.height - insets.bottom + 1e-6);
        }
      }),
    );
  });

  it('goes from one view to another by the shorter turn and arrives', () => {
    fc.assert(
      fc.property(cameras, cameras, (a, b) => {
        const end = between(a, b, 1);
        const [p, q] = [basisOf(end).eye, basisOf(b).eye];
        expect(Math.hypot(...subtract(p, q))).toBeLessThan(1e-6);
        expect(Math.abs(end.azimuthRad - a.azimuthRad)).toBeLessThanOrEqual(Math.PI + 1e-9);
        expect(end.mmPerPx).toBeCloseTo(b.mmPerPx, 9);
      }),
    );
  });

  it('sees a left foot as the mirror image of a right one', () => {
    const point: Vec3 = [12, 30, 80];
    const mirrored: Vec3 = [-12, 30, 80];
    const of = (mirror: boolean): Camera => ({ target: [0, 0, 0], mmPerPx: 0.5, ...anglesOf('outer', mirror) });
    const [x, y, depth] = project(of(false), basisOf(of(false)), size, point);
    const [mx, my, mDepth] = project(of(true), basisOf(of(true)), size, mirrored);
    expect(mx).toBeCloseTo(size.width - x, 9);
    expect(my).toBeCloseTo(y, 9);
    expect(mDepth).toBeCloseTo(depth, 9);
  });
});

describe('the scale bar', () => {
  it('is a round length that is as long as it says', () => {
    fc.assert(
      fc.property(number(0.02, 0.9), (mmPerPx) => {
        const { mm, px } = scaleBar(mmPerPx);
        expect(px * mmPerPx).toBeCloseTo(mm, 9);
        expect(px).toBeLessThanOrEqual(110);
        expect([1, 2, 5, 10, 20, 50, 100]).toContain(mm);
      }),
    );
  });
});
