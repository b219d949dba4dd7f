/** The same frame told in another way gives the same answer: turned, mirrored, in another order, cut, as chains, with limits of springs. */
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FrameModel } from '../../../../src/mechanics/frame';
import { add, scale, type Vec3 } from '../../../../src/units';
import { EVERYTHING, placeOf, RUNS, three } from '../../../tools/frame-views';
import { ALL, randomFrame, type Six, solutionError, solved, tableError } from '../../../tools/frames';

type Turn = (v: Vec3) => Vec3;
/** The frame seen in other axes. A mirror turns moments and turns about an axis the other way. */
const seen = (model: FrameModel, see: Turn, hand: 1 | -1): FrameModel => {
  const both = (row: readonly number[]): Six => [...see(three(row, 0)), ...scale(see(three(row, 3)), hand)] as Six;
  const vector = (v: readonly number[]): [number, number, number] => [...see(three(v, 0))] as [number, number, number];
  return {
    ...model,
    nodes: model.nodes.map((node) => ({ ...node, xyz: vector(node.xyz) })),
    members: model.members.map((member) => ({
      ...member,
      orientation: vector(member.orientation),
      distributed: (member.distributed ?? []).map(({ axes, q }) =>
        axes === 'global' ? { axes, q: vector(q) } : { axes, q: [q[0], q[1], hand * q[2]] as [number, number, number] },
      ),
    })),
    supports: model.supports.filter(({ fixed }) => fixed.length === 6),
    groundSprings: [],
    nodalLoads: (model.nodalLoads ?? []).map(({ node, F }) => ({ node, F: both(F) })),
  };
};
const seenTable = (rows: Readonly<Record<string, readonly number[]>>, see: Turn, hand: number) =>
  Object.fromEntries(
    Object.entries(rows).map(([id, row]) => [id, [...see(three(row, 0)), ...scale(see(three(row, 3)), hand)]]),
  );

describe('the whole frame', () => {
  const same: Turn = (v) => v;

  test('turned: motions and reactions turn, end forces stay', () => {
    const [c, s] = [Math.cos(0.7), Math.sin(0.7)];
    const [c2, s2] = [Math.cos(-1.9), Math.sin(-1.9)];
    const turn: Turn = ([x, y, z]) => {
      const [a, b] = [c * x - s * y, s * x + c * y];
      return [a, c2 * b - s2 * z, s2 * b + c2 * z];
    };
    fc.assert(
      fc.property(randomFrame({ springs: true, distributed: true }), (model) => {
        const [plain, turned] = [solved(seen(model, same, 1)), solved(seen(model, turn, 1))];
        expect(
          solutionError(turned, {
            displacements: seenTable(plain.displacements, turn, 1),
            reactions: seenTable(plain.reactions, turn, 1),
            memberEndForces: plain.memberEndForces,
          }),
        ).toBeLessThan(1e-9);
      }),
      RUNS,
    );
  });

  test('in the mirror: motions and reactions mirrored, of the end forces what lies along z and turns about x and y', () => {
    const mirror: Turn = ([x, y, z]) => [-x, y, z];
    const local = (row: readonly number[]): number[] =>
      row.map((value, i) => ([2, 3, 4].includes(i % 6) ? -value : value));
    fc.assert(
      fc.property(randomFrame({ springs: true, distributed: true }), (model) => {
        const [plain, mirrored] = [solved(seen(model, same, 1)), solved(seen(model, mirror, -1))];
        // Local z is x cross y: in the mirror it points the other way; a moment keeps its sign about z and loses it about x and y.
        const expected = Object.fromEntries(Object.entries(plain.memberEndForces).map(([id, row]) => [id, local(row)]));
        expect(
          solutionError(mirrored, {
            displacements: seenTable(plain.displacements, mirror, -1),
            reactions: seenTable(plain.reactions, mirror, -1),
            memberEndForces: expected,
          }),
        ).toBeLessThan(1e-9);
      }),
      RUNS,
    );
  });

  test('with its nodes and members in another order: the same', () => {
    fc.assert(
      fc.property(randomFrame(EVERYTHING), (model) => {
        const turned = { ...model, nodes: model.nodes.toReversed(), members: model.members.toReversed() };
        expect(solutionError(solved(turned), solved(model))).toBeLessThan(1e-9);
      }),
      RUNS,
    );
  });
});

