import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cutAt, jointSurface } from '../../../src/anatomy/joint-surface';
import { readShape } from '../../../src/cli/read-shape';
import { add, scale } from '../../../src/units';

const {
  joints,
  defaults: { sweep },
} = readShape();

describe('joint surfaces', () => {
  test('no point is on the allowed side of both bones inside a facet', () => {
    const share = fc.double({ min: -20, max: 20, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...joints), share, share, share, (j, x, y, z) => {
        const seen = { side: 0, radius: 0 };
        const free = ([1, -1] as const).map((sign) => {
          const surface = jointSurface(j, sign, sweep);
          surface.look(...add(j.centre, [x, y, z]), seen);
          fc.pre(seen.radius <= 1);
          return cutAt(surface, seen) < 0;
        });
        expect(free.filter(Boolean).length).toBeLessThanOrEqual(1);
      }),
    );
  });

  test('far along the normal lies on the side of the second bone', () => {
    for (const j of joints) {
      const seen = { side: 0, radius: 0 };
      jointSurface(j, 1, sweep).look(...add(j.centre, scale(j.normal, 12)), seen);
      expect(seen.side).toBeGreaterThan(5);
    }
  });

  test('facets are as tabled: unit normals, the long extent first or equal', () => {
    for (const j of joints) {
      expect(Math.hypot(...j.normal)).toBeCloseTo(1, 1);
      expect(j.extents[0]).toBeGreaterThan(0.7 * j.extents[1]);
    }
  });
});
