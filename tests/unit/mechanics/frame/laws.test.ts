/** Balance, reciprocity, energy, rigid motions, proportion: what every right solution obeys, over random space frames. */
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import type { FrameModel, FrameSolution } from '../../../../src/mechanics/frame';
import { add, cross, dot, length, scale, subtract, type Vec3 } from '../../../../src/units';
import { axesOf, EVERYTHING, lengthOf, placeOf, RUNS, three, toGlobal } from '../../../tools/frame-views';
import { ALL, randomFrame, type Six, solutionError, solved } from '../../../tools/frames';

const workOf = (loads: FrameModel['nodalLoads'], { displacements }: FrameSolution): number =>
  (loads ?? []).reduce(
    (sum, { node, F }) => sum + F.reduce((part, f, i) => part + f * (displacements[node]?.[i] ?? Number.NaN), 0),
    0,
  );

test('loads, reactions, ground springs and loads along members are in balance', () => {
  fc.assert(
    fc.property(randomFrame(EVERYTHING), (model) => {
      const solution = solved(model);
      let [force, moment, size]: [Vec3, Vec3, number] = [[0, 0, 0], [0, 0, 0], 0];
      const act = (f: Vec3, m: Vec3, at: Vec3): void => {
        force = add(force, f);
        moment = add(moment, add(m, cross(at, f)));
        size = Math.max(size, length(f), length(m) / 100);
      };
      for (const { node, F } of model.nodalLoads ?? []) act(three(F, 0), three(F, 3), placeOf(model, String(node)));
      for (const [node, r] of Object.entries(solution.reactions)) act(three(r, 0), three(r, 3), placeOf(model, node));
      for (const { node, dof, k } of model.groundSprings ?? []) {
        const i = ALL.indexOf(dof);
        const six = ALL.map((_, d) => (d === i ? -k * (solution.displacements[node]?.[i] ?? Number.NaN) : 0));
        act(three(six, 0), three(six, 3), placeOf(model, String(node)));
      }
      for (const member of model.members)
        for (const { axes, q } of member.distributed ?? []) {
          const [i, j] = [placeOf(model, String(member.i)), placeOf(model, String(member.j))];
          const global = axes === 'global' ? q : toGlobal(axesOf(model, member), q);
          act(scale(global, lengthOf(model, member)), [0, 0, 0], scale(add(i, j), 0.5));
        }
      expect(length(force)).toBeLessThan(1e-9 * size);
      expect(length(moment)).toBeLessThan(1e-9 * size * 100);
    }),
    RUNS,
  );
});

test('every member is in balance with its own load, and every node with what meets it', () => {
  fc.assert(
    fc.property(randomFrame(EVERYTHING), (model) => {
      const { memberEndForces, reactions, displacements } = solved(model);
      const size = Math.max(...Object.values(memberEndForces).flatMap((row) => row.map(Math.abs)), 1);
      for (const member of model.members) {
        const row = memberEndForces[member.id];
        const [l, axes] = [lengthOf(model, member), axesOf(model, member)];
        const q = (member.distributed ?? []).reduce<Vec3>(
          (sum, each) =>
            add(
              sum,
              each.axes === 'local'
                ? each.q
                : [dot(each.q, axes[0] ?? each.q), dot(each.q, axes[1] ?? each.q), dot(each.q, axes[2] ?? each.q)],
            ),
          [0, 0, 0],
        );
        const whole = scale(q, l);
        expect(length(add(add(three(row, 0), three(row, 6)), whole))).toBeLessThan(1e-9 * size);
        const arms = add(cross([l, 0, 0], three(row, 6)), cross([l / 2, 0, 0], whole));
        expect(length(add(add(three(row, 3), three(row, 9)), arms))).toBeLessThan(1e-9 * size * 100);
      }
      for (const { id } of model.nodes) {
        let sum: Vec3 = [0, 0, 0];
        for (const member of model.members) {
          const axes = axesOf(model, member);
          if (member.i === id) sum = add(sum, toGlobal(axes, three(memberEndForces[member.id], 0)));
          if (member.j === id) sum = add(sum, toGlobal(axes, three(memberEndForces[member.id], 6)));
        }
        for (const { node, F } of model.nodalLoads ?? []) if (node === id) sum = subtract(sum, three(F, 0));
        if (reactions[id]) sum = subtract(sum, three(reactions[id], 0));
        for (const { node, dof, k } of model.groundSprings ?? [])
          if (node === id && dof.startsWith('u'))
            sum = add(
              sum,
              ALL.slice(0, 3).map((d, i) => (d === dof ? k * (displacements[id]?.[i] ?? 0) : 0)) as unknown as Vec3,
            );
        expect(length(sum)).toBeLessThan(1e-9 * size);
      }
    }),
    RUNS,
  );
});

