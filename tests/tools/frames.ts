/** Frames for tests: random connected space frames, and what is asked of their solutions. */
import * as fc from 'fast-check';
import { type FrameModel, type FrameSolution, problemText, solveFrame } from '../../src/mechanics/frame';
import { DOFS, type Dof } from '../../src/mechanics/frame/dofs';
import { cross, length, normalize, subtract, type Vec3 } from '../../src/units';

export type Member = FrameModel['members'][number];
type Spring = NonNullable<Member['endSprings']>[number];
type Distributed = NonNullable<Member['distributed']>[number];
export type Six = [number, number, number, number, number, number];

export const ALL: Dof[] = [...DOFS];
export const ROUND = { A: 40, Iy: 250, Iz: 250, J: 500 };
export const BONE = { E: 17000, G: 6500 };

/** Solves, or fails the test with the solver's own words. */
export const solved = (model: FrameModel): FrameSolution => {
  const solution = solveFrame(model);
  if (!solution.ok) throw new Error(problemText(solution));
  return solution;
};

const none = <T>(): fc.Arbitrary<T[]> => fc.constant([]);
/** A thousand steps: no file says 1e-300. */
const within = (min: number, max: number) =>
  fc.integer({ min: 0, max: 1000 }).map((n) => min + ((max - min) * n) / 1000);
const sixOf = (force: number, moment: number) =>
  fc.tuple(
    ...([force, force, force, moment, moment, moment].map((most) => within(-most, most)) as [
      fc.Arbitrary<number>,
      fc.Arbitrary<number>,
      fc.Arbitrary<number>,
      fc.Arbitrary<number>,
      fc.Arbitrary<number>,
      fc.Arbitrary<number>,
    ]),
  );
const direction = fc.tuple(within(-1, 1), within(-1, 1), within(-1, 1)).filter((d) => Math.hypot(...d) > 0.1);

const section = fc
  .tuple(within(3, 12), within(0.5, 2), within(0.5, 2), fc.boolean())
  .map(([size, flat, twist, shear]) => ({
    A: size ** 2,
    Iy: size ** 4 / 12,
    Iz: (flat * size ** 4) / 12,
    J: (twist * size ** 4) / 8,
    ...(shear ? { Asy: size ** 2 * 0.8, Asz: size ** 2 * 0.6 } : {}),
  }));

/** Springs that take no connection away: turning ones anywhere, releases only where another way holds. */
const springs = (redundant: boolean): fc.Arbitrary<Spring[]> =>
  fc.uniqueArray(
    fc.record({
      end: fc.constantFrom('i' as const, 'j' as const),
      dof: fc.constantFrom<Dof>('ry', 'rz', 'ux'),
      k: redundant ? fc.constantFrom(0, 5e3, 1e6) : within(1e4, 1e7),
    }),
    { maxLength: 1, selector: ({ end, dof }) => end + dof },
  );

const distributed: fc.Arbitrary<Distributed[]> = fc.array(
  fc.record({
    axes: fc.constantFrom('local' as const, 'global' as const),
    q: fc.tuple(within(-0.04, 0.04), within(-0.04, 0.04), within(-0.04, 0.04)),
  }),
  { maxLength: 2 },
);

const step = fc.tuple(within(15, 60), within(-40, 40), within(-40, 40));

export interface Kinds {
  readonly springs?: boolean;
  readonly distributed?: boolean;
  readonly ground?: boolean;
}

/** No orientation within 6 degrees of its member: rounding of the axes would be all that is compared. */
const wellOriented = ({ nodes, members }: FrameModel): boolean =>
  members.every(({ i, j, orientation }) => {
    const place = (end: string | number): Vec3 => nodes.find(({ id }) => id === end)?.xyz ?? [0, 0, 0];
    return length(cross(normalize(subtract(place(j), place(i))), normalize(orientation))) > 0.1;
  });

