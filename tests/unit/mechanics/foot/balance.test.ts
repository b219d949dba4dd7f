/** Statics of the solved foot, in every load case: what is put on, what the ground and the leg answer, what every part is told. */
import { describe, expect, test } from 'vitest';
import { WEAK_LIFT, WEAK_PITCH } from '../../../../src/mechanics/foot/assemble';
import { runCase } from '../../../../src/mechanics/foot/case-draw';
import { legHoldOf } from '../../../../src/mechanics/foot/leg-hold';
import { TENDONS } from '../../../../src/mechanics/foot/load-case';
import { flagsOf, loadsOf } from '../../../../src/mechanics/foot/loads';
import { movementAt } from '../../../../src/mechanics/foot/recover';
import { type FootSolution, solveFoot } from '../../../../src/mechanics/foot/solve';
import { solveLdl } from '../../../../src/mechanics/frame/ldl';
import { add, cross, dot, length, STANDARD_GRAVITY, scale, type Vec3 } from '../../../../src/units';
import { modelLoadedFoot, PERSON, TOLD, TOLD_CASES, toldCaseOf } from '../../../tools/loaded-foot';

const foot = modelLoadedFoot();
const solved = (id: string): FootSolution => {
  const answer = runCase(foot, toldCaseOf(id), TOLD, PERSON);
  if ('kind' in answer) throw new Error(`${id}: ${answer.kind}`);
  return answer;
};
const CASES = TOLD_CASES.map((each) => each.id);

/** What the leg answers at the ankle, force and free moment: without the weak springs, which stand there to be factored and carry nothing. */
const heldBy = (solution: FootSolution): { force: Vec3; moment: Vec3 } => {
  const { hold, nodes } = solution.ready;
  const move = movementAt(solution, nodes.rigid.talus, hold.at);
  const u = solution.displacement;
  const turn = [0, 1, 2].map((i) => u[6 * nodes.rigid.talus + 3 + i] as number);
  return {
    force: hold.slide.map((k, i) => (k === WEAK_LIFT ? 0 : -k * (move[i] as number))) as unknown as Vec3,
    moment: hold.turn.map((k, i) => (k === WEAK_PITCH ? 0 : -k * (turn[i] as number))) as unknown as Vec3,
  };
};

