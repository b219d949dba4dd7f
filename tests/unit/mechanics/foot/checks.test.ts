/** The records of content/load-checks.yaml and the functions that compute them belong together one by one; what counts as a hit. */
import { expect, test } from 'vitest';
import { readContent } from '../../../../src/cli/read-content';
import { inPress, pressArch } from '../../../../src/mechanics/foot/arch-test';
import { CHECK_IDS, CHECKS, checkAnswers, checkShares, holds } from '../../../../src/mechanics/foot/checks';
import { trialOf } from '../../../../src/mechanics/foot/checks-trial';
import { firstRayTravel } from '../../../../src/mechanics/foot/first-ray-test';
import { CHECK_BANDS, CHECK_TOLD, FRAME_BANDS, modelLoadedFoot, TOLD } from '../../../tools/loaded-foot';

const records = readContent().loadChecks;
const foot = modelLoadedFoot();

test('every check has its record, and every record its check', () => {
  expect(records.map((r) => r.id).sort()).toEqual([...CHECK_IDS].sort());
});

test('each computes one number for each label, in the unit that it names', () => {
  const trial = trialOf(foot, TOLD, CHECK_TOLD);
  for (const record of records) {
    if (record.id.startsWith('cutOverTired')) continue;
    expect([record.id, CHECKS[record.id as keyof typeof CHECKS](trial).length]).toEqual([
      record.id,
      record.numbers.length,
    ]);
  }
});

test('what counts as a hit', () => {
  expect(holds({ kind: 'band', low: 1, high: 2 }, [1, 2])).toBe(true);
  expect(holds({ kind: 'band', low: 1, high: 2 }, [1, 2.01])).toBe(false);
  expect(holds({ kind: 'band', low: 1 }, [0.99])).toBe(false);
  expect(holds({ kind: 'band', high: 1 }, [Number.NEGATIVE_INFINITY])).toBe(false);
  expect(holds({ kind: 'sign', sign: 'negative' }, [-1, -2])).toBe(true);
  expect(holds({ kind: 'sign', sign: 'negative' }, [-1, 0])).toBe(false);
  expect(holds({ kind: 'ranking' }, [3, 2, 2])).toBe(false);
  expect(holds({ kind: 'ranking' }, [3, 2, 1])).toBe(true);
  expect(holds({ kind: 'trend', way: 'rises' }, [1, 2, 3])).toBe(true);
  expect(holds({ kind: 'trend', way: 'falls' }, [3, 1, 2])).toBe(false);
  expect(holds({ kind: 'sign', sign: 'positive' }, [])).toBe(false);
  expect(holds({ kind: 'sign', sign: 'positive' }, [Number.NaN])).toBe(false);
});

test('a check for which the frame finds no answer is a miss that says so', () => {
  const [answer] = checkAnswers(foot, TOLD, CHECK_TOLD, { cutOverTiredSecond: { kind: 'ranking' } });
  expect(answer).toMatchObject({ verdict: 'miss', got: [] });
  expect(answer?.unsolved).toMatch(/absurd/);
});

test('shares of draws: the same for the same seed, and whole where a check says nothing', () => {
  const expected = { slipOrder: { kind: 'ranking' }, fiveDorsal: { kind: 'band', low: -1e9 } } as const;
  const shares = (seed: number) => checkShares(foot, FRAME_BANDS, CHECK_BANDS, expected, 8, seed);
  expect(shares(2)).toEqual(shares(2));
  expect(shares(2).find((s) => s.id === 'fiveDorsal')).toEqual({ id: 'fiveDorsal', share: 1, unsolved: 0 });
});

test('in the press the calf is idle, and the ground pushes right below the ankle', () => {
  const pressed = inPress(foot, TOLD);
  if ('kind' in pressed) throw new Error(pressed.kind);
  for (const loadN of [50, 683, 1500]) {
    const answer = pressArch(pressed, loadN);
    if ('kind' in answer) throw new Error(answer.kind);
    const { achillesN, padN, ready } = answer.solution;
    expect(Math.abs(achillesN)).toBeLessThan(1e-6 * loadN);
    const pressedN = padN.reduce((a, b) => a + b, 0);
    expect(pressedN / loadN).toBeCloseTo(1, 3);
    const centre = padN.reduce((sum, force, i) => sum + force * (ready.pads[i]?.at[2] ?? 0), 0) / pressedN;
    expect(centre).toBeCloseTo(ready.placing.point(foot.marks.ankle)[2], 1);
  }
});

test('a cut or softer foot never gets less long in the press, and the other ties take over', () => {
  const lengths = [TOLD, { ...TOLD, fasciaTotal: 0 }, { ...TOLD, fasciaTotal: 0, ligamentFactor: 0.2 }].map((f) => {
    const pressed = inPress(foot, f);
    const answer = 'kind' in pressed ? pressed : pressArch(pressed, 1000);
    if ('kind' in answer) throw new Error(answer.kind);
    return answer.lengtheningMm;
  });
  expect(lengths).toEqual([...lengths].sort((a, b) => a - b));
  expect(new Set(lengths).size).toBe(3);
});

test('a first ray on stiffer joints travels less between its two pushes', () => {
  const travel = [0.5, 1, 2].map((by) =>
    firstRayTravel(foot, { ...TOLD, tarsometatarsal1: by * TOLD.tarsometatarsal1 }),
  );
  expect(travel).toEqual([...travel].sort((a, b) => b - a));
  // A lever of about 60 mm on 13 N m/rad and its like behind it: centimetres, not millimetres or decimetres, under 100 N.
  expect(travel[1]).toBeGreaterThan(5);
  expect(travel[1]).toBeLessThan(40);
});