/** A tree from a clamped first node, some members more, some supports more, loads at nodes. */
export const randomFrame = (kinds: Kinds = {}): fc.Arbitrary<FrameModel> =>
  fc.integer({ min: 2, max: 6 }).chain((count) => {
    const index = fc.nat(count - 1);
    const member = (redundant: boolean) =>
      fc.record({
        orientation: direction,
        section: fc.constantFrom('a', 'b'),
        material: fc.constantFrom('bone', 'metal'),
        endSprings: kinds.springs ? springs(redundant) : none<Spring>(),
        distributed: kinds.distributed ? distributed : none<Distributed>(),
      });
    return fc
      .record({
        steps: fc.array(step, { minLength: count, maxLength: count }),
        a: section,
        b: section,
        parents: fc.array(fc.nat(1000), { minLength: count, maxLength: count }),
        tree: fc.array(member(false), { minLength: count - 1, maxLength: count - 1 }),
        more: fc.array(fc.tuple(index, index, member(true)), { maxLength: 3 }),
        supports: fc.uniqueArray(fc.tuple(index, fc.uniqueArray(fc.constantFrom(...ALL), { minLength: 1 })), {
          maxLength: 2,
          selector: ([n]) => n,
        }),
        ground: kinds.ground
          ? fc.array(fc.record({ n: index, dof: fc.constantFrom(...ALL), k: within(1, 1e5) }), { maxLength: 2 })
          : none<{ n: number; dof: Dof; k: number }>(),
        loads: fc.array(fc.tuple(index, sixOf(2, 20)), { minLength: 1, maxLength: 3 }),
      })
      .map((made): FrameModel => {
        const places: Vec3[] = [];
        let at: Vec3 = [0, 0, 0];
        for (const [x, y, z] of made.steps) {
          places.push(at);
          at = [at[0] + x, y, z];
        }
        const id = (n: number): string => `n${n}`;
        const tree = made.tree.map((each, m) => ({
          ...each,
          id: `t${m}`,
          i: id((made.parents[m] ?? 0) % (m + 1)),
          j: id(m + 1),
        }));
        const more = made.more
          .filter(([i, j]) => i !== j)
          .map(([i, j, each], m) => ({ ...each, id: `m${m}`, i: id(i), j: id(j) }));
        return {
          nodes: places.map(([x, y, z], n) => ({ id: id(n), xyz: [x, y, z] })),
          materials: { bone: BONE, metal: { E: 110000, G: 42000 } },
          sections: { a: made.a, b: made.b },
          members: [...tree, ...more],
          supports: [
            { node: id(0), fixed: ALL },
            ...made.supports.filter(([n]) => n > 0).map(([n, fixed]) => ({ node: id(n), fixed })),
          ],
          groundSprings: made.ground.map(({ n, dof, k }) => ({ node: id(n), dof, k })),
          nodalLoads: made.loads.map(([n, F]) => ({ node: id(n), F })),
        };
      })
      .filter(wellOriented);
  });

type Table = Readonly<Record<string, readonly number[]>>;

const largest = (table: Table, forces: boolean): number =>
  Object.values(table)
    .flatMap((row) => row.filter((_, i) => i % 6 < 3 === forces))
    .reduce((most, value) => Math.max(most, Math.abs(value)), 0);

/** Largest difference of two tables, as a share of the largest value of its kind (moments: or force x 50 mm, turns: motion / 50 mm). */
export const tableError = (got: Table, expected: Table, arm: number): number => {
  const straight = Math.max(largest(expected, true), largest(expected, false) / arm / 1000, 1e-12);
  const turning = Math.max(largest(expected, false), (largest(expected, true) * arm) / 1000, 1e-12);
  let worst = 0;
  for (const [id, row] of Object.entries(expected))
    row.forEach((value, i) => {
      const error = Math.abs((got[id]?.[i] ?? Number.NaN) - value) / (i % 6 < 3 ? straight : turning);
      if (!(error <= worst)) worst = error;
    });
  return worst;
};

/** Worst of displacements, reactions and, unless told otherwise, end forces; members and nodes that only `got` has do not count. */
export const solutionError = (got: FrameSolution, expected: Omit<FrameSolution, 'ok'>): number =>
  Math.max(
    tableError(got.displacements, expected.displacements, 1 / 50),
    tableError(got.reactions, expected.reactions, 50),
    tableError(got.memberEndForces, expected.memberEndForces, 50),
  );