describe.each(CASES)('%s', (id) => {
  const solution = solved(id);
  const { ready } = solution;
  const pushes = ready.pads.map((pad, i) => ({ at: pad.at, force: scale(ready.ground, solution.padN[i] as number) }));
  const held = heldBy(solution);

  test('all forces and moments on the whole foot balance', () => {
    const all = [...solution.applied, ...pushes, { at: ready.hold.at, force: held.force }];
    const force = all.reduce<Vec3>((sum, each) => add(sum, each.force), [0, 0, 0]);
    const moment = all.reduce<Vec3>((sum, each) => add(sum, cross(each.at, each.force)), held.moment);
    const largest = Math.max(...all.map((each) => length(each.force)));
    expect(length(force) / largest).toBeLessThan(1e-9);
    expect(length(moment) / (100 * largest)).toBeLessThan(1e-9);
  });

  test('every freedom balances, far from a mechanism', () => {
    expect(solution.residual).toBeLessThan(1e-9);
    expect(ready.factor.smallestPivotRatio).toBeGreaterThan(1e-9);
  });

  test('ties only pull and pads only press, by their stiffness and what they reach past their gap', () => {
    const forces = [...solution.tieN, ...solution.padN];
    [
      ...ready.ties.map((t) => [t.stiffness, t.slackMm] as const),
      ...ready.pads.map((p) => [p.stiffness, p.gapMm] as const),
    ].forEach(([stiffness, gapMm], i) => {
      const reached = (ready.rows[i] as Float64Array).reduce(
        (sum, x, k) => sum + x * (solution.displacement[k] as number),
        0,
      );
      const force = forces[i] as number;
      expect(force).toBeGreaterThanOrEqual(0);
      expect(Math.abs(force - Math.max(0, stiffness * (reached - gapMm)))).toBeLessThan(1e-6 * (1 + force));
    });
  });

  test('the ground pushes as the case says', () => {
    const { figures: g, contact } = toldCaseOf(id);
    const pads = Object.values(foot.marks.pads);
    const shear = solution.applied
      .filter((each) => pads.includes(each.place))
      .reduce<Vec3>((sum, each) => add(sum, each.force), [0, 0, 0]);
    const ground = add(
      shear,
      pushes.reduce<Vec3>((sum, each) => add(sum, each.force), [0, 0, 0]),
    );
    const w = solution.weightN;
    expect(Math.abs(dot(ground, ready.ground) / w - g.total)).toBeLessThan(1e-9);
    expect(Math.abs(ground[2] / w - g.forwards)).toBeLessThan(1e-9);
    expect(Math.abs(dot(ground, [ready.ground[1], -ready.ground[0], 0]) / w - g.sideways)).toBeLessThan(1e-9);
    if (contact === 'whole sole' && g.forwards === 0) {
      const pressed = pushes.reduce((sum, each) => sum + each.at[2] * length(each.force), 0);
      const centre = pressed / pushes.reduce((sum, each) => sum + length(each.force), 0);
      expect(Math.abs(centre - g.centre * (ready.placing.point(foot.marks.rays[2].head)[2] as number))).toBeLessThan(
        1e-4,
      );
    }
  });

  test('what the leg is told to hold level and in turning is what its springs carry, and its share is of the ground as put in', () => {
    const leg = legHoldOf(solution);
    const w = solution.weightN;
    expect(Math.abs(leg.alongN - Math.hypot(held.force[0], held.force[2])) / w).toBeLessThan(1e-8);
    expect(Math.abs(leg.frontalNmm - held.moment[2]) / (100 * w)).toBeLessThan(1e-12);
    const { figures } = toldCaseOf(id);
    const told = loadsOf({ ...foot, placing: ready.placing }, solution, toldCaseOf(id));
    expect(told.legAlongN).toBe(leg.alongN);
    expect(told.sidewaysShare).toBeCloseTo(Math.hypot(figures.sideways, figures.forwards) / figures.total, 12);
    expect(told.flags.includes('slips')).toBe(told.sidewaysShare > 0.8);
  });

  test('the leg is asked for no pitch: the calf gives it', () => {
    expect(Math.abs(held.moment[0]) / (solution.weightN * 100)).toBeLessThan(1e-8);
  });
});

test.each([
  ['walking', 0],
  ['running', 3],
])('%s with a twist on ground tilted by %d: the calf gives its pitch too', (id, tilt) => {
  const loadCase = toldCaseOf(id);
  const twisted = { ...loadCase, figures: { ...loadCase.figures, twist: 20, tilt } };
  const answer = runCase(foot, twisted, TOLD, PERSON);
  if ('kind' in answer) throw new Error(answer.kind);
  expect(Math.abs(heldBy(answer).moment[0]) / (answer.weightN * 100)).toBeLessThan(1e-8);
});

test('a push along the ground that nobody balances by muscle is held by the leg; one above 0.8 of the push across is flagged', () => {
  const figures = { ...toldCaseOf('standing').figures, ...Object.fromEntries(TENDONS.map((tendon) => [tendon, 0])) };
  const withPush = (sideways: number) => {
    const loadCase = { ...toldCaseOf('standing'), figures: { ...figures, total: 0.5, sideways, forwards: 0 } };
    const answer = runCase(foot, loadCase, TOLD, PERSON);
    if ('kind' in answer) throw new Error(answer.kind);
    return { leg: legHoldOf(answer), w: answer.weightN, flags: flagsOf(answer, loadCase.figures) };
  };
  const [still, pushed] = [withPush(0), withPush(0.45)];
  // What is left without a push is what the calf's slant leaves over.
  expect(still.leg.alongN / still.w).toBeLessThan(0.1);
  expect(Math.abs(pushed.leg.alongN / pushed.w - 0.45)).toBeLessThan(0.1);
  // A push on the sole to the inner side turns the sole inwards about the ankle above it: the leg holds against that.
  expect(pushed.leg.frontalNmm - still.leg.frontalNmm).toBeLessThan(-10 * pushed.w);
  expect([still, pushed].map(({ flags }) => flags.includes('slips'))).toEqual([false, true]);
});