/** Each member as two, the cut at a share of it; springs stay at their ends. */
const cut = (model: FrameModel, share: number): FrameModel => ({
  ...model,
  nodes: [
    ...model.nodes,
    ...model.members.map((m) => {
      const [i, j] = [placeOf(model, String(m.i)), placeOf(model, String(m.j))];
      return { id: `cut ${m.id}`, xyz: [...add(scale(i, 1 - share), scale(j, share))] as [number, number, number] };
    }),
  ],
  members: model.members.flatMap((m) => [
    { ...m, j: `cut ${m.id}`, endSprings: (m.endSprings ?? []).filter(({ end }) => end === 'i') },
    { ...m, id: `${m.id} far`, i: `cut ${m.id}`, endSprings: (m.endSprings ?? []).filter(({ end }) => end === 'j') },
  ]),
});

test('cutting every member in two changes nothing', () => {
  fc.assert(
    fc.property(randomFrame(EVERYTHING), fc.double({ min: 0.2, max: 0.8, noNaN: true }), (model, share) => {
      const [whole, parts] = [solved(model), solved(cut(model, share))];
      const ends = Object.fromEntries(
        model.members.map(({ id }) => [
          id,
          [...(parts.memberEndForces[id] ?? []).slice(0, 6), ...(parts.memberEndForces[`${id} far`] ?? []).slice(6)],
        ]),
      );
      expect(solutionError({ ...parts, memberEndForces: ends }, whole)).toBeLessThan(1e-9);
    }),
    RUNS,
  );
});

test('a member of segments equals the same segments with nodes between', () => {
  const bend = fc.tuple(...[0, 1, 2].map(() => fc.double({ min: -5, max: 5, noNaN: true })));
  fc.assert(
    fc.property(randomFrame({ springs: true, ground: true }), bend, (model, off) => {
      const middle = (m: FrameModel['members'][number]): [number, number, number] => {
        const [i, j] = [placeOf(model, String(m.i)), placeOf(model, String(m.j))];
        return [...add(scale(add(i, j), 0.5), three(off, 0))] as [number, number, number];
      };
      const bare = model.members.filter((m) => (m.endSprings ?? []).length === 0);
      const kept = model.members.filter((m) => (m.endSprings ?? []).length > 0);
      const chained = {
        ...model,
        members: [
          ...kept,
          ...bare.map(({ section: _, ...m }) => ({
            ...m,
            segments: [{ section: 'a', to: middle(m) }, { section: 'b' }],
          })),
        ],
      };
      const noded = {
        ...model,
        nodes: [...model.nodes, ...bare.map((m) => ({ id: `mid ${m.id}`, xyz: middle(m) }))],
        members: [
          ...kept,
          ...bare.flatMap((m) => [
            { ...m, j: `mid ${m.id}`, section: 'a' },
            { ...m, id: `${m.id} far`, i: `mid ${m.id}`, section: 'b' },
          ]),
        ],
      };
      const [one, two] = [solved(chained), solved(noded)];
      const nodes = Object.fromEntries(model.nodes.map(({ id }) => [id, two.displacements[id] ?? []]));
      expect(tableError(one.displacements, nodes, 1 / 50)).toBeLessThan(1e-9);
      expect(tableError(one.reactions, two.reactions, 50)).toBeLessThan(1e-9);
    }),
    RUNS,
  );
});

