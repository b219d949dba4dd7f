/** A chain of segments against the same segments put together with a node at each joint, and against closed forms. */
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { localAxes } from '../../../../src/mechanics/frame/axes';
import { chainFlexibility, chainStiffness, type MemberSegment } from '../../../../src/mechanics/frame/flexible-member';
import { factorLdl, solveLdl } from '../../../../src/mechanics/frame/ldl';
import { localStiffness } from '../../../../src/mechanics/frame/timoshenko';
import { length, subtract, type Vec3 } from '../../../../src/units';

const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const step = fc.tuple(positive(3, 12), positive(-6, 6), positive(-6, 6));
const prism = fc.record({
  areaMm2: positive(5, 80),
  iyMm4: positive(20, 500),
  izMm4: positive(20, 500),
  jMm4: positive(20, 800),
  shearYMm2: fc.option(positive(3, 60), { nil: undefined }),
  shearZMm2: fc.option(positive(3, 60), { nil: undefined }),
  youngMPa: positive(1000, 20000),
  shearMPa: positive(400, 8000),
});
const chain = fc.array(fc.tuple(step, prism), { minLength: 1, maxLength: 8 }).map((parts) => {
  let from: Vec3 = [1, -2, 3];
  return parts.map(([[x, y, z], section]): MemberSegment => {
    const to: Vec3 = [from[0] + x, from[1] + y, from[2] + z];
    const segment = { from, to, y: [0.2, 1, -0.4] as const, ...section };
    from = to;
    return segment;
  });
});

/** The segment's 12 x 12 in global axes, by turning each of its four points' three axes. */
const globalStiffness = (segment: MemberSegment): number[][] => {
  const axes = localAxes(segment.from, segment.to, segment.y);
  if (axes === null) throw new Error('no axes');
  const k = localStiffness(segment, length(subtract(segment.to, segment.from)));
  const turn = (i: number, a: number): number =>
    Math.floor(i / 3) === Math.floor(a / 3) ? (axes[a % 3]?.[i % 3] ?? 0) : 0;
  const twelve = Array.from({ length: 12 }, (_, i) => i);
  return twelve.map((i) =>
    twelve.map((j) => {
      let sum = 0;
      for (const a of twelve) for (const b of twelve) sum += turn(i, a) * (k[a * 12 + b] as number) * turn(j, b);
      return sum;
    }),
  );
};

/** All segments assembled; the motions of the nodes between solved for; forces at both ends for unit motions of the ends. */
const assembled = (segments: readonly MemberSegment[]): number[][] => {
  const n = 6 * (segments.length + 1);
  const all = Array.from({ length: n }, () => new Array<number>(n).fill(0));
  segments.forEach((segment, s) => {
    globalStiffness(segment).forEach((row, i) => {
      row.forEach((value, j) => {
        const target = all[6 * s + i] as number[];
        target[6 * s + j] = (target[6 * s + j] ?? 0) + value;
      });
    });
  });
  const ends = [...Array(6).keys(), ...Array.from({ length: 6 }, (_, i) => n - 6 + i)];
  const inner = Array.from({ length: n - 12 }, (_, i) => i + 6);
  const at = (i: number, j: number): number => all[i]?.[j] ?? Number.NaN;
  const factor = factorLdl(Float64Array.from(inner.flatMap((i) => inner.map((j) => at(i, j)))), n - 12);
  const given = ends.map((j) => solveLdl(factor, Float64Array.from(inner.map((i) => -at(i, j)))));
  return ends.map((i) =>
    ends.map((j, c) => inner.reduce((sum, m, a) => sum + at(i, m) * (given[c]?.[a] ?? Number.NaN), at(i, j))),
  );
};

test('equals the assembled chain to 1e-10 of the largest entry of its kind', () => {
  let worst = 0;
  fc.assert(
    fc.property(chain, (segments) => {
      const got = chainStiffness(segments);
      const expected = assembled(segments);
      for (let i = 0; i < 12; i++)
        for (let j = 0; j < 12; j++) {
          const size = Math.sqrt((expected[i]?.[i] ?? 0) * (expected[j]?.[j] ?? 0));
          worst = Math.max(worst, Math.abs((got[i * 12 + j] as number) - (expected[i]?.[j] ?? Number.NaN)) / size);
        }
      expect(worst).toBeLessThan(1e-10);
    }),
  );
});

test('a single segment is the element', () => {
  fc.assert(
    fc.property(chain, ([segment]) => {
      if (segment === undefined) return;
      const got = chainStiffness([segment]);
      const scale = Math.max(...got.map(Math.abs));
      globalStiffness(segment).forEach((row, i) => {
        row.forEach((value, j) => {
          expect(Math.abs((got[i * 12 + j] as number) - value)).toBeLessThan(1e-11 * scale);
        });
      });
    }),
  );
});

/** The smallest doubles round as a whole: 1e-300 N is no force. */
test('six rigid motions give no force', () => {
  fc.assert(
    fc.property(chain, fc.array(positive(-1, 1), { minLength: 6, maxLength: 6 }), (segments, motion) => {
      const k = chainStiffness(segments);
      const [first, last] = [segments[0], segments.at(-1)];
      if (!first || !last) return;
      const [x, y, z] = subtract(last.to, first.from);
      const [ux = 0, uy = 0, uz = 0, rx = 0, ry = 0, rz = 0] = motion;
      const far = [ux + ry * z - rz * y, uy + rz * x - rx * z, uz + rx * y - ry * x, rx, ry, rz];
      const u = [...motion, ...far];
      for (let i = 0; i < 12; i++) {
        let [sum, size] = [0, 0];
        u.forEach((value, j) => {
          sum += (k[i * 12 + j] as number) * value;
          size += Math.abs((k[i * 12 + j] as number) * value);
        });
        expect(Math.abs(sum)).toBeLessThanOrEqual(1e-13 * size + 1e-300);
      }
    }),
  );
});

test('a segment without length or with y along it is named', () => {
  const fine = { areaMm2: 1, iyMm4: 1, izMm4: 1, jMm4: 1, youngMPa: 1, shearMPa: 1 };
  const good: MemberSegment = { ...fine, from: [0, 0, 0], to: [1, 0, 0], y: [0, 1, 0] };
  expect(() => chainFlexibility([good, { ...good, to: good.from }])).toThrow(/segment 1/);
  expect(() => chainStiffness([{ ...good, y: [1, 0, 0] }])).toThrow(/segment 0/);
  expect(() => chainStiffness([])).toThrow(RangeError);
  expect(() => chainStiffness([{ ...good, izMm4: 0 }])).toThrow(RangeError);
});
