/** When a picture is fitted again: a foot that has grown out of its plate or shrunk on it, never one that stands where it should. */
import { describe, expect, it } from 'vitest';
import { VIEWS } from '../../../src/session/types';
import { pan } from '../../../src/stage/camera/camera';
import {
  frameAsTurned,
  frameView,
  isOff,
  isWhole,
  type LabelSpace,
  type Shown,
  shownOf,
  shownWith,
} from '../../../src/stage/camera/framing';
import { plateMesh } from '../../../src/stage/draw/plate-mesh';
import type { Vec3 } from '../../../src/units';
import { drawnFoot as foot } from '../../tools/explained';

/** A foot of so many times the size: what the builder makes is checked elsewhere. */
const sized = (k: number): Shown => {
  const mesh = plateMesh(foot.bones);
  const outline = { ...foot.outline, positions: foot.outline.positions.map((x) => k * x) };
  return shownOf({ ...mesh, positions: mesh.positions.map((x) => k * x) }, outline);
};
const usual = sized(1);
const space: LabelSpace = { widest: 160, tallest: 20, totalWidth: 620 };
const PLATES = [
  { width: 948, height: 640 },
  { width: 670, height: 540 },
  { width: 364, height: 260 },
] as const;
const WHOLE = VIEWS.filter((view) => view !== 'close');

describe.each(PLATES)('on a plate of $width x $height', (size) => {
  const cameraFor = (shown: Shown, view: (typeof VIEWS)[number]) =>
    frameView(shown, view, 'metatarsal5', false, size, space).camera;

  it.each(WHOLE)('%s: feet of 200 and of 320 mm are fitted again, one of 252 mm is not', (view) => {
    const camera = cameraFor(usual, view);
    expect(isOff(camera, camera, size)).toBe(false);
    expect(isOff(camera, cameraFor(sized(252 / 250), view), size)).toBe(false);
    expect(isOff(camera, cameraFor(sized(200 / 250), view), size)).toBe(true);
    expect(isOff(camera, cameraFor(sized(320 / 250), view), size)).toBe(true);
  });

  it('one that stands beside its place is off', () => {
    const camera = cameraFor(usual, 'outer');
    expect(isOff(pan(camera, 0.2 * size.width, 0), camera, size)).toBe(true);
  });

  it('turned by hand it is whole, leaves the plate when it grows, and is made whole from where it is seen', () => {
    const turned = { ...cameraFor(usual, 'outer'), azimuthRad: -0.7, elevationRad: 0.5 };
    const mine = frameAsTurned(usual, turned, false, size, 'ends', space);
    expect(isWhole(usual, mine, false, size)).toBe(true);
    const grown = sized(1.7);
    expect(isWhole(grown, mine, false, size)).toBe(false);
    const again = frameAsTurned(grown, mine, false, size, 'ends', space);
    expect(isWhole(grown, again, false, size)).toBe(true);
    expect([again.azimuthRad, again.elevationRad]).toEqual([-0.7, 0.5]);
  });

  it('lines that reach beyond the foot are framed with it', () => {
    const line: readonly Vec3[] = [
      [0, 20, -140],
      [0, 260, 40],
    ];
    const withLine = shownWith(usual, line);
    expect(isWhole(withLine, cameraFor(usual, 'inner'), false, size)).toBe(false);
    expect(isWhole(withLine, cameraFor(withLine, 'inner'), false, size)).toBe(true);
    expect(shownWith(usual, [])).toBe(usual);
  });
});
