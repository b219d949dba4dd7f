import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boneAxis, fromBone, meshOf, mirrorFoot } from '../../../../src/anatomy';
import { cutBone, cutOpenBone, openBone } from '../../../../src/anatomy/inside';
import { mapMesh } from '../../../../src/anatomy/mesh';
import { BONE_IDS } from '../../../../src/ids';
import { add, cross, dot, length, normalize, scale, subtract, type Vec3 } from '../../../../src/units';
import { cutOf, fineFoot, shape, X, Y, Z } from '../../../tools/inside-material';
import { LONG } from '../../../tools/long';
import { distanceTo, isInside } from '../point-inside';

describe('cutBone, every bone of the foot', () => {
  const foot = fineFoot();
  const part = fc.double({ min: -1, max: 1, noNaN: true });
  const unit = fc
    .tuple(part, part, part)
    .filter((v) => length(v) > 0.1)
    .map((v) => normalize(v));
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
        const shell = shape.inside.shells.find((s) => s.bones.includes(id));
        for (const loop of cut?.inner ?? []) {
          for (let i = 0; i < loop.length; i += 9) {
            const p = loop[i] ?? [0, 0, 0];
            expect(isInside(mesh, p)).toBe(true);
            const under = distanceTo(mesh, p);
            if (shell) expect(under).toBeCloseTo(shape.inside.cortex[shell.cortex]?.band[1] ?? 0, 4);
            else expect(under).toBeGreaterThan(0.69);
            // Between the vertices too.
            const q = scale(add(p, loop[(i + 1) % loop.length] ?? p), 0.5);
            expect(distanceTo(mesh, q)).toBeGreaterThan(0.6);
            expect(isInside(mesh, q)).toBe(true);
          }
        }
      }),
      // Each run asks of hundreds of points how far they are from the surface: dear.
      { numRuns: LONG ? 300 : 30 },
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
