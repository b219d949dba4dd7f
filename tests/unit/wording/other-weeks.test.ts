/** Weeks of others beside a case whose own treatment, or class, nobody counted: that first, then who was counted, as it is. */
import { describe, expect, it } from 'vitest';
import { type InjuryId, idOf, type Level, type OptionId, type Reader } from '../../../src/ids';
import { plainText, wordFinding, wordQuestion } from '../../../src/wording';
import { caseOf, content, explained, findingNamed, type Stated } from '../../tools/explained';

const hurt = (id: string): Stated => ['injury', idOf<InjuryId>(id)];
const treated = (id: string): Stated => ['treatment', { option: idOf<OptionId>(id) }];
const sport: Stated = ['level', 'recreational' as Level];
const IN_LINE: Stated = ['displacement', { displaced: false }];
const GAP: Stated = ['measure', { what: 'diastasis', value: 3 }];
const leadOf = (stated: readonly Stated[], reader: Reader = 'patient'): string =>
  plainText(wordQuestion(content, explained(caseOf(...stated)), 'back', reader).sentence);
const classesOf = (stated: readonly Stated[], reader: Reader = 'patient'): string => {
  const explanation = explained(caseOf(...stated));
  const found = findingNamed(explanation, 'back.byClass') ?? findingNamed(explanation, 'back.headline');
  if (found === undefined) throw new Error('no weeks by class');
  return plainText(wordFinding(content, explanation, found, reader));
};

describe('the slanting break of the shaft', () => {
  it('tells the own treatment first, and the one group that had several by who they were', () => {
    expect(leadOf([hurt('mt5-spiral-shaft'), sport, treated('boot')])).toBe(
      'For a stiff boot or shoe, walking as it allows, no weeks were counted. In one other group it took about 11.6 weeks on average until training began again. Counted: dancers, most without an operation, in a wrap or a cast they walked on.',
    );
  });

  it('names no one treatment as theirs, and says of the rest that none were found', () => {
    const told = leadOf([hurt('mt5-spiral-shaft'), sport]);
    expect(told).toMatch(/^In one group it took about 11\.6 weeks on average/);
    expect(told).not.toContain('A firm wrap');
    expect(told).toContain('For other treatments none were found.');
  });
});

describe('the joints of the midfoot', () => {
  it.each(['patient', 'broadcast'] as const)(
    'tells %s the stages that were counted, and the rest at once',
    (reader) => {
      const told = classesOf([hurt('lisfranc'), treated('cast-nwb'), IN_LINE], reader);
      expect(told).toContain('Stage I, no gap: about 4 weeks on average.');
      expect(told).toContain('For stage III none were counted.');
      expect(told).not.toMatch(/none found|Stage III/);
    },
  );

  it('asks for the stage where it is in line and no gap was stated, once', () => {
    const treatedInLine = [hurt('lisfranc'), treated('cast-nwb'), IN_LINE];
    expect(leadOf(treatedInLine)).toBe('It depends on how wide the gap in the joint is. Ask which stage yours is.');
    expect(classesOf(treatedInLine)).toContain('How wide the gap between its bones is was not stated.');
    expect(classesOf(treatedInLine)).not.toMatch(/Ask which|It depends/);
    expect(leadOf([hurt('lisfranc'), IN_LINE])).toMatch(/was not stated\. Ask which stage yours is\.$/);
    expect(leadOf([hurt('lisfranc')])).not.toMatch(/How wide the gap|Ask which/);
    expect(leadOf([hurt('lisfranc'), IN_LINE], 'broadcast')).not.toMatch(/Ask which/);
    expect(leadOf([hurt('lisfranc'), GAP])).not.toMatch(/Ask which/);
  });
});
