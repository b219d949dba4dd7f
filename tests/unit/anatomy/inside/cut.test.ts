import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boneAxis, fromBone, meshOf, mirrorFoot } from '../../../../src/anatomy';
import { type BoneCut, cutBone, cutOpenBone, type InsideOfShape, openBone } from '../../../../src/anatomy/inside';
import { mapMesh } from '../../../../src/anatomy/mesh';
import { BONE_IDS } from '../../../../src/ids';
import { add, cross, dot, length, normalize, scale, subtract, type Vec3 } from '../../../../src/units';
import { fineFoot, footOf, shape, shelled } from '../../../tools/inside-material';
import { barMesh } from '../../../tools/tubes';
import { distanceTo, isInside } from '../inside';

const spreadAlong = (loop: readonly Vec3[], direction: Vec3): readonly [number, number] => {
  const s = loop.map((p) => dot(p, direction));
  return [Math.min(...s), Math.max(...s)];
};
const cutOf = (cut: BoneCut | null): BoneCut => {
  if (!cut) throw new Error('the plane misses the bone');
  return cut;
};
const X: Vec3 = [1, 0, 0];
const Y: Vec3 = [0, 1, 0];
const Z: Vec3 = [0, 0, 1];

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
    expect(() => cutBone(round, 'metatarsal5', middle, Z, { ...shape, inside: { tubes: [], shells: [] } })).toThrow(
      'inside of metatarsal5',
    );
  });
});

describe('cutBone, a tube', () => {
  const assumed = (mm: number) => ({ band: [mm, mm, mm] as [number, number, number], how: 'assumed' as const });
  const oval = footOf(barMesh({ lengthMm: 60, semi: () => [7, 9], around: 96, along: 30, from: [0, 20, 0] }));
  const tube = (entry: Omit<InsideOfShape['inside']['tubes'][number], 'bone'>): InsideOfShape => ({
    ...shape,
    inside: { shells: [], tubes: [{ bone: 'metatarsal5', ...entry }] },
  });

  test('each side has its own cortex; lateral is -X on the right foot', () => {
    const sides = { dorsal: assumed(1), plantar: assumed(2), medial: assumed(1.5), lateral: assumed(2.5) };
    const stations = [
      { name: 'metaphysis', at: 0.1, cortex: sides },
      { name: 'neck', at: 0.9, cortex: sides },
    ];
    const { inner } = cutOf(cutBone(oval, 'metatarsal5', middle, Z, tube({ stations })));
    const [bottom, top] = spreadAlong(inner[0] ?? [], Y);
    const [outside, inside] = spreadAlong(inner[0] ?? [], X);
    expect([29 - top, bottom - 11, 7 - inside, outside + 7]).toEqual(
      [1, 2, 1.5, 2.5].map((mm) => expect.closeTo(mm, 1)),
    );
  });

  test('the cortex changes evenly between its stations', () => {
    const stations = [
      { name: 'metaphysis', at: 0, cortex: assumed(1) },
      { name: 'neck', at: 1, cortex: assumed(3) },
    ];
    const at = (z: number) => cutOf(cutBone(oval, 'metatarsal5', [0, 20, z], Z, tube({ stations })));
    for (const z of [12, 27, 48]) {
      const [low, high] = spreadAlong(at(z).inner[0] ?? [], Y);
      // The nearest cortex of a bar that thickens lies a little towards its thin end: 1 in 30 aslant.
      expect(18 - (high - low)).toBeCloseTo(2 * (1 + z / 30), 1);
    }
  });

  test('a measured canal is left where it was measured, as wide as its band says', () => {
    const stations = [
      { name: 'metaphysis', at: 0.1, cortex: assumed(1) },
      { name: 'midshaft', at: 0.5, cortex: 'fromCanal' as const },
      { name: 'neck', at: 0.9, cortex: assumed(1) },
    ];
    const canal = {
      at: 0.5,
      across: { band: [4, 5, 6] as [number, number, number], how: 'assumed' as const },
      upDown: { band: [7, 8, 30] as [number, number, number], how: 'assumed' as const },
    };
    const widths = { thin: [6, 16], usual: [5, 8], thick: [4, 7] } as const;
    for (const wall of ['thin', 'usual', 'thick'] as const) {
      const { inner } = cutOf(cutBone(oval, 'metatarsal5', middle, Z, tube({ stations, canal }), wall));
      const spread = [X, Y].map((d) => {
        const [low, high] = spreadAlong(inner[0] ?? [], d);
        return high - low;
      });
      // 30 mm do not fit into a bone of 18: a wall as thin as the thinnest figure is left.
      expect(spread).toEqual(widths[wall].map((mm) => expect.closeTo(mm, 1)));
    }
  });
});

