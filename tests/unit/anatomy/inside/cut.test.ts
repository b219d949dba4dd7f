import { describe, expect, test } from 'vitest';
import { cutBone, type InsideOfShape } from '../../../../src/anatomy/inside';
import { dot, subtract, type Vec3 } from '../../../../src/units';
import { cutOf, footOf, shape, shelled, tubed, X, Y, Z } from '../../../tools/inside-material';
import { barMesh } from '../../../tools/tubes';

const spreadAlong = (loop: readonly Vec3[], direction: Vec3): readonly [number, number] => {
  const s = loop.map((p) => dot(p, direction));
  return [Math.min(...s), Math.max(...s)];
};

/** A round bar of radius 8 along Z from 0 to 60, centre (0, 20): 96 flat sides, at most 0.005 mm inside the circle. */
const round = footOf(barMesh({ lengthMm: 60, semi: () => [8, 8], around: 96, along: 6, from: [0, 20, 0] }));
const middle: Vec3 = [0, 20, 30];

describe('cutBone, a bar of radius 8 under a shell of 2 mm', () => {
  test('across: a ring of 2 mm', () => {
    const { inner, properties } = cutOf(cutBone(round, 'metatarsal5', middle, Z, shelled(2)));
    expect(inner).toHaveLength(1);
    for (const [x, y] of inner[0] ?? []) {
      const radius = Math.hypot(x, y - 20);
      expect(radius).toBeGreaterThan(5.994);
      expect(radius).toBeLessThan(6.001);
    }
    expect(properties.inner?.areaMm2).toBeCloseTo(36 * Math.PI, 0);
    const ring = (Math.PI / 4) * (8 ** 4 - 6 ** 4);
    expect(properties.cortex.iAcrossMm4 / ring).toBeCloseTo(1, 2);
    expect(properties.cortex.iUpMm4 / ring).toBeCloseTo(1, 2);
    expect(subtract(properties.cortex.centroid, middle).map((d) => Math.abs(d) < 0.01)).toEqual([true, true, true]);
  });

  test('aslant at 60 degrees: everything is twice as long one way, the cortex too', () => {
    const normal: Vec3 = [0, Math.sin(Math.PI / 3), Math.cos(Math.PI / 3)];
    const { inner, outer, axes } = cutOf(cutBone(round, 'metatarsal5', middle, normal, shelled(2)));
    const [low, high] = spreadAlong(inner[0] ?? [], axes.up);
    const [outerLow, outerHigh] = spreadAlong(outer[0] ?? [], axes.up);
    expect(high - low).toBeCloseTo(24, 1);
    expect(outerHigh - high).toBeCloseTo(4, 1);
    expect(low - outerLow).toBeCloseTo(4, 1);
    const [left, right] = spreadAlong(inner[0] ?? [], X);
    expect(right - left).toBeCloseTo(12, 1);
  });

  test('along: a hollow that stops 2 mm before the ends', () => {
    const { inner, properties } = cutOf(cutBone(round, 'metatarsal5', middle, X, shelled(2)));
    expect(spreadAlong(inner[0] ?? [], Z).map((z) => Math.round(z * 100) / 100)).toEqual([2, 58]);
    // Sharp corners are cut off within one step of the grid.
    expect(properties.inner?.areaMm2).toBeGreaterThan(12 * 56 - 0.5);
    expect(properties.inner?.areaMm2).toBeLessThan(12 * 56);
  });

  test('too slender for its cortex: no canal, all cortex', () => {
    const wire = footOf(barMesh({ lengthMm: 60, semi: () => [1.9, 4], around: 48, along: 6, from: [0, 20, 0] }));
    const { inner, properties } = cutOf(cutBone(wire, 'metatarsal5', middle, Z, shelled(2)));
    expect(inner).toEqual([]);
    expect(properties.inner).toBeNull();
    expect(properties.cortex).toEqual(properties.outer);
  });

  test('a plane beside the bone cuts nothing; a bone that is not there is an error', () => {
    expect(cutBone(round, 'metatarsal5', [0, 20, 70], Z, shelled(2))).toBeNull();
    expect(() => cutBone(round, 'metatarsal1', middle, Z, shape)).toThrow('metatarsal1');
    expect(() =>
      cutBone(round, 'metatarsal5', middle, Z, { ...shelled(2), inside: { ...shelled(2).inside, shells: [] } }),
    ).toThrow('inside of metatarsal5');
  });
});

describe('cutBone, a tube', () => {
  const oval = footOf(barMesh({ lengthMm: 60, semi: () => [7, 9], around: 96, along: 30, from: [0, 20, 0] }));

  test('each side has its own cortex; lateral is -X on the right foot', () => {
    const cortex = { dorsal: '1', plantar: '2', medial: '1.5', lateral: '2.5' };
    const tube = tubed([
      { name: 'metaphysis', at: 0.1, cortex },
      { name: 'neck', at: 0.9, cortex },
    ]);
    const { inner } = cutOf(cutBone(oval, 'metatarsal5', middle, Z, tube));
    const [bottom, top] = spreadAlong(inner[0] ?? [], Y);
    const [outside, inside] = spreadAlong(inner[0] ?? [], X);
    expect([29 - top, bottom - 11, 7 - inside, outside + 7]).toEqual(
      [1, 2, 1.5, 2.5].map((mm) => expect.closeTo(mm, 1)),
    );
  });

  test('the cortex changes evenly between its stations', () => {
    const tube = tubed([
      { name: 'metaphysis', at: 0, cortex: '1' },
      { name: 'neck', at: 1, cortex: '3' },
    ]);
    for (const z of [12, 27, 48]) {
      const { inner } = cutOf(cutBone(oval, 'metatarsal5', [0, 20, z], Z, tube));
      const [low, high] = spreadAlong(inner[0] ?? [], Y);
      expect(18 - (high - low)).toBeCloseTo(2 * (1 + z / 30), 1);
    }
  });

  test('a measured canal is left where it was measured, as wide as its band says', () => {
    const stations = [
      { name: 'metaphysis', at: 0.1, cortex: '1' },
      { name: 'midshaft', at: 0.5, cortex: 'fromCanal' },
      { name: 'neck', at: 0.9, cortex: '1' },
    ];
    const widths = [
      { bone: 'metatarsal5' as const, across: [4, 5, 6], upDown: [7, 8, 17.5] },
    ] as InsideOfShape['inside']['canals'][number]['widths'];
    const tube = tubed(stations, [{ source: 'nobody', at: 0.5, widths }]);
    // 17.5 mm hardly fit into a bone of 18: a wall as thin as the thinnest figure is left. What does not fit is refused (canal.test).
    const wanted = { thin: [6, 16], usual: [5, 8], thick: [4, 7] } as const;
    for (const wall of ['thin', 'usual', 'thick'] as const) {
      const { inner } = cutOf(cutBone(oval, 'metatarsal5', middle, Z, tube, wall));
      const spread = [X, Y].map((d) => {
        const [low, high] = spreadAlong(inner[0] ?? [], d);
        return high - low;
      });
      expect(spread).toEqual(wanted[wall].map((mm) => expect.closeTo(mm, 1)));
    }
  });
});