test('all forces go with body weight where nothing has slack or a gap', () => {
  const f = { ...TOLD, fasciaSlack: 0, ligamentSlack: 0, heelPadHardFrom: 0, headPadHardFrom: 0, basePadGap: 0 };
  for (const id of ['standing', 'midstance']) {
    const loadCase = toldCaseOf(id);
    const [one, more] = [PERSON.massKg, 1.1 * PERSON.massKg].map((massKg) => {
      const answer = runCase(foot, loadCase, f, { ...PERSON, massKg });
      if ('kind' in answer) throw new Error(answer.kind);
      return answer;
    }) as [FootSolution, FootSolution];
    expect(more.weightN).toBeCloseTo(1.1 * PERSON.massKg * STANDARD_GRAVITY, 9);
    for (const part of ['tieN', 'padN', 'displacement'] as const) {
      const most = Math.max(...one[part].map(Math.abs));
      one[part].forEach((value, i) => {
        expect(Math.abs((more[part][i] as number) - 1.1 * value) / most).toBeLessThan(1e-9);
      });
    }
    expect(more.achillesN / one.achillesN).toBeCloseTo(1.1, 9);
  }
});

test('work of the loads is what bones, joints, ties and pads hold, where nothing has slack or a gap', () => {
  const f = { ...TOLD, fasciaSlack: 0, ligamentSlack: 0, heelPadHardFrom: 0, headPadHardFrom: 0, basePadGap: 0 };
  const answer = runCase(foot, toldCaseOf('midstance'), f, PERSON);
  if ('kind' in answer) throw new Error(answer.kind);
  const { ready, displacement: u, load, tieN, padN } = answer;
  const { n, stiffness } = ready.assembled;
  let [work, kept] = [0, 0];
  for (let i = 0; i < n; i++) {
    work += ((load[i] as number) * (u[i] as number)) / 2;
    for (let j = 0; j < n; j++) kept += ((u[i] as number) * (stiffness[i * n + j] as number) * (u[j] as number)) / 2;
  }
  [...ready.ties, ...ready.pads].forEach((part, i) => {
    const force = [...tieN, ...padN][i] as number;
    kept += force ** 2 / part.stiffness / 2;
  });
  expect(work).toBeGreaterThan(1);
  expect(Math.abs(kept / work - 1)).toBeLessThan(1e-9);
});

test('what moves here when pushed there moves there when pushed here', () => {
  const { assembled, factor } = solved('walking').ready;
  const { n, stiffness } = assembled;
  const answers = [7, 20, 53, 88, 121].map((dof) => {
    const push = new Float64Array(n);
    push[dof] = 100;
    return { dof, move: solveLdl(factor, push) };
  });
  for (const a of answers)
    for (const b of answers) {
      const [there, here] = [a.move[b.dof] as number, b.move[a.dof] as number];
      expect(Math.abs(there - here)).toBeLessThan(1e-9 * Math.max(...a.move.map(Math.abs)));
    }
  // The solver reads one half of the matrix alone: the other must say the same.
  for (let i = 0; i < n; i++)
    for (let j = 0; j < i; j++)
      expect(Math.abs((stiffness[i * n + j] as number) - (stiffness[j * n + i] as number))).toBeLessThan(
        1e-9 * Math.abs(stiffness[i * n + i] as number),
      );
});

test('the same case solved again gives the same numbers', () => {
  const again = solveFoot(solved('running').ready, toldCaseOf('running'), PERSON.massKg);
  if ('kind' in again) throw new Error(again.kind);
  expect([...again.displacement]).toEqual([...solved('running').displacement]);
});
