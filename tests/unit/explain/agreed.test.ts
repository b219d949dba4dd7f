/** Four fifths of the draws state something, or its contrary against the told run, or the model cannot tell. */
import { expect, test } from 'vitest';
import type { Finding, Message } from '../../../src/explain';
import { statedBy } from '../../../src/explain/agreed';
import { type FindingId, idOf } from '../../../src/ids';
import { agreementOf, enoughSay } from '../../../src/mechanics/foot/spread';
import { plainText, wordFinding } from '../../../src/wording';
import { caseOf, content, explained } from '../../tools/explained';

const draws = (yes: number, no: number): boolean[] => [...Array(yes).fill(true), ...Array(no).fill(false)];

test('the contrary of a told run is stated where four fifths of the draws say it, and not one draw fewer', () => {
  expect(statedBy(agreementOf(true, draws(8, 2), 10))).toEqual({
    holds: true,
    agreed: { share: { value: 0.8, unit: 'share' }, enough: true },
  });
  expect(statedBy(agreementOf(true, draws(2, 8), 10))).toEqual({
    holds: false,
    agreed: { share: { value: 0.8, unit: 'share' }, enough: true, contrary: true },
  });
  expect(statedBy(agreementOf(true, draws(3, 7), 10))).toMatchObject({ holds: true, agreed: { enough: false } });
});

test('a draw without an answer does not say the contrary', () => {
  expect(statedBy(agreementOf(true, draws(1, 7), 10)).agreed).toMatchObject({ share: { value: 0.1 }, enough: false });
});

test('draws are asked until the answer is known and no further', () => {
  const asked = (yes: number, no: number, noFirst: boolean): [boolean, number] => {
    let count = 0;
    const all = noFirst ? draws(yes, no).reverse() : draws(yes, no);
    const said = enoughSay(all, (says) => {
      count += 1;
      return says;
    });
    return [said, count];
  };
  expect(asked(80, 20, false)).toEqual([true, 80]);
  expect(asked(80, 20, true)).toEqual([true, 100]);
  expect(asked(79, 21, true)).toEqual([false, 21]);
});

const explanation = explained(caseOf(['bone', 'metatarsal3']));
const said = (message: Message, reader: 'patient' | 'broadcast' | 'study'): string => {
  const finding: Finding = {
    id: idOf<FindingId>('how.test'),
    message,
    depth: 'more',
    shows: [],
    confidence: { level: 'uncertain', reason: { by: 'nothing' } },
    basis: { sources: [], claims: [], compute: 'how.test', inputs: {} },
    whatIf: false,
  };
  return plainText(wordFinding(content, explanation, finding, reader));
};

test('every reader hears what the draws say, and that the run that is drawn stands alone', () => {
  const most = (agreement: Parameters<typeof statedBy>[0]): Message => {
    const { holds, agreed } = statedBy(agreement);
    return { id: 'loadMostOfFive', args: { bone: 'metatarsal3', most: holds, agreed } };
  };
  const contrary = most(agreementOf(true, draws(10, 90), 100));
  expect(said(contrary, 'study')).toMatch(/^Another metatarsal .* 90 % of the draws\. .*odd one out\.$/);
  expect(said(contrary, 'patient')).toMatch(
    /another one is stretched more\. The run that is drawn is the odd one out\.$/,
  );
  expect(said(contrary, 'broadcast')).toContain('odd one out');
  expect(said(most(agreementOf(false, draws(10, 90), 100)), 'study')).not.toContain('odd one out');
  expect(said(most(agreementOf(true, draws(40, 60), 100)), 'patient')).toContain('cannot tell');
});

test('a side on which the draws do not agree is told of neither pull nor push', () => {
  const pull = (sideUnsure: boolean, pressedUnsure: boolean): Message => ({
    id: 'loadPull',
    args: {
      activity: idOf('running'),
      activityAssumed: false,
      mass: { value: 70, unit: 'kg' },
      massAssumed: false,
      carried: { value: 0, unit: 'kg' },
      pulledSide: 'top',
      pressedSide: 'sole',
      sideUnsure,
      pressedUnsure,
      plateau: {
        from: { value: 34.5, unit: 'mm', lowHigh: [34.5, 40.7] },
        to: { value: 36.6, unit: 'mm', lowHigh: [36.6, 51.1] },
      },
    },
  });
  for (const reader of ['patient', 'broadcast', 'study'] as const) {
    expect(said(pull(false, false), reader)).toMatch(/top.*sole/);
    expect(said(pull(false, true), reader)).toMatch(/which side is pressed hardest/i);
    expect(said(pull(false, true), reader)).not.toContain('sole');
    expect(said(pull(true, false), reader)).toMatch(/which side is pulled hardest/i);
    expect(said(pull(true, true), reader)).not.toContain('sole');
  }
  expect(said(pull(true, true), 'patient')).not.toContain('top');
  // A narrow stretch of one run is told with where the draws have its ends.
  expect(said(pull(false, false), 'study')).toContain('34.5 mm (34.5 to 40.7) to 36.6 mm (36.6 to 51.1)');
});
