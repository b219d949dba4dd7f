/** Bent members whose ends nearly meet: the line between their ends is nothing against what bends. */
import { expect, test } from 'vitest';
import { type FrameModel, solveFrame } from '../../../../src/mechanics/frame';
import { ALL, BONE, ROUND, solved } from '../../../tools/frames';

type Place = [number, number, number];
const RADIUS = 100;
const PIECES = 36;

/** A ring of 36 pieces in the x-y plane, split by a gap, clamped on one side of it and loaded on the other. */
const ringPlaces = (gap: number): Place[] => {
  const start = gap / 2 / RADIUS;
  return Array.from({ length: PIECES + 1 }, (_, k) => {
    const turn = start + ((2 * Math.PI - 2 * start) * k) / PIECES;
    return [RADIUS * Math.cos(turn), RADIUS * Math.sin(turn), 0];
  });
};

const made = { material: 'bone', orientation: [0, 0, 1] as Place };
const held: Pick<FrameModel, 'materials' | 'sections' | 'supports' | 'nodalLoads'> = {
  materials: { bone: { ...BONE } },
  sections: { round: { ...ROUND } },
  supports: [{ node: 'a', fixed: [...ALL] }],
  nodalLoads: [{ node: 'b', F: [0.01, 0.02, 0.03, 0.4, 0.5, 0.6] }],
};

/** One member from a to b through places. */
const oneMember = (places: readonly Place[]): FrameModel => ({
  ...held,
  nodes: [
    { id: 'a', xyz: places[0] as Place },
    { id: 'b', xyz: places.at(-1) as Place },
  ],
  members: [
    {
      ...made,
      id: 'm',
      i: 'a',
      j: 'b',
      segments: places
        .slice(1)
        .map((to, k) => (k === places.length - 2 ? { section: 'round' } : { section: 'round', to })),
    },
  ],
});

/** The same with a node at every place. */
const manyMembers = (places: readonly Place[]): FrameModel => {
  const name = (k: number): string => (k === 0 ? 'a' : k === places.length - 1 ? 'b' : `p${k}`);
  return {
    ...held,
    nodes: places.map((xyz, k) => ({ id: name(k), xyz })),
    members: places.slice(1).map((_, k) => ({ ...made, id: `m${k}`, i: name(k), j: name(k + 1), section: 'round' })),
  };
};

const apart = (got: readonly number[] = [], want: readonly number[] = []): number =>
  Math.max(
    ...[0, 3].map((from) => {
      const size = Math.max(...want.slice(from, from + 3).map(Math.abs));
      return Math.max(...want.slice(from, from + 3).map((value, d) => Math.abs(value - (got[from + d] ?? 9)))) / size;
    }),
  );

test.each([10, 0.1, 0.01, 1e-4, 1e-6])('a ring with a gap of %f equals the same with nodes', (gap) => {
  const places = ringPlaces(gap);
  const [one, many] = [solved(oneMember(places)), solved(manyMembers(places))];
  expect(apart(one.displacements.b, many.displacements.b)).toBeLessThan(1e-9);
  expect(apart(one.reactions.a, many.reactions.a)).toBeLessThan(1e-9);
});

test('a gap that closes moves the answer no more than itself', () => {
  const [near, nearer] = [1e-4, 1e-6].map((gap) => solved(oneMember(ringPlaces(gap))).displacements.b);
  expect(apart(near, nearer)).toBeLessThan(1e-5);
});

const outAndBack = (...out: Place): Place[] => [[0, 0, 0], out, [100, 0, 0]];

test('a member that runs far out and back is answered or told by its name or node, never thrown', () => {
  for (const out of [1e3, 1e5, 1e9, 1e12, 1e60, 1e99]) {
    const got = solveFrame(oneMember(outAndBack(out, out / 3, 0)));
    if (!got.ok) expect(got.where).toMatch(/^(member "m"|node "[ab]")$/);
  }
  const load = 1e-14;
  const straight = { ...oneMember(outAndBack(1e9, 0, 0)), nodalLoads: [{ node: 'b', F: [0, load, 0, 0, 0, 0] }] };
  // Its moment grows from the end: both ways together move that end by 2 P L^3 / 3 E I.
  const want = (2 * load * 1e27) / (3 * BONE.E * ROUND.Iy);
  expect((solved(straight as FrameModel).displacements.b?.[1] as number) / want).toBeCloseTo(1, 6);
});

test('segments whose gives are beyond all numbers are told by the member', () => {
  const got = solveFrame({
    ...oneMember(ringPlaces(10)),
    materials: { bone: { E: 1e-90, G: 1e-90 } },
    sections: { round: { A: 1e-99, Iy: 1e-300, Iz: 1e-300, J: 1e-99 } },
  });
  expect(got).toMatchObject({ ok: false, kind: 'unbalanced', where: 'member "m"' });
});
