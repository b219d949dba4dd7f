/** What is done to one picture is done to the other: the same, or in the mirror. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { basisOf, type Camera, orbit, pan, project, type Size, zoomAbout } from '../../../../src/stage/camera/camera';
import { VIEW_ANGLES } from '../../../../src/stage/camera/views';
import { linked, mirrored } from '../../../../src/stage/pair/linked';
import type { Vec3 } from '../../../../src/units';

const SIZE: Size = { width: 400, height: 300 };
const START: Camera = { ...VIEW_ANGLES.inner, target: [3, 40, 110], mmPerPx: 0.6 };

/** A picture that keeps nothing but its eye. */
const picture = (start: Camera) => {
  const self = {
    eye: start as Camera | null,
    set: (change: (camera: Camera) => Camera) => {
      if (self.eye !== null) self.eye = change(self.eye);
    },
    orbit: (x: number, y: number) => self.set((camera) => orbit(camera, -x * 0.01, y * 0.01)),
    pan: (x: number, y: number) => self.set((camera) => pan(camera, x, y)),
    zoom: (factor: number, x = 200, y = 150) => self.set((camera) => zoomAbout(camera, SIZE, factor, x, y)),
    follow: (camera: Camera) => {
      self.eye = camera;
    },
  };
  return self;
};

const seen = (camera: Camera | null, point: Vec3): readonly number[] =>
  camera === null ? [] : project(camera, basisOf(camera), SIZE, point).slice(0, 2);

const px = fc.integer({ min: -60, max: 60 });
const act = fc.oneof(
  fc.tuple(fc.constant('orbit' as const), px, px),
  fc.tuple(fc.constant('pan' as const), px, px),
  fc.tuple(fc.constant('zoom' as const), fc.integer({ min: 100, max: 300 }), fc.integer({ min: 50, max: 250 })),
);
const point = fc.tuple(px, px, px);

const doAll = (
  hands: ReturnType<typeof linked>,
  acts: readonly (readonly ['orbit' | 'pan' | 'zoom', number, number])[],
) => {
  for (const [what, x, y] of acts) {
    if (what === 'zoom') hands.zoom(1.1, x, y);
    else hands[what](x, y);
  }
};

describe('two pictures under one hand', () => {
  it('see the same from the same place where both are of one side', () => {
    fc.assert(
      fc.property(fc.array(act, { minLength: 1, maxLength: 6 }), point, (acts, at) => {
        const [first, second] = [picture(START), picture(START)];
        doAll(linked(first, second, false), acts);
        expect(seen(second.eye, at)).toEqual(seen(first.eye, at));
      }),
    );
  });

  it('show the mirrored foot as the mirror image where they are of two sides', () => {
    fc.assert(
      fc.property(fc.array(act, { minLength: 1, maxLength: 6 }), point, (acts, [x, y, z]) => {
        const [first, second] = [picture(START), picture(mirrored(START))];
        doAll(linked(first, second, true), acts);
        const [firstX = 0, firstY = 0] = seen(first.eye, [x, y, z]);
        const [secondX = 0, secondY = 0] = seen(second.eye, [-x, y, z]);
        // Two roundings of a float's 1e-13 part of some hundred px.
        expect(secondX).toBeCloseTo(SIZE.width - firstX, 8);
        expect(secondY).toBeCloseTo(firstY, 8);
      }),
    );
  });

  it('turn from either side, and choose no bone', () => {
    const [first, second] = [picture(START), picture(mirrored(START))];
    const hands = linked(second, first, true);
    hands.orbit(30, 0);
    expect(first.eye?.azimuthRad).toBeCloseTo(START.azimuthRad + 0.3, 12);
    expect(hands.pick(200, 150)).toBeNull();
  });
});
