/** What is put on the frame and what ties it: tendons in balance, the ground's shear, the windlass, ties of feet of other forms. */
import { describe, expect, test } from 'vitest';
import { runCase } from '../../../../src/mechanics/foot/case-draw';
import { twistForces } from '../../../../src/mechanics/foot/ground';
import { type LoadCase, TENDONS } from '../../../../src/mechanics/foot/load-case';
import { frameNodes } from '../../../../src/mechanics/foot/nodes';
import { movementAt, padForces } from '../../../../src/mechanics/foot/recover';
import { tendonForces, tendonPaths } from '../../../../src/mechanics/foot/tendons';
import { padsOf, pathLength, tiesOf } from '../../../../src/mechanics/foot/ties';
import { add, cross, length, normalize, scale, subtract, type Vec3 } from '../../../../src/units';
import { modelLoadedFoot, PERSON, TOLD, TOLD_CASES, toldCaseOf } from '../../../tools/loaded-foot';

const foot = modelLoadedFoot();
const { marks } = foot;

describe.each(['standing', 'heelRaise'] as const)('tendons, %s', (pose) => {
  const placing = foot.placing(pose);
  test.each(TENDONS)('%s: what it does to the foot is its pull up the leg and nothing else', (tendon) => {
    const paths = tendonPaths(marks)[tendon];
    const forces = tendonForces(marks, placing, tendon, 100);
    // Seen from the leg: one pull along the last stretch of each path.
    const pulls = paths.map((path) => {
      const last = placing.point(path[path.length - 1] as (typeof path)[number]);
      const before = placing.point(path[path.length - 2] as (typeof path)[number]);
      const onLeg = ['tibia', 'fibula'].includes(path[path.length - 1]?.bone ?? '');
      const way = onLeg ? normalize(subtract(last, before)) : placing.direction('tibia', [0, 1, 0]);
      return { at: last, force: scale(way, -100 / paths.length) };
    });
    const all = [...forces, ...pulls];
    expect(length(all.reduce<Vec3>((sum, each) => add(sum, each.force), [0, 0, 0]))).toBeLessThan(1e-9);
    expect(length(all.reduce<Vec3>((sum, each) => add(sum, cross(each.at, each.force)), [0, 0, 0]))).toBeLessThan(1e-7);
  });
});

test('a free moment is shared as shear that sums to nothing but that moment', () => {
  const placing = foot.placing('standing');
  const nodes = frameNodes(marks, foot.sections, placing);
  const pads = padsOf(marks, nodes, TOLD, placing, { heelMedial: 0, heelLateral: 0, head2: 0, head3: 0, head5: 0 });
  const shares = Float64Array.from(pads, (_, i) => 1 + (i % 3));
  const forces = twistForces(pads, shares, [0, 1, 0], 4000);
  const sum = forces.reduce<Vec3>((all, force) => add(all, force), [0, 0, 0]);
  const moment = pads.reduce((all, pad, i) => all + cross(pad.at, forces[i] as Vec3)[1], 0);
  expect(length(sum)).toBeLessThan(1e-9);
  expect(moment).toBeCloseTo(4000, 6);
});

test('ground higher under the outer edge, or pushing towards the inner side, loads the outer pads', () => {
  const loadCase = toldCaseOf('midstance');
  const share = (change: Partial<typeof loadCase.figures>): number => {
    const solved = runCase(foot, { ...loadCase, figures: { ...loadCase.figures, ...change } }, TOLD, PERSON);
    if ('kind' in solved) throw new Error(solved.kind);
    const pads = padForces(solved);
    const sum = (names: readonly string[]): number => names.reduce((all, name) => all + (pads.get(name) ?? 0), 0);
    return sum(['head4', 'head5', 'base5', 'heelLateral']) / sum([...pads.keys()]);
  };
  expect(share({ tilt: 5 })).toBeGreaterThan(share({ tilt: 0 }));
  expect(share({ tilt: -5 })).toBeLessThan(share({ tilt: 0 }));
  expect(share({ sideways: 0.3 })).toBeGreaterThan(share({ sideways: 0 }));
});