test('reciprocity: the work of one set of loads on the motions of another is the same the other way (Betti)', () => {
  fc.assert(
    fc.property(
      randomFrame({ springs: true, ground: true }),
      fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 6, maxLength: 6 }),
      (model, F) => {
        const other = { ...model, nodalLoads: [{ node: model.nodes.at(-1)?.id ?? 0, F: F as Six }] };
        const [one, two] = [solved(model), solved(other)];
        const [there, back] = [workOf(model.nodalLoads, two), workOf(other.nodalLoads, one)];
        const size = Math.sqrt(Math.abs(workOf(model.nodalLoads, one) * workOf(other.nodalLoads, two)));
        expect(Math.abs(there - back)).toBeLessThanOrEqual(1e-9 * size + 1e-12);
      },
    ),
    RUNS,
  );
});

/** Energy of a member from its end forces alone: tension, torsion, bending that grows evenly, shear; and that of its end springs. */
const energyOf = (model: FrameModel, member: FrameModel['members'][number], row: readonly number[]): number => {
  const s = model.sections[String(member.section)];
  const material = model.materials[String(member.material)];
  if (!s || !material) return Number.NaN;
  const [l, { E, G }] = [lengthOf(model, member), material];
  const at = (i: number): number => row[i] ?? Number.NaN;
  const linear = (a: number, b: number): number => (l * (a * a + a * b + b * b)) / 3;
  const springs = (member.endSprings ?? []).reduce(
    (sum, { end, dof, k }) => sum + (k > 0 ? at(ALL.indexOf(dof) + (end === 'j' ? 6 : 0)) ** 2 / k : 0),
    0,
  );
  return (
    (at(6) ** 2 * l) / (E * s.A) +
    (at(9) ** 2 * l) / (G * s.J) +
    linear(at(5), -at(11)) / (E * s.Iz) +
    linear(at(4), -at(10)) / (E * s.Iy) +
    (s.Asy ? (at(1) ** 2 * l) / (G * s.Asy) : 0) +
    (s.Asz ? (at(2) ** 2 * l) / (G * s.Asz) : 0) +
    springs
  );
};

test('the work of the loads is twice the energy of members and springs', () => {
  fc.assert(
    fc.property(randomFrame({ springs: true, ground: true }), (model) => {
      const solution = solved(model);
      const inside = model.members.reduce(
        (sum, member) => sum + energyOf(model, member, solution.memberEndForces[member.id] ?? []),
        0,
      );
      const ground = (model.groundSprings ?? []).reduce(
        (sum, { node, dof, k }) => sum + k * (solution.displacements[node]?.[ALL.indexOf(dof)] ?? Number.NaN) ** 2,
        0,
      );
      const work = workOf(model.nodalLoads, solution);
      expect(Math.abs(work - inside - ground)).toBeLessThanOrEqual(1e-9 * work + 1e-15);
    }),
    RUNS,
  );
});

test('six rigid motions of the supports move all and load nothing', () => {
  fc.assert(
    fc.property(randomFrame({ springs: true }), fc.nat(5), (model, which) => {
      const unit = ALL.map((_, i) => (i === which ? 0.01 : 0));
      const [shift, turn] = [three(unit, 0), three(unit, 3)];
      const at = (id: string | number): number[] => {
        const moved = add(shift, cross(turn, placeOf(model, String(id))));
        return [...moved, ...turn];
      };
      const { displacements, memberEndForces } = solved({
        ...model,
        nodalLoads: [],
        supports: model.supports.map((support) => ({
          ...support,
          imposed: Object.fromEntries(support.fixed.map((dof) => [dof, at(support.node)[ALL.indexOf(dof)] ?? 0])),
        })),
      });
      for (const { id } of model.nodes)
        at(id).forEach((value, i) => {
          expect(Math.abs((displacements[id]?.[i] ?? Number.NaN) - value)).toBeLessThan(1e-11);
        });
      // 0.01 mm or rad of true deformation would be some 1e4 N.
      for (const row of Object.values(memberEndForces))
        for (const value of row) expect(Math.abs(value)).toBeLessThan(1e-6);
    }),
    RUNS,
  );
});

test('loads times three: everything times three', () => {
  fc.assert(
    fc.property(randomFrame(EVERYTHING), (model) => {
      const one = solved(model);
      const times = <T extends readonly number[]>(list: T): T => list.map((value) => 3 * value) as unknown as T;
      const three = solved({
        ...model,
        nodalLoads: (model.nodalLoads ?? []).map((load) => ({ ...load, F: times(load.F) })),
        members: model.members.map((member) => ({
          ...member,
          distributed: (member.distributed ?? []).map((each) => ({ ...each, q: times(each.q) })),
        })),
      });
      const table = (rows: Readonly<Record<string, readonly number[]>>) =>
        Object.fromEntries(Object.entries(rows).map(([id, row]) => [id, times(row)]));
      expect(
        solutionError(three, {
          displacements: table(one.displacements),
          reactions: table(one.reactions),
          memberEndForces: table(one.memberEndForces),
        }),
      ).toBeLessThan(1e-10);
    }),
    RUNS,
  );
});
