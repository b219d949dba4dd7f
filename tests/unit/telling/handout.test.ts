import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/explain/types';
import { type FindingId, idOf, QUESTION_IDS, type QuestionId, type SourceId, type StageId } from '../../../src/ids';
import { type HandoutFrame, type HandoutMaterial, handoutFrom } from '../../../src/telling/handout';
import { HANDOUT_LIMITS } from '../../../src/telling/handout-fit';
import type { Worded } from '../../../src/telling/worded';

const wordedOf = (question: QuestionId, name: string, text: string, extra: Partial<Finding> = {}): Worded => {
  const id = idOf<FindingId>(`${question}.${name}`);
  return {
    question,
    text,
    sentence: { finding: id, runs: [{ text }], stamp: null, whatIf: false },
    finding: {
      id,
      message: { id: 'sideDefault', args: {} },
      depth: 'sentence',
      shows: [],
      confidence: { level: 'supported', reason: { by: 'nothing' } },
      basis: {
        sources: [{ source: idOf<SourceId>(`source-${name}`), mark: 'seen' }],
        claims: [],
        compute: 'x',
        inputs: {},
      },
      whatIf: false,
      ...extra,
    },
  };
};

const text = (letters: number): string => 'lorem ipsum '.repeat(40).slice(0, letters).trim();
const stageId = (n: number): StageId => idOf<StageId>(`stage-${n}`);
const stage = (n: number, letters: number): Worded =>
  wordedOf('back', `stage${n}`, text(letters), {
    depth: 'more',
    message: {
      id: 'stageUsual',
      args: {
        stage: stageId(n),
        number: n,
        of: 4,
        weeks: null,
        openEnded: false,
        dates: null,
        own: null,
        after: null,
        elsewhere: null,
      },
    },
  });
const opens = (n: number, index: number, letters: number): Worded =>
  wordedOf('back', `opens${n}-${index}`, text(letters), {
    depth: 'more',
    message: { id: 'contentText', args: { at: { kind: 'stageOpens', stage: stageId(n), index } } },
  });

const titles: HandoutMaterial['titles'] = {
  where: 'Where is it?',
  how: 'How did it happen?',
  why: 'Why does it heal as it does?',
  options: 'What can be done?',
  back: 'When is it back?',
};
const frameOf = (warnings: readonly string[]): HandoutFrame => ({
  title: 'Your foot',
  sideLine: 'Right foot',
  caseLine: 'reported',
  demoLine: null,
  whatIfLine: null,
  draftLine: null,
  warnings: warnings.map((w) => ({ kind: 'red flag', text: w })),
  disclaimers: [],
  figures: [],
});

const letters = fc.integer({ min: 1, max: 200 });
const materials: fc.Arbitrary<HandoutMaterial> = fc
  .record({
    sentences: fc.array(letters, { minLength: 5, maxLength: 5 }),
    stages: fc.array(letters, { maxLength: 5 }),
    opens: fc.array(fc.array(letters, { maxLength: 4 }), { minLength: 5, maxLength: 5 }),
    claims: fc.array(letters, { maxLength: 12 }),
    warnings: fc.array(letters, { maxLength: 7 }),
  })
  .map((spec) => ({
    worded: [
      ...spec.sentences.map((n, i) => wordedOf(QUESTION_IDS[i] ?? 'where', `s${i}`, text(n))),
      ...spec.claims.map((n, i) => wordedOf(QUESTION_IDS[i % 5] ?? 'where', `c${i}`, text(n), { depth: 'claim' })),
      ...spec.stages.flatMap((n, i) => [stage(i, n), ...(spec.opens[i] ?? []).map((m, index) => opens(i, index, m))]),
    ],
    titles,
    frame: frameOf(spec.warnings.map(text)),
    sourceText: (id) => id,
  }));

describe('a handout', () => {
  it('always has every warning, all stages and the first sentence of each question', () => {
    fc.assert(
      fc.property(materials, (material) => {
        const handout = handoutFrom(material);
        expect(handout.warnings).toEqual(material.frame.warnings);
        expect(handout.stages).toHaveLength(
          material.worded.filter((w) => w.finding.message.id === 'stageUsual').length,
        );
        for (const answer of handout.answers) {
          const first = material.worded.find((w) => w.question === answer.question && w.finding.depth === 'sentence');
          expect(answer.sentences[0]).toBe(first?.sentence);
        }
      }),
    );
  });

  it('adds nothing more once the page is full', () => {
    fc.assert(
      fc.property(materials, (material) => {
        const handout = handoutFrom(material);
        const optional =
          handout.answers.some((answer) => answer.sentences.length > 1) ||
          handout.stages.some((s) => s.opensNext.length > 0);
        if (optional) expect(handout.lines).toBeLessThanOrEqual(HANDOUT_LIMITS.columnLines);
      }),
    );
  });

  it('has no text cut, none twice, and at most two criteria a stage', () => {
    fc.assert(
      fc.property(materials, (material) => {
        const handout = handoutFrom(material);
        const printed = [
          ...handout.answers.flatMap((a) => a.sentences),
          ...handout.stages.flatMap((s) => [s.sentence, ...s.opensNext]),
        ];
        expect(new Set(printed).size).toBe(printed.length);
        for (const sentence of printed) expect(material.worded.map((w) => w.sentence)).toContain(sentence);
        for (const s of handout.stages) expect(s.opensNext.length).toBeLessThanOrEqual(HANDOUT_LIMITS.criteriaPerStage);
      }),
    );
  });

  it('counts the sources it has no room for', () => {
    fc.assert(
      fc.property(materials, (material) => {
        const { sources, sourcesMore } = handoutFrom(material);
        expect(sources.length).toBeLessThanOrEqual(HANDOUT_LIMITS.sources);
        if (sourcesMore > 0) expect(sources).toHaveLength(HANDOUT_LIMITS.sources);
        expect(new Set(sources).size).toBe(sources.length);
      }),
    );
  });
});