describe('ties', () => {
  const slackOf = (pose: 'standing' | 'heelRaise', form = foot.form) => {
    const placing = foot.placing(pose, form);
    const nodes = frameNodes(marks, foot.sections, placing);
    return tiesOf(marks, nodes, { ...TOLD, ligamentSlack: 0 }, placing);
  };

  test('standing, the fascia is slack by its told share of its way, and ligaments by none', () => {
    for (const tie of slackOf('standing')) {
      if (!tie.id.startsWith('fascia')) expect(tie.slackMm).toBeCloseTo(0, 9);
      else {
        // Slips 2 to 5 go on to the toe, which counts: a little longer than what is drawn.
        expect(tie.slackMm / pathLength(tie.path)).toBeGreaterThan(TOLD.fasciaSlack - 1e-12);
        expect(tie.slackMm / pathLength(tie.path)).toBeLessThan(1.2 * TOLD.fasciaSlack);
      }
    }
  });

  test('so is that of a flat, a high, or an adducted foot: it has grown its own ties', () => {
    for (const form of [
      { ...foot.form, arch: -1 },
      { ...foot.form, arch: 1 },
      { ...foot.form, adductusDeg: 15 },
    ])
      slackOf('standing', form).forEach((tie) => {
        if (!tie.id.startsWith('fascia')) expect(tie.slackMm).toBeCloseTo(0, 9);
        else expect(tie.slackMm / pathLength(tie.path)).toBeLessThan(1.2 * TOLD.fasciaSlack);
      });
  });

  test('toes bent back draw every slip round its head, the first the most (windlass)', () => {
    const wound = ([1, 2, 3, 4, 5] as const).map((ray) => {
      const { plantarHead, toeBase } = marks.rays[ray];
      const [standing, raised] = (['standing', 'heelRaise'] as const).map((pose) => {
        const { point } = foot.placing(pose);
        return length(subtract(point(toeBase), point(plantarHead)));
      }) as [number, number];
      return raised - standing;
    });
    // Toes turn by about 30 degrees round heads of 7 to 10 mm: 4 to 5 mm along the arc, less along the chord.
    for (const mm of wound) {
      expect(mm).toBeGreaterThan(2);
      expect(mm).toBeLessThan(6);
    }
    const slack = (pose: 'standing' | 'heelRaise'): number =>
      slackOf(pose).find((tie) => tie.id === 'fascia-1')?.slackMm ?? Number.NaN;
    expect(slack('standing') - slack('heelRaise')).toBeGreaterThan(2);
    expect(slack('standing') - slack('heelRaise')).toBeLessThan(6);
  });

  test('no pose pulls at a ligament', () => {
    for (const tie of slackOf('heelRaise'))
      if (!tie.id.startsWith('fascia')) expect(tie.slackMm).toBeGreaterThan(-1e-9);
  });
});

const leans = ({ contact, figures }: LoadCase): boolean => contact === 'whole sole' && figures.tilt !== 0;
const idsOf = (all: readonly LoadCase[]): string[] => all.map((each) => each.id);

test.each(idsOf(TOLD_CASES.filter((each) => !leans(each))))('%s: a foot of next to no weight does not move', (id) => {
  const solved = runCase(foot, toldCaseOf(id), TOLD, { ...PERSON, massKg: 1e-9 });
  if ('kind' in solved) throw new Error(solved.kind);
  expect(Math.max(...solved.displacement.map(Math.abs))).toBeLessThan(1e-5);
});

// Nothing but the ground holds a foot up: a light one comes to rest on ground that leans away from it, and no farther.
test.each(idsOf(TOLD_CASES.filter(leans)))('%s: a light foot comes to rest on the ground that leans', (id) => {
  const solved = runCase(foot, toldCaseOf(id), TOLD, { ...PERSON, massKg: 1 });
  if ('kind' in solved) throw new Error(solved.kind);
  const farthest = Math.max(...solved.ready.pads.map((pad) => pad.gapMm));
  expect(Math.max(...solved.displacement.map(Math.abs))).toBeGreaterThan(0.1);
  expect(Math.max(...solved.displacement.map(Math.abs))).toBeLessThan(farthest);
  expect(solved.padN.filter((n) => n > 0).length).toBeGreaterThan(1);
});

test('a place far from its node moves with its turn', () => {
  const solved = runCase(foot, toldCaseOf('standing'), TOLD, PERSON);
  if ('kind' in solved) throw new Error(solved.kind);
  const node = solved.ready.nodes.rigid.calcaneus;
  const [at, u] = [solved.ready.nodes.at[node] as Vec3, solved.displacement];
  const turn: Vec3 = [u[6 * node + 3] as number, u[6 * node + 4] as number, u[6 * node + 5] as number];
  const away = movementAt(solved, node, add(at, [0, 0, 100]));
  const here = movementAt(solved, node, at);
  expect(away[1] - here[1]).toBeCloseTo(-100 * turn[0], 12);
  expect(away[0] - here[0]).toBeCloseTo(100 * turn[1], 12);
});
