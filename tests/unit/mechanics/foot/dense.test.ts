/** The condensed frame against the same foot with every knot a node, put together and solved in another way. */
import { describe, expect, test } from 'vitest';
import { fromBone } from '../../../../src/anatomy';
import { runCase } from '../../../../src/mechanics/foot/case-draw';
import { RAYS } from '../../../../src/mechanics/foot/landmarks';
import { allStations, padForces } from '../../../../src/mechanics/foot/recover';
import type { FootSolution } from '../../../../src/mechanics/foot/solve';
import { add, cross, dot, subtract, type Vec3 } from '../../../../src/units';
import { denseFoot, lastEndOf, solveDense } from '../../../tools/dense-foot';
import { modelLoadedFoot, PERSON, TOLD, toldCaseOf } from '../../../tools/loaded-foot';

const foot = modelLoadedFoot();
const solved = (id: string): FootSolution => {
  const answer = runCase(foot, toldCaseOf(id), TOLD, PERSON);
  if ('kind' in answer) throw new Error(`${id}: ${answer.kind}`);
  return answer;
};

const apart = (a: Float64Array, b: Float64Array): number => {
  const most = Math.max(...a.map(Math.abs));
  return Math.max(...a.map((value, i) => Math.abs(value - (b[i] as number)))) / most;
};

test.each([
  ['side-step-cut', 1],
  ['walking', 1],
  ['midstance', 2],
] as const)('%s: every knot a node, each element in %i: the same motions and forces', (id, pieces) => {
  const solution = solved(id);
  const dense = denseFoot(solution.ready, foot.sections, TOLD, pieces);
  const answer = solveDense(dense, solution);
  expect(apart(solution.tieN, answer.tieN)).toBeLessThan(1e-9);
  expect(apart(solution.padN, answer.padN)).toBeLessThan(1e-9);
  expect(apart(solution.displacement, answer.displacement)).toBeLessThan(1e-9);
});

test.each(['side-step-cut', 'running'])(
  '%s: forces and moments along every bone are those of the element there',
  (id) => {
    const solution = solved(id);
    const { ready, weightN } = solution;
    const dense = denseFoot(ready, foot.sections, TOLD);
    const answer = solveDense(dense, solution);
    const stations = allStations(solution, foot.sections, TOLD.wall);
    for (const ray of RAYS) {
      const { axis, bone } = foot.marks.rays[ray];
      const [along, dorsal, lateral] = [axis.axis, axis.dorsal, axis.lateral].map((d) =>
        ready.placing.direction(bone, d),
      ) as [Vec3, Vec3, Vec3];
      const { knots } = ready.nodes.rays[ray];
      let seen = 0;
      for (const station of stations[ray]) {
        const i = knots.findIndex(
          (knot, k) => station.sMm > knot.sMm && station.sMm <= (knots[k + 1]?.sMm ?? Number.NEGATIVE_INFINITY),
        );
        const element = dense.elements.find((each) => each.ray === ray && each.i === i);
        if (!element) continue;
        seen++;
        const [fx, fy, fz, mx, my, mz] = lastEndOf(element, answer) as [number, number, number, number, number, number];
        const force: Vec3 = [fx, fy, fz];
        const place = ready.placing.point({ bone, at: fromBone(axis, station.sMm, ...station.section.centroidMm) });
        const moment = add([mx, my, mz], cross(subtract((knots[i + 1] as { at: Vec3 }).at, place), force));
        const close = (got: number, expected: number, by: number): void =>
          expect(Math.abs(got - expected) / by).toBeLessThan(1e-8);
        close(station.axialN, dot(force, along), weightN);
        close(station.shearDorsalN, dot(force, dorsal), weightN);
        close(station.shearLateralN, dot(force, lateral), weightN);
        close(station.bendingUpDownNmm, dot(moment, lateral), 100 * weightN);
        close(station.bendingSidewaysNmm, dot(moment, dorsal), 100 * weightN);
        close(station.torsionNmm, dot(moment, along), 100 * weightN);
      }
      expect(seen).toBeGreaterThan(20);
    }
  },
);

describe('a fifth ray whose joints hold nothing', () => {
  const midstance = solved('midstance');
  const { ready } = midstance;
  const loose = ready.springs.map((spring) => {
    if (!spring.id.includes('metatarsal5')) return spring;
    const [x, y, z] = spring.turning;
    const k = 1e-7;
    return { ...spring, along: k * spring.along, across: k * spring.across, turning: [k * x, k * y, k * z] as const };
  });
  const before = padForces(midstance);
  const padsOf = (of: FootSolution): ((name: string) => number) => {
    const { padN } = solveDense(denseFoot(of.ready, foot.sections, TOLD, 1, loose), of);
    return (name) => of.ready.pads.reduce((sum, pad, i) => (pad.pad === name ? sum + (padN[i] as number) : sum), 0);
  };
  const all = (of: (name: string) => number): number => [...before.keys()].reduce((sum, name) => sum + of(name), 0);
  const onFifth = (row: Float64Array): boolean => {
    const { firstNode, stops } = ready.nodes.rays[5];
    return row.subarray(6 * firstNode, 6 * (firstNode + stops.length)).some((x) => x !== 0);
  };

  test('hangs on its ties alone and carries less than half at its head, and the ground carries the whole foot still', () => {
    const padN = padsOf(midstance);
    expect(padN('head5')).toBeLessThan(0.5 * (before.get('head5') ?? 0));
    expect(all(padN)).toBeCloseTo(
      all((name) => before.get(name) ?? 0),
      0,
    );
  });

  test('carries nothing once its ties are gone too, and the other pads carry it all', () => {
    const kept = ready.ties.map((_, i) => !onFifth(ready.rows[i] as Float64Array));
    expect(kept.filter((each) => !each).length).toBeGreaterThan(2);
    const padN = padsOf({
      ...midstance,
      ready: {
        ...ready,
        ties: ready.ties.filter((_, i) => kept[i]),
        rows: ready.rows.filter((_, i) => kept[i] ?? true),
      },
    });
    expect(before.get('head5') ?? 0).toBeGreaterThan(1);
    for (const pad of ['head5', 'base5']) expect(padN(pad) / midstance.weightN).toBeLessThan(1e-4);
    expect(all(padN)).toBeCloseTo(
      all((name) => before.get(name) ?? 0),
      0,
    );
  });
});
