/** Sentences on supports, screws and repeated load: short for a patient, easy to read, and every variant worded. */
import { describe, expect, it, test } from 'vitest';
import type { Finding } from '../../../src/explain';
import { plainText, wordFinding } from '../../../src/wording';
import { SUPPORT_SENTENCES } from '../../../src/wording/en/support-messages';
import { content, demoOnDefaultFoot, explained, findingNamed, findingsOf } from '../../tools/explained';
import { readingOf } from '../../tools/reading-grade';

/** Ours to keep: product words for a patient. */
const MOST_WORDS = 15;
const MOST_GRADE = 8;

describe('a patient’s sentences', () => {
  it.each(Object.entries(SUPPORT_SENTENCES))('%s is of short sentences', (_, { patient }) => {
    for (const part of patient.split(/[.:]\s/))
      expect(part.split(' ').filter((word) => !/^\{.*\}\W?$/.test(word)).length, part).toBeLessThanOrEqual(MOST_WORDS);
  });
});

test('that the wear is told from memory stands in the sentence, for every reader', () => {
  const runner = explained(demoOnDefaultFoot('hill-runner'));
  const finding = findingNamed(runner, 'how.repeatedLoad');
  if (finding === undefined) throw new Error('no repeated load');
  for (const reader of ['patient', 'broadcast', 'study'] as const)
    expect(plainText(wordFinding(content, runner, finding, reader))).toContain('from memory');
});

test('where the push-off may have a size, a screw has its stress with its band', () => {
  const handball = explained(demoOnDefaultFoot('handball-zone-2'));
  const [any] = findingsOf(handball, 'options');
  const agreed = { share: { value: 0.97, unit: 'share' }, enough: true } as const;
  const range = (low: number, high: number) => ({ value: low, unit: 'share', lowHigh: [low, high] }) as const;
  const message = {
    id: 'screwBridge',
    args: {
      core: { value: 4, unit: 'mm' },
      reference: 'walking',
      bone: range(0.02, 0.02),
      cartilage: range(0.1, 0.1),
      screws: [
        {
          material: 'titanium',
          ofYield: range(0.24, 0.44),
          opening: range(0.005, 0.009),
          more: true,
          agreed,
          openingPerNm: range(0.0043, 0.0043),
          turnPerNmMm: { value: 0.04, unit: 'deg' },
        },
      ],
    },
  };
  const told = (reader: 'patient' | 'study') =>
    plainText(wordFinding(content, handball, { ...any, message } as unknown as Finding, reader));
  expect(told('patient')).toContain('24 to 44 % (titanium) of its limit');
  expect(told('study')).toContain('24 to 44 % of its yield moment');
});

describe('the handball case', () => {
  const explanation = explained(demoOnDefaultFoot('handball-zone-2'), {}, { bands: 'all' });
  const found = findingsOf(explanation, 'options').filter((f) => /^options\.(support|screw)/.test(f.id));
  const told = (id: string, reader: 'patient' | 'broadcast' | 'study'): string => {
    const finding = findingNamed(explanation, id);
    if (finding === undefined) throw new Error(`no ${id}`);
    return plainText(wordFinding(content, explanation, finding, reader));
  };

  test('reads easily for a patient', () => {
    const text = found
      .filter((f) => f.readers === undefined)
      .map((f) => told(f.id, 'patient'))
      .join(' ');
    const { grade, words } = readingOf(text);
    expect(words).toBeGreaterThan(100);
    expect(grade).toBeLessThanOrEqual(MOST_GRADE);
  });

  test('leaves no place unfilled and no megapascal of a person', () => {
    for (const { id } of found)
      for (const reader of ['patient', 'broadcast', 'study'] as const)
        expect(told(id, reader)).not.toMatch(/[{}]|MPa|NaN/);
  });

  test('tells a boot as less, an outer wedge as more, a sole as not to be told; none with a size that the draws do not earn', () => {
    expect(told('options.support.boot', 'patient')).toBe(
      'With a stiff boot this bone is pulled less in the model. That is against pushing off barefoot.',
    );
    expect(told('options.support.boot', 'study')).toMatch(/no size is stated\.$/);
    expect(told('options.support.outerWedge', 'study')).toMatch(/rises against .*no size is stated\.$/);
    expect(told('options.support.stiffSole', 'patient')).toContain('the model cannot tell');
  });

  test('tells the screw by material and names who advised which length', () => {
    expect(told('options.screwShare', 'broadcast')).toMatch(/\d+ to \d+ % \(titanium\) or \d+ to \d+ % \(steel\)/);
    expect(told('options.screwBridge', 'study')).toContain('contradicted in detail');
    expect(told('options.screwBridge', 'study')).toMatch(
      /no size\. .*nearer to its limit than in whole bone, as \d+ % /,
    );
    expect(told('options.screwBridge', 'patient')).toContain('How near, the model cannot tell.');
    expect(told('options.screwBridge', 'patient')).not.toMatch(/\d/);
    expect(told('options.screwLength', 'study')).toMatch(/DeSandis.*Ochenjele 2015/);
  });
});