describe('cutBone, every bone of the foot', () => {
  const foot = fineFoot();
  const unit = fc
    .tuple(...[0, 1, 2].map(() => fc.double({ min: -1, max: 1, noNaN: true })))
    .filter((v) => length(v as unknown as Vec3) > 0.1)
    .map((v) => normalize(v as unknown as Vec3));
  const bone = fc.constantFrom(...BONE_IDS);
  const share = fc.double({ min: 0.1, max: 0.9, noNaN: true });
  const placeIn = (id: (typeof BONE_IDS)[number], at: number): Vec3 => {
    const axis = boneAxis(foot, id);
    return fromBone(axis, at * axis.lengthMm);
  };

  test('the inner border lies inside the bone, under its whole cortex', () => {
    fc.assert(
      fc.property(bone, share, unit, (id, at, normal) => {
        const cut = cutBone(foot, id, placeIn(id, at), normal, shape);
        fc.pre(cut !== null);
        const mesh = meshOf(foot, id);
        const shell = shape.inside.shells.find((s) => s.bone === id);
        for (const loop of cut?.inner ?? []) {
          for (let i = 0; i < loop.length; i += 9) {
            const p = loop[i] ?? [0, 0, 0];
            expect(isInside(mesh, p)).toBe(true);
            const under = distanceTo(mesh, p);
            if (shell) expect(under).toBeCloseTo(shell.cortex.band[1], 4);
            else expect(under).toBeGreaterThan(0.69);
            // Between the vertices too.
            const q = scale(add(p, loop[(i + 1) % loop.length] ?? p), 0.5);
            expect(distanceTo(mesh, q)).toBeGreaterThan(0.6);
            expect(isInside(mesh, q)).toBe(true);
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  test('cortex and inside add up to the bone: area, centroid and second moments', () => {
    fc.assert(
      fc.property(bone, share, unit, (id, at, normal) => {
        const cut = cutBone(foot, id, placeIn(id, at), normal, shape);
        fc.pre(cut !== null && cut.properties.inner !== null);
        const { outer, cortex, inner } = cutOf(cut).properties;
        if (!inner) return;
        expect((cortex.areaMm2 + inner.areaMm2) / outer.areaMm2).toBeCloseTo(1, 9);
        expect(cortex.areaMm2).toBeGreaterThan(0);
        const aboutOuter = (part: typeof outer, i: 0 | 1): number =>
          (i === 0 ? part.iAcrossMm4 : part.iUpMm4) + part.areaMm2 * (part.centroidMm[i] - outer.centroidMm[i]) ** 2;
        expect((aboutOuter(cortex, 0) + aboutOuter(inner, 0)) / outer.iAcrossMm4).toBeCloseTo(1, 6);
        expect((aboutOuter(cortex, 1) + aboutOuter(inner, 1)) / outer.iUpMm4).toBeCloseTo(1, 6);
        const { largestMm4, smallestMm4, stiffest } = cortex.principal;
        expect((largestMm4 + smallestMm4) / (cortex.iAcrossMm4 + cortex.iUpMm4)).toBeCloseTo(1, 9);
        expect(dot(stiffest, cutOf(cut).axes.normal)).toBeCloseTo(0, 9);
      }),
      { numRuns: 60 },
    );
  });

  test('outer and inner loops run the same way round, seen against the normal', () => {
    const turning = (loop: readonly Vec3[], normal: Vec3): number => {
      const [first = [0, 0, 0] as Vec3] = loop;
      return loop.reduce((sum, p, i) => {
        const q = loop[(i + 1) % loop.length] ?? p;
        return sum + dot(cross(subtract(p, first), subtract(q, first)), normal);
      }, 0);
    };
    const left = mirrorFoot(foot);
    for (const side of [foot, left])
      for (const normal of [Z, scale(Z, -1), normalize([0.3, -0.8, 0.5]), X, Y]) {
        const axis = boneAxis(side, 'metatarsal1');
        const cut = cutOf(cutBone(side, 'metatarsal1', fromBone(axis, 30), normal, shape));
        expect(turning(cut.outer[0] ?? [], normal)).toBeGreaterThan(0);
        expect(turning(cut.inner[0] ?? [], normal)).toBeGreaterThan(0);
      }
  });

  test('two cuts agree where they cross', () => {
    const axis = boneAxis(foot, 'metatarsal5');
    const open = openBone(foot, 'metatarsal5', shape, 'usual');
    const along = cutOf(cutOpenBone(open, axis.origin, axis.lateral));
    const apart: number[] = [];
    for (const at of [0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8]) {
      const s = at * axis.lengthMm;
      const across = cutOf(cutOpenBone(open, fromBone(axis, s), axis.axis));
      // Both planes hold the line through the axis in the dorsal direction.
      const onLine = (loops: readonly (readonly Vec3[])[], over: Vec3, level: number): number[] =>
        loops
          .flatMap((loop) =>
            loop.flatMap((p, i) => {
              const q = loop[(i + 1) % loop.length] ?? p;
              const [hp, hq] = [
                dot(subtract(p, axis.origin), over) - level,
                dot(subtract(q, axis.origin), over) - level,
              ];
              if (hp > 0 === hq > 0) return [];
              return [dot(subtract(add(p, scale(subtract(q, p), hp / (hp - hq))), axis.origin), axis.dorsal)];
            }),
          )
          .sort((a, b) => a - b);
      const first = onLine(along.inner, axis.axis, s);
      const second = onLine(across.inner, axis.lateral, 0);
      expect(first.length).toBe(2);
      // Exact but where a ridge of the border falls between two samples: such a corner is cut off within a third of a step.
      expect(second.map((x, i) => Math.abs(x - (first[i] ?? 99)) < 0.1)).toEqual([true, true]);
      apart.push(...second.map((x, i) => Math.abs(x - (first[i] ?? 99))));
    }
    expect(apart.sort((x, y) => x - y)[Math.floor(apart.length / 2)]).toBeLessThan(0.005);
  });

  test('left and right are mirror images', () => {
    const left = mirrorFoot(foot);
    fc.assert(
      fc.property(bone, share, unit, (id, at, normal) => {
        const place = placeIn(id, at);
        const flip = ([x, y, z]: Vec3): Vec3 => [-x, y, z];
        const a = cutBone(foot, id, place, normal, shape);
        const b = cutBone(left, id, flip(place), flip(normal), shape);
        fc.pre(a !== null && b !== null);
        for (const part of ['outer', 'cortex'] as const) {
          const [p, q] = [cutOf(a).properties[part], cutOf(b).properties[part]];
          expect(q.areaMm2 / p.areaMm2).toBeCloseTo(1, 4);
          expect(q.iAcrossMm4 / p.iAcrossMm4).toBeCloseTo(1, 4);
          expect(q.iUpMm4 / p.iUpMm4).toBeCloseTo(1, 4);
          expect((q.iProductMm4 - p.iProductMm4) / (p.iAcrossMm4 + p.iUpMm4)).toBeCloseTo(0, 4);
          expect(length(subtract(flip(q.centroid), p.centroid))).toBeLessThan(1e-3);
        }
      }),
      { numRuns: 40 },
    );
  });

  test('a foot k times as large: areas k^2, second moments k^4, thickness k', () => {
    const k = 1.31;
    const large = {
      ...foot,
      parameters: { ...foot.parameters, heelToSecondHeadMm: k * foot.parameters.heelToSecondHeadMm },
      bones: new Map([...foot.bones].map(([id, mesh]) => [id, mapMesh(mesh, (p) => scale(p, k))])),
    };
    for (const id of ['metatarsal1', 'metatarsal5', 'phalanxProximal2', 'navicular'] as const)
      for (const normal of [Z, normalize([0.4, 0.5, 0.7])]) {
        const place = placeIn(id, 0.55);
        const a = cutOf(cutBone(foot, id, place, normal, shape)).properties;
        const b = cutOf(cutBone(large, id, scale(place, k), normal, shape)).properties;
        for (const part of ['outer', 'cortex', 'inner'] as const) {
          const [p, q] = [a[part], b[part]];
          expect((q?.areaMm2 ?? 0) / ((p?.areaMm2 ?? 1) * k ** 2)).toBeCloseTo(1, 4);
          expect((q?.iAcrossMm4 ?? 0) / ((p?.iAcrossMm4 ?? 1) * k ** 4)).toBeCloseTo(1, 4);
        }
      }
  });

  test('a thick wall holds more bone than the usual one, a thin one less', () => {
    for (const id of BONE_IDS) {
      const place = placeIn(id, 0.5);
      const [thin, usual, thick] = (['thin', 'usual', 'thick'] as const).map(
        (wall) => cutOf(cutBone(foot, id, place, Z, shape, wall)).properties.cortex.areaMm2,
      );
      expect(thin).toBeLessThan(usual ?? 0);
      expect(usual).toBeLessThan(thick ?? 0);
    }
  });
});
