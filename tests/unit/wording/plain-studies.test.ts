/** What patients are told of studies: people apart, parts of a hundred, short sentences, no title of a source. */
import { describe, expect, it } from 'vitest';
import { type InjuryId, idOf, type OptionId, type Reader } from '../../../src/ids';
import { plainText, wordFinding } from '../../../src/wording';
import { caseOf, content, explained } from '../../tools/explained';

const linesOf = (injury: string, message: string, reader: Reader, option?: string): readonly string[] => {
  const treated = option === undefined ? [] : ([['treatment', { option: idOf<OptionId>(option) }]] as const);
  const explanation = explained(caseOf(['injury', idOf<InjuryId>(injury)], ...treated));
  return explanation.questions
    .flatMap(({ findings }) => findings)
    .filter((finding) => finding.message.id === message)
    .map((finding) => plainText(wordFinding(content, explanation, finding, reader)));
};

describe('arms of a study', () => {
  it('of other people are told apart, each with its own weeks', () => {
    const [zogby] = linesOf('mt5-proximal-shaft', 'trialArms', 'patient').filter((line) => line.includes('22 weeks'));
    const acute = zogby?.slice(zogby.indexOf('no athletes')) ?? '';
    expect(acute).toContain('22 weeks');
    expect(acute).not.toContain('9.4 weeks');
    expect(zogby?.slice(0, zogby.indexOf('no athletes'))).not.toContain('22 weeks');
    expect(linesOf('mt5-proximal-shaft', 'trialArms', 'study').join(' ')).toContain('22 weeks');
  });

  it('are told as parts of a hundred where the print gives a percentage', () => {
    const all = content.injuries.flatMap(({ id }) =>
      ['trialArms', 'studiesDisagree'].flatMap((message) => linesOf(id, message, 'patient')),
    );
    expect(all.join(' ')).toMatch(/About 78 of 100 came back\. .* None grew together late\./s);
    expect(all.filter((line) => /\b(0|100) of 100\b/.test(line))).toEqual([]);
    expect(all.filter((line) => line.includes('%'))).toEqual([]);
    expect(linesOf('lisfranc', 'trialArms', 'study').join(' ')).toContain('78 %');
  });

  it('that disagree are told a sentence each', () => {
    const [line] = linesOf('mt5-metaphyseal', 'studiesDisagree', 'patient');
    expect(line).toContain(
      'Did not heal as planned: 8 of 18 without an operation, 1 of 19 with one (Mologne et al. 2005).',
    );
    expect(line).not.toMatch(/\([^)]*\(/);
  });
});

describe('other lines that a patient could stumble on', () => {
  it('a trouble that nobody of a pool had is told as none', () => {
    const lines = linesOf('mt5-proximal-shaft', 'troubleCount', 'patient');
    expect(lines.filter((line) => line.includes('about 0 '))).toEqual([]);
    expect(lines.some((line) => line.includes('none had a bone that healed late'))).toBe(true);
  });

  it('a break that cuts nothing is told once for the whole bone', () => {
    const [line, ...more] = linesOf('calcaneus-intra-articular', 'breakLeaves', 'patient');
    expect(more).toEqual([]);
    expect(line).toContain('every part of the bone: fed as before');
    expect(line?.split('fed as before')).toHaveLength(2);
  });

  it('a sheet is called a sheet; whoever studies reads its title', () => {
    const patient = linesOf('mt5-tuberosity', 'stageSheet', 'patient', 'boot');
    expect(patient.length).toBeGreaterThan(3);
    expect(patient.join(' ')).toContain('one clinic’s sheet');
    expect(patient.filter((line) => /[[\]]/.test(line))).toEqual([]);
    expect(linesOf('mt5-tuberosity', 'stageSheet', 'study', 'boot').join(' ')).toContain('[Rehabilitation sheet');
  });
});
