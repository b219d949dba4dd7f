/** Cases that do not fit together, and cases that get worse: the explanation says so and draws nothing against a confirmed claim. */
import { describe, expect, it } from 'vitest';
import { newClaim, withClaim } from '../../../src/cases';
import type { CaseFile } from '../../../src/cases/schema';
import { type InjuryId, idOf } from '../../../src/ids';
import type { IsoDate } from '../../../src/units';
import { plainText, wordFinding } from '../../../src/wording';
import {
  CONFIRMED,
  caseOf,
  content,
  demoCase,
  explained,
  findingNamed,
  findingsOf,
  REPORTED,
} from '../../tools/explained';

const day = (text: string) => text as IsoDate;
const told = (file: CaseFile, id: string): string => {
  const explanation = explained(file);
  const finding = findingNamed(explanation, id);
  return finding === undefined ? '' : plainText(wordFinding(content, explanation, finding, 'broadcast'));
};

describe('a rumour against a scan', () => {
  const scanned = caseOf(['side', 'left', CONFIRMED], ['injury', idOf<InjuryId>('mt5-metaphyseal'), CONFIRMED]);
  const both = withClaim(scanned, newClaim(scanned, 'side', 'right', REPORTED));

  it('draws the confirmed side and still tells the disagreement', () => {
    expect(explained(both).side).toEqual({ state: 'stated', side: 'left', status: 'confirmed' });
    expect(findingNamed(explained(both), 'where.side')?.message.id).toBe('contradiction');
    expect(findingNamed(explained(both), 'where.sideDefault')).toBeUndefined();
  });

  it('draws no side when neither claim is confirmed', () => {
    const reported = caseOf(['side', 'left', REPORTED]);
    const disputed = withClaim(reported, newClaim(reported, 'side', 'right', REPORTED));
    expect(explained(disputed).side).toEqual({ state: 'contradiction' });
  });
});

describe('a bone that breaks again', () => {
  const before = demoCase('handball-zone-2');
  const again = (said: typeof CONFIRMED): CaseFile =>
    withClaim(before, newClaim(before, 'followUp', { finding: 'broken again', on: day('2026-11-05') }, said));

  it('heads the last question and ends the weeks counted before', () => {
    const explanation = explained(again(CONFIRMED));
    const sentences = findingsOf(explanation, 'back').filter((f) => f.depth === 'sentence');
    expect(sentences.map((f) => f.id)).toEqual(['back.brokenAgain']);
    expect(explanation.start).toBeNull();
    expect(findingNamed(explanation, 'back.dates')).toBeUndefined();
    expect(told(again(CONFIRMED), 'back.brokenAgain')).toMatch(/^The bone broke again on 5 November 2026/);
  });

  it('is hedged while it is only reported', () => {
    expect(told(again(REPORTED), 'back.brokenAgain')).toMatch(
      /^It is reported by the media, but not confirmed, that the bone broke again/,
    );
  });

  it('counts anew from a treatment that came after it', () => {
    const file = again(CONFIRMED);
    const option = explained(file).option;
    if (option === null) throw new Error('the demo case has a treatment');
    const treated = withClaim(file, newClaim(file, 'treatment', { option, on: day('2026-11-09') }, CONFIRMED));
    expect(explained(treated).start).toEqual({ date: '2026-11-09', from: 'treatment' });
    expect(findingNamed(explained(treated), 'back.brokenAgain')).toBeUndefined();
  });
});

describe('a bone and a class that cannot go together', () => {
  const file = caseOf(['bone', 'metatarsal2', CONFIRMED], ['injury', idOf<InjuryId>('mt5-metaphyseal'), CONFIRMED]);

  it('names no bone as hurt and says what does not fit', () => {
    const explanation = explained(file);
    expect(explanation.bone).toBeNull();
    expect(explanation.breakAt).toBeNull();
    expect(told(file, 'where.headline')).toBe(
      'What is stated does not fit together: one says the second metatarsal, another the fifth metatarsal.',
    );
  });
});