describe('an end spring', () => {
  const on = (model: FrameModel, dof: 'rz' | 'ry' | 'uy', k: number): FrameModel => ({
    ...model,
    members: model.members.map((m) => ({ ...m, endSprings: [{ end: 'j' as const, dof, k }] })),
  });
  const dofs = fc.constantFrom('rz' as const, 'ry' as const, 'uy' as const);

  test('of 1e20 is a rigid joint', () => {
    fc.assert(
      fc.property(randomFrame({ distributed: true }), dofs, (model, dof) => {
        expect(solutionError(solved(on(model, dof, 1e20)), solved(model))).toBeLessThan(1e-9);
      }),
      RUNS,
    );
  });

  test('of nearly nothing is a release, and a release carries nothing', () => {
    fc.assert(
      fc.property(randomFrame({ distributed: true }), dofs, (model, dof) => {
        // Released at the far end of every member of a tree would move freely: only a member that bridges two clamps is.
        const last = String(model.nodes.at(-1)?.id);
        const orientation: [number, number, number] = [-0.3, 0.7, 1.1];
        const more = {
          ...(model.members[0] as FrameModel['members'][number]),
          id: 'bridge',
          i: 'n0',
          j: last,
          orientation,
        };
        const bridged = (k: number): FrameModel => ({
          ...model,
          members: [...model.members, { ...more, endSprings: [{ end: 'j' as const, dof, k }] }],
        });
        const [weak, none] = [solved(bridged(1e-13)), solved(bridged(0))];
        expect(solutionError(weak, none)).toBeLessThan(1e-9);
        const size = Math.max(...(none.memberEndForces.bridge ?? []).map(Math.abs), 1e-9);
        expect(Math.abs(none.memberEndForces.bridge?.[ALL.indexOf(dof) + 6] ?? Number.NaN)).toBeLessThan(1e-12 * size);
      }),
      RUNS,
    );
  });

  test('gives way by its force over its stiffness', () => {
    // A clamped bar pulled at its end, a spring along it in between.
    const bar = (k: number) =>
      solved({
        nodes: [
          { id: 'a', xyz: [0, 0, 0] },
          { id: 'b', xyz: [0, 0, 50] },
        ],
        materials: { m: { E: 1000, G: 400 } },
        sections: { s: { A: 10, Iy: 5, Iz: 5, J: 5 } },
        members: [
          {
            id: 'ab',
            i: 'a',
            j: 'b',
            section: 's',
            material: 'm',
            orientation: [0, 1, 0],
            endSprings: [{ end: 'i', dof: 'ux', k }],
          },
        ],
        supports: [{ node: 'a', fixed: ALL }],
        nodalLoads: [{ node: 'b', F: [0, 0, 20, 0, 0, 0] }],
      });
    expect(bar(4).displacements.b?.[2]).toBeCloseTo(20 / 4 + (20 * 50) / (1000 * 10), 12);
    expect(bar(4).memberEndForces.ab?.[6]).toBeCloseTo(20, 12);
  });
});

test('short links of any great stiffness give the same: no digits are lost to them', () => {
  const places = [
    [0, 0, 0],
    [60, 10, 5],
    [60.5, 10.5, 5],
    [120, 0, 20],
    [120, 0.5, 20.5],
    [160, 5, 0],
  ] as const;
  const linked = (stiffer: number) =>
    solved({
      nodes: places.map((xyz, id) => ({ id, xyz: [...xyz] })),
      materials: { bone: { E: 17000, G: 6500 }, link: { E: 17000 * stiffer, G: 6500 * stiffer } },
      sections: { s: { A: 50, Iy: 250, Iz: 300, J: 400, Asy: 25 } },
      members: [0, 1, 2, 3, 4].map((i) => ({
        id: i,
        i,
        j: i + 1,
        section: 's',
        material: i % 2 === 1 ? 'link' : 'bone',
        orientation: [0.1, 0.2, 1],
      })),
      supports: [
        { node: 0, fixed: ALL },
        { node: 5, fixed: ['uy', 'uz'] },
      ],
      nodalLoads: [{ node: 3, F: [1, 10, 20, 5, 5, 5] }],
    });
  // At 1e6 the links still give way by some 1e-8 of what the bones do.
  expect(solutionError(linked(1e9), linked(1e6))).toBeLessThan(1e-7);
});
