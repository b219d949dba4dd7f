/** Every finding of every demo in every reader's words: whole sentences, marks on figures, nothing of the machinery. */
import { describe, expect, it } from 'vitest';
import { emptyCase } from '../../../src/cases';
import { type CaseId, idOf, QUESTION_IDS, READERS } from '../../../src/ids';
import {
  cautionsFor,
  confidenceWord,
  describePicture,
  findingsFor,
  plainText,
  wordBasis,
  wordFinding,
  wordingTemplates,
  wordQuestion,
} from '../../../src/wording';
import { content, DEMOS, demoOnDefaultFoot, explained, findingsOf } from '../../tools/explained';

const CASES = [
  ...DEMOS.map((name) => [name, explained(demoOnDefaultFoot(name))] as const),
  ['nothing stated', explained(emptyCase(idOf<CaseId>('empty')))] as const,
];

describe.each(CASES)('%s', (_, explanation) => {
  it.each(READERS)('every finding is a whole sentence for %s', (reader) => {
    for (const question of QUESTION_IDS)
      for (const finding of findingsFor(explanation, question, reader)) {
        const text = plainText(wordFinding(content, explanation, finding, reader));
        expect(text, finding.id).toMatch(/^[A-Z0-9[“"].*[.!?)]$/s);
        expect(text, finding.id).not.toMatch(/[{}]|undefined|NaN|\bnull\b|\[object/);
        expect(text, finding.id).not.toMatch(/\.\.|,,| {2}/);
      }
  });

  it.each(QUESTION_IDS)('question %s has a title, one sentence, and a picture in words', (question) => {
    for (const reader of READERS) {
      const words = wordQuestion(content, explanation, question, reader);
      expect(words.title).toMatch(/\?$/);
      expect(plainText(words.sentence)).not.toBe('');
      const picture = describePicture(content, explanation, question, reader);
      expect(picture.long.length).toBeGreaterThan(picture.short.length);
      expect(picture.long).toMatch(/foot/);
    }
  });

  it('every finding can be asked how it is known, without a line twice', () => {
    for (const { findings } of explanation.questions)
      for (const finding of findings) {
        const { lines, sources } = wordBasis(content, explanation, finding);
        expect(lines.length, finding.id).toBeGreaterThan(0);
        expect(new Set(lines).size, finding.id).toBe(lines.length);
        expect(sources.length, finding.id).toBe(finding.basis.sources.filter((s) => s.source !== null).length);
        expect(confidenceWord(finding.confidence.level)).not.toBe('');
      }
  });

  it('a figure of a study never stands without its mark', () => {
    for (const finding of findingsOf(explanation, 'options')) {
      if (finding.message.id !== 'trialArms') continue;
      const { runs } = wordFinding(content, explanation, finding, 'study');
      expect(
        runs.some((run) => run.mark !== undefined),
        finding.id,
      ).toBe(true);
    }
  });

  it('red flags are there for the patient', () => {
    expect(cautionsFor(content, explanation, 'patient', 'where').some((c) => c.kind === 'red flag')).toBe(true);
  });
});

describe('how it broke, when that is only reported', () => {
  it.each(READERS)('is told to %s under a condition', (reader) => {
    for (const [, explanation] of CASES)
      for (const finding of findingsOf(explanation, 'how')) {
        if (finding.message.id !== 'contentText' || finding.message.args.at.kind !== 'mechanism') continue;
        expect(finding.message.args.as).toBe('reported');
        expect(plainText(wordFinding(content, explanation, finding, reader))).toMatch(
          /^(If the reports? |Given the reported)/,
        );
      }
  });
});

describe('the picture in words', () => {
  it('names the side as stated, and says so when it is not', () => {
    const [handball, , runner] = CASES.map(([, explanation]) => explanation);
    if (handball === undefined || runner === undefined) throw new Error('demos are missing');
    expect(describePicture(content, handball, 'where', 'patient').short).toMatch(/right/i);
    expect(describePicture(content, runner, 'where', 'patient').short).toMatch(/not (been )?stated/i);
  });
});

describe('words', () => {
  it('lists every template once', () => {
    const all = wordingTemplates();
    expect(new Set(all.map((t) => t.where)).size).toBe(all.length);
    expect(all.length).toBeGreaterThan(300);
  });
});
