/** Where a contributor moves the pull: told only where the draws agree and it is more than a cut's distance, in each reader's words. */
import { expect, it, test } from 'vitest';
import type { Finding, Message } from '../../../src/explain';
import { shiftTold } from '../../../src/explain/how-hangs';
import { type FindingId, idOf, READERS } from '../../../src/ids';
import { plainText, wordFinding } from '../../../src/wording';
import { caseOf, content, explained } from '../../tools/explained';

/** Of all draws: so many go the way of the told run, so many hardly move. */
const shift = (told: number, low: number, high: number, same: number, still = 0, other = 0) => ({
  shift: { mm: { told, low, high }, toHead: told > 0 ? same : other, toTip: told > 0 ? other : same, still },
});

test.each([
  ['both ways agree', shift(4.14, 0.93, 5.18, 0.9), 'toHead', 4.1],
  ['towards the tip, its size without a sign', shift(-3.2, -5, -1, 0.8), 'toTip', 3.2],
  ['too few draws agree on a way', shift(4.14, 0.93, 5.18, 0.79), 'cannotTell', 4.1],
  ['enough draws hardly move it', shift(-1, -1.2, -0.9, 1, 0.8), 'stays', -1],
  ['they do, whatever the told run does', shift(4, -0.5, 0.5, 0.5, 0.9), 'stays', 4],
  ['a told run that hardly moves is none against draws that differ', shift(0, -4, 4, 0, 0.3, 0.4), 'cannotTell', 0],
  ['draws that all go the other way, and far', shift(0.4, -5, -1.1, 0.1, 0, 0.9), 'toTip', -0.4],
  ['draws that go the other way, not all of them far', shift(0.4, -5, -0.9, 0.1, 0.2, 0.8), 'cannotTell', 0.4],
] as const)('%s', (_, given, moves, mm) => {
  const told = shiftTold(given, true);
  expect([told.moves, told.by.value]).toEqual([moves, mm]);
  expect(told.by.lowHigh?.[0]).toBeLessThanOrEqual(told.by.value);
  expect(told.by.lowHigh?.[1]).toBeGreaterThanOrEqual(told.by.value);
  expect(told.agreed.enough).toBe(moves !== 'cannotTell');
});

test('a way that the draws go against the told run has no size, and says so', () => {
  expect(shiftTold(shift(0.4, -5, -1.1, 0.1, 0, 0.9), true)).toMatchObject({
    sized: false,
    agreed: { contrary: true },
  });
});

const explanation = explained(caseOf(['bone', 'metatarsal5']));
const finding = (message: Message): Finding => ({
  id: idOf<FindingId>('how.test'),
  message,
  depth: 'more',
  shows: [],
  confidence: { level: 'uncertain', reason: { by: 'nothing' } },
  basis: { sources: [], claims: [], compute: 'how.test', inputs: {} },
  whatIf: false,
});
const said = (message: Message, reader: (typeof READERS)[number]): string =>
  plainText(wordFinding(content, explanation, finding(message), reader));

const contributor = (given: Parameters<typeof shiftTold>[0], sized: boolean): Message => ({
  id: 'contributor',
  args: {
    contributor: 'twistIn',
    byTask: false,
    ratio: { value: 1.39, unit: 'times', lowHigh: [1.2, 1.5] },
    ranking: !sized,
    raises: true,
    agreed: { share: { value: 1, unit: 'share' }, enough: true },
    shift: shiftTold(given, sized),
  },
});

it('says so with numbers for study and in few words for a patient; without a size where none may be stated', () => {
  const moved = shift(4.14, 0.93, 5.18, 0.9);
  expect(said(contributor(moved, true), 'study')).toContain('moves 4.1 mm (0.9 to 5.2) towards the head; 90 %');
  expect(said(contributor(moved, true), 'patient')).toMatch(/The hardest pull moves towards the toes\.$/);
  const ranked = said(contributor(moved, false), 'study');
  expect(ranked).toContain('towards the head');
  expect(ranked).not.toContain('4.1');
  const stays = contributor(shift(0, -1, 0, 0.1, 0.9), true);
  expect(said(stays, 'study')).toMatch(/moves by no more than a cut’s distance .* 90 % of the draws agree\.$/);
  const differ = contributor(shift(0, -4, 4, 0, 0.3, 0.4), true);
  expect(said(differ, 'study')).toMatch(/cannot tell whether the middle of the plateau moves: no more than 40 % /);
  // Not eleven times the same line to those who only want to know what changes.
  expect(said(stays, 'patient')).not.toContain('move');
});

const sensitivity = (...figures: readonly string[]): Message => ({
  id: 'loadSensitivity',
  args: {
    standOut: figures.map((figure) => ({ figure, share: { value: 0.25, unit: 'share' } })),
    chance: { value: 0.12, unit: 'share' },
    figures: 71,
    draws: 99,
  },
});

it('names the figures that stand out, and none where none does', () => {
  for (const reader of READERS) {
    expect(said(sensitivity(), reader)).toMatch(/^No one figure/);
    expect(said(sensitivity('case.tilt'), reader)).toMatch(/[Nn]o other/);
    expect(said(sensitivity('case.tilt', 'case.total'), reader)).toMatch(/, ?then| Then: /);
  }
  expect(said(sensitivity(), 'study')).toContain('12 %');
});

const along = (args: Partial<Extract<Message, { id: 'loadAlong' }>['args']>): Message => ({
  id: 'loadAlong',
  args: {
    activity: idOf('running'),
    ratio: { value: 0.35, unit: 'share', lowHigh: [0.2, 0.5] },
    leg: null,
    banded: true,
    ...args,
  },
});

it('tells horizontal over vertical of every run, and what the leg holds only as a size that may be stated', () => {
  const leg = {
    along: { value: 0.4, unit: 'body weight', lowHigh: [0.2, 0.6] },
    moment: { value: 12, unit: 'N m', lowHigh: [3, 20] },
    from: 'turningOut',
  } as const;
  expect(said(along({ leg }), 'study')).toContain('35 % (20 to 50) of what it pushes across');
  expect(said(along({ leg }), 'study')).toContain('from turning out with 12 N m (3 to 20)');
  expect(said(along({}), 'study')).toContain('35 %');
  expect(said(along({}), 'study')).not.toContain('N m');
  expect(said(along({ banded: false }), 'study')).toContain('waits for the draws');
});
