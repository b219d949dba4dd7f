/**
 * Torsion from both sides on the sections of the shipped foot: the stress function gives J too low, the warping of the section too
 * high, so the true value lies between (Trefftz; Prager and Synge). The second way shares only the triangles with the first.
 */
import { describe, expect, test } from 'vitest';
import { integralsOf, momentsOf, without } from '../../../../src/anatomy/inside/polygon';
import type { BoneId } from '../../../../src/ids';
import { cutsAlong, evenShares } from '../../../../src/mechanics';
import { coarsenedFigure, sizesOf } from '../../../../src/mechanics/section/coarsen';
import { elementsOf, equationsOf } from '../../../../src/mechanics/section/elements';
import { figureOf } from '../../../../src/mechanics/section/figure';
import { triangulate } from '../../../../src/mechanics/section/mesh';
import { torqueOf } from '../../../../src/mechanics/section/shear';
import { torsionOf } from '../../../../src/mechanics/section/torsion';
import { fineFoot, shape } from '../../../tools/inside-material';

const foot = fineFoot();
const BONES: BoneId[] = ['metatarsal1', 'metatarsal2', 'metatarsal3', 'metatarsal4', 'metatarsal5', 'phalanxProximal1'];

describe('torsion constant', () => {
  test.each(BONES)('%s: bounds from both sides meet within a per cent', (bone) => {
    for (const wall of ['thin', 'usual', 'thick'] as const) {
      for (const { outline, canals } of cutsAlong(foot, bone, shape, wall, evenShares(13))) {
        const figure = figureOf(outline, canals);
        const left = (f: typeof figure) =>
          momentsOf(f.holes.map((hole) => integralsOf([hole])).reduce(without, integralsOf([f.outline])));
        const sizes = sizesOf(figure, left(figure).area);
        const coarse = coarsenedFigure(figure, sizes);
        const m = elementsOf(triangulate(coarse, sizes.elementMm));
        const low = torsionOf(m, coarse).jMm4;
        const { centroid, aa, bb } = left(coarse);
        const torque = torqueOf(
          m,
          m.cornerA.map((x) => x - centroid[0]),
          m.cornerB.map((x) => x - centroid[1]),
        );
        const warping = torque.slice(1);
        equationsOf(
          m,
          Int32Array.from({ length: m.count }, (_, n) => n - 1),
          m.count - 1,
        ).solve(warping);
        const high = aa + bb - warping.reduce((sum, x, i) => sum + x * (torque[i + 1] ?? 0), 0);
        expect(low).toBeLessThan(high);
        expect(high / low - 1).toBeLessThan(0.01);
      }
    }
  });
});
