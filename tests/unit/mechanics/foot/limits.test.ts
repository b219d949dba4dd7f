/** The frame at its ends: ties that are rigid or gone, nothing that holds, loads that no foot can take. */
import { expect, test } from 'vitest';
import { assemble, tieRow } from '../../../../src/mechanics/foot/assemble';
import { loadBands, loadDraws } from '../../../../src/mechanics/foot/bands';
import { runCase } from '../../../../src/mechanics/foot/case-draw';
import { flagsOf } from '../../../../src/mechanics/foot/loads';
import type { FrameFigures } from '../../../../src/mechanics/foot/parameter-names';
import { pathForces } from '../../../../src/mechanics/foot/path-forces';
import { allStations, jointForces } from '../../../../src/mechanics/foot/recover';
import type { FootSolution } from '../../../../src/mechanics/foot/solve';
import { pathLength } from '../../../../src/mechanics/foot/ties';
import type { Vec3 } from '../../../../src/units';
import { bandedCase, freeFrames, modelLoadedFoot, PERSON, TOLD, toldCaseOf } from '../../../tools/loaded-foot';

const foot = modelLoadedFoot();
const solved = (id: string, f: FrameFigures = TOLD): FootSolution => {
  const answer = runCase(foot, toldCaseOf(id), f, PERSON);
  if ('kind' in answer) throw new Error(`${id}: ${answer.kind}`);
  return answer;
};

test('a task against itself has no spread to share out; with the ground tilted for the case alone it is held against level ground', () => {
  const walking = bandedCase('walking');
  const against = (loadCase: typeof walking) =>
    loadBands(foot, loadDraws(freeFrames(4, 3), loadCase, walking, 3), loadCase, walking, PERSON, 5, {
      seed: 3,
      tried: 4,
    });
  const itself = against(walking);
  expect(itself?.ratio).toEqual({ told: 1, low: 1, high: 1 });
  expect(itself?.sensitivity).toEqual([]);
  const { tilt } = walking.figures;
  const tilted = against({
    ...walking,
    figures: { ...walking.figures, tilt: { value: tilt.value + 8, low: tilt.low + 8, high: tilt.high + 8 } },
  });
  expect(tilted?.ratio.told).toBeGreaterThan(1.3);
  expect(tilted?.sensitivity.length).toBeGreaterThan(10);
});

test('six ways for a foot that nothing holds to move as one piece: no force in any bone, joint or tie', () => {
  const { ready } = solved('walking');
  const { marks, nodes, placing, springs, ties } = ready;
  const free = assemble(marks, nodes, placing, foot.sections, TOLD, springs, {
    ...ready.hold,
    slide: [0, 0, 0],
    turn: [0, 0, 0],
  });
  const largest = Math.max(...free.stiffness.map(Math.abs));
  for (let way = 0; way < 6; way++) {
    const motion = new Float64Array(free.n);
    nodes.at.forEach(([x, y, z], node) => {
      const axis = way - 3;
      // A turn about the foot's origin moves a place by axis x place.
      const moved: Vec3 =
        way < 3
          ? [way === 0 ? 1 : 0, way === 1 ? 1 : 0, way === 2 ? 1 : 0]
          : ((
              [
                [0, -z, y],
                [z, 0, -x],
                [-y, x, 0],
              ] as const
            )[axis] as Vec3);
      moved.forEach((value, i) => {
        motion[6 * node + i] = value;
      });
      if (way >= 3) motion[6 * node + way] = 1;
    });
    const size = Math.max(...motion.map(Math.abs));
    for (let i = 0; i < free.n; i++) {
      let force = 0;
      for (let j = 0; j < free.n; j++) force += (free.stiffness[i * free.n + j] as number) * (motion[j] as number);
      expect(Math.abs(force) / (largest * size)).toBeLessThan(1e-12);
    }
    for (const tie of ties) {
      const longer = tieRow(free.n, nodes, tie).reduce((sum, x, i) => sum + x * (motion[i] as number), 0);
      expect(Math.abs(longer) / size).toBeLessThan(1e-12);
    }
  }
});

test('a fascia as stiff as can be gets no longer than its slack', () => {
  const { ready, displacement, tieN } = solved('side-step-cut', { ...TOLD, fasciaTotal: 1e9 });
  ready.ties.forEach((tie, i) => {
    if (!tie.id.startsWith('fascia')) return;
    const longer = (ready.rows[i] as Float64Array).reduce((sum, x, k) => sum + x * (displacement[k] as number), 0);
    expect(longer - tie.slackMm).toBeLessThan(1e-4);
    expect(pathLength(tie.path)).toBeGreaterThan(50);
    if ((tieN[i] as number) > 1) expect(Math.abs(longer - tie.slackMm)).toBeLessThan(1e-4);
  });
});

test('a fascia of no stiffness is the same as one of hardly any, and is not listed', () => {
  const [gone, thread] = [
    solved('side-step-cut', { ...TOLD, fasciaTotal: 0 }),
    solved('side-step-cut', { ...TOLD, fasciaTotal: 1e-9 }),
  ];
  expect(gone.ready.ties.some((tie) => tie.id.startsWith('fascia'))).toBe(false);
  gone.displacement.forEach((value, i) => {
    expect(value).toBeCloseTo(thread.displacement[i] as number, 7);
  });
});

test('a fascia gets stiffer: the loads do less and less work', () => {
  const work = [0, 50, 204, 800].map((fasciaTotal) => {
    const { load, displacement } = solved('midstance', { ...TOLD, fasciaTotal });
    return load.reduce((sum, f, i) => sum + f * (displacement[i] as number), 0);
  });
  for (let i = 1; i < work.length; i++) expect(work[i] as number).toBeLessThanOrEqual(work[i - 1] as number);
});

test('joints that hold nothing are named', () => {
  const nothing = {
    ...TOLD,
    rotationFactor: 0,
    otherAxes: 0,
    subtalar: 0,
    subtalarAxial: 0,
    jointAlong: 0,
    jointAcross: 0,
    keystoneAlong: 0,
    keystoneAcross: 0,
    baseFacetAlong: 0,
    baseFacetAcross: 0,
    firstToe: 0,
    firstToeSide: 0,
  };
  expect(runCase(foot, toldCaseOf('standing'), nothing, PERSON)).toMatchObject({ kind: 'noStiffness' });
  // One joint alone: the first toe may turn freely about every axis.
  expect(runCase(foot, toldCaseOf('standing'), { ...TOLD, firstToe: 0, firstToeSide: 0 }, PERSON)).toMatchObject({
    kind: 'noStiffness',
  });
});

test('a push behind the heel or beyond the toes has its own name', () => {
  for (const centre of [-0.3, 2])
    expect(
      runCase(
        foot,
        { ...toldCaseOf('standing'), figures: { ...toldCaseOf('standing').figures, centre } },
        TOLD,
        PERSON,
      ),
    ).toMatchObject({
      kind: 'centreOfPressureOutside',
    });
});

test('a calf that would have to push is named, not told as pulling; one that pulls is told as it is', () => {
  const standing = toldCaseOf('standing');
  const at = (centre: number) => runCase(foot, { ...standing, figures: { ...standing.figures, centre } }, TOLD, PERSON);
  // Halfway between the heel's pads and the ankle.
  const span = foot.placing('standing').point(foot.marks.rays[2].head)[2];
  const behind = at(foot.placing('standing').point(foot.marks.ankle)[2] / span / 1.5);
  expect(behind).toMatchObject({ kind: 'calfPushes' });
  if ('kind' in behind && behind.kind === 'calfPushes') expect(behind.pushN).toBeGreaterThan(1);
  const ahead = at(0.5);
  if ('kind' in ahead) throw new Error(ahead.kind);
  const told = pathForces(ahead, jointForces(ahead), allStations(ahead, foot.sections, TOLD.wall), standing.figures);
  expect(told.find(({ id }) => id === 'achilles')).toMatchObject({ sense: 'pulled', forceN: ahead.achillesN });
  expect(ahead.achillesN).toBeGreaterThan(0);
});

test.each([0, -75, Number.NaN, Number.POSITIVE_INFINITY])('a person of %d kg is refused', (massKg) => {
  expect(runCase(foot, toldCaseOf('standing'), TOLD, { ...PERSON, massKg })).toEqual({ kind: 'badMass', massKg });
});
test.each([
  ['cortexYoung', 0],
  ['cortexShear', -1],
  ['legFrontal', 0],
  ['fasciaTotal', -204],
  ['headPad', Number.NaN],
  ['lisfranc', Number.POSITIVE_INFINITY],
] as const)('%s of %d is named, before anything is put together', (figure, value) => {
  expect(runCase(foot, toldCaseOf('standing'), { ...TOLD, [figure]: value }, PERSON)).toEqual({
    kind: 'badFigure',
    figure,
    value,
  });
});

test('stiffnesses too far apart to balance are no answer', () => {
  expect(runCase(foot, toldCaseOf('standing'), TOLD, { ...PERSON, soleBending: 1e12 })).toMatchObject({
    kind: 'inexact',
  });
});

test('so is a negative burden', () => {
  expect(runCase(foot, toldCaseOf('standing'), TOLD, { ...PERSON, carriedKg: -5 })).toEqual({
    kind: 'badMass',
    massKg: -5,
  });
});

test('a raised heel without fascia gives way beyond what the theory may say, and says so', () => {
  expect(runCase(foot, toldCaseOf('walking'), { ...TOLD, fasciaTotal: 0 }, PERSON)).toMatchObject({
    kind: 'absurd',
    where: 'phalanxProximal1',
  });
});

test('more and more load: sizes, then more and less, then no answer, with the part that turns too far', () => {
  const kinds = [1, 2, 4, 8].map((times) => {
    const loadCase = toldCaseOf('walking');
    const solved = runCase(foot, loadCase, TOLD, { ...PERSON, massKg: times * PERSON.massKg });
    if ('kind' in solved) return solved.kind === 'absurd' && solved.deg > 45 ? `absurd: ${solved.where}` : solved.kind;
    return flagsOf(solved, loadCase.figures).includes('largeTurns') ? 'large turns' : 'small';
  });
  expect(kinds).toEqual(['small', 'large turns', 'large turns', 'absurd: metatarsal1']);
});

test('the same seed gives the same bands, another seed others', () => {
  const [loadCase, reference] = [bandedCase('side-step-cut'), bandedCase('walking')];
  const bands = (seed: number) =>
    loadBands(foot, loadDraws(freeFrames(6, seed), loadCase, reference, seed), loadCase, reference, PERSON, 5, {
      seed,
      tried: 6,
    });
  const [one, again, another] = [bands(3), bands(3), bands(4)];
  expect(one).toEqual(again);
  expect(one?.ratio.told).toBe(another?.ratio.told);
  expect(one?.ratio.low).not.toBe(another?.ratio.low);
});

test('half the draws of every figure lie below its told value, before any is held against the press', () => {
  const draws = freeFrames(400, 9).slice(1);
  for (const name of ['rotationFactor', 'fasciaTotal', 'wall'] as const) {
    const below = draws.filter((draw) => draw.values[name] < TOLD[name]).length;
    // Two standard deviations of 400 throws of a coin are 20.
    expect(Math.abs(below - 200)).toBeLessThan(40);
  }
});
