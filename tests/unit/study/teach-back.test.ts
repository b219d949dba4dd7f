import { describe, expect, it } from 'vitest';
import { DEFAULT_FOOT } from '../../../src/anatomy/parameters';
import type { MessageOf } from '../../../src/explain/messages';
import type { Explanation, Finding } from '../../../src/explain/types';
import {
  type CaseId,
  type CriterionId,
  type FindingId,
  idOf,
  QUESTION_IDS,
  type RegionId,
  type StageId,
} from '../../../src/ids';
import { answerTeachBack, type TeachBackMaterial, teachBackFrom } from '../../../src/study/teach-back';
import { material } from './material';

const stage = idOf<StageId>('still');
const stages = [
  {
    id: stage,
    term: 'still',
    plain: 'still',
    opensNext: [
      {
        id: idOf<CriterionId>('no-pain'),
        options: [],
        what: { patient: 'No pain when the spot is pressed.', broadcast: 'b', study: 's' },
        evidence: { source: null, mark: 'common practice' as const },
      },
    ],
    sendsBack: [],
    today: {
      weights: [],
      aids: {
        what: { patient: 'p', broadcast: 'b', study: 's' },
        evidence: { source: null, mark: 'common practice' as const },
      },
      exercises: [],
    },
    what: { patient: 'p', broadcast: 'b', study: 's' },
  },
];

const finding = (message: Finding['message']): Finding => ({
  id: idOf<FindingId>(`back.${message.id}`),
  message,
  depth: 'more',
  shows: [],
  confidence: { level: 'supported', reason: { by: 'nothing' } },
  basis: { sources: [], claims: [], compute: 'none', inputs: {} },
  whatIf: false,
});
const opens: MessageOf<'contentText'> = { id: 'contentText', args: { at: { kind: 'stageOpens', stage, index: 0 } } };

const explanationOf = (change: Partial<Explanation>, findings: readonly Finding[] = []): Explanation => ({
  version: 1,
  caseId: idOf<CaseId>('fixture'),
  demo: true,
  age: null,
  saidBy: {},
  whatIf: {},
  side: { state: 'notStated' },
  foot: { ...DEFAULT_FOOT, heelToSecondHeadMm: 180 },
  bone: null,
  part: null,
  breakAt: null,
  injury: null,
  option: null,
  start: null,
  given: 'none',
  zones: [],
  stations: null,
  loads: null,
  feeding: null,
  forecasts: [],
  draft: true,
  questions: QUESTION_IDS.map((id) => ({
    id,
    findings: id === 'back' ? findings : [],
  })) as unknown as Explanation['questions'],
  ...change,
});

const located: Partial<Explanation> = {
  bone: 'metatarsal5',
  part: { region: idOf<RegionId>('mt5-zone-2'), status: 'reported', whatIf: false },
  breakAt: {
    bone: 'metatarsal5',
    sMm: 20,
    region: idOf<RegionId>('mt5-zone-2'),
    precision: 'region',
    status: 'reported',
    whatIf: false,
    direction: 'notStated',
  },
};
const SIGNS = ['Go now if your toes turn blue and stay blue.', 'Go now if the foot is cold.'];

const cases: readonly (readonly [string, TeachBackMaterial, readonly string[]])[] = [
  [
    'a located break with stages',
    { content: { ...material, stages }, explanation: explanationOf(located, [finding(opens)]), signs: SIGNS },
    ['where', 'help', 'next'],
  ],
  [
    'a located break without stages',
    { content: { ...material, stages }, explanation: explanationOf(located), signs: SIGNS },
    ['where', 'help', 'side'],
  ],
  [
    'nothing but signs',
    { content: { ...material, stages }, explanation: explanationOf({}), signs: SIGNS },
    ['help', 'side', 'known'],
  ],
];

describe('teach-back', () => {
  it.each(cases)('asks three questions of %s, from what is there', (_name, given, kinds) => {
    expect(teachBackFrom(given).map((item) => item.kind)).toEqual(kinds);
  });

  it.each(cases)('has three different choices and one right one in %s', (_name, given) => {
    for (const item of teachBackFrom(given)) {
      expect(item.choices).toHaveLength(3);
      expect(new Set(item.choices.map((choice) => choice.text)).size).toBe(3);
      const right = item.choices.filter((choice) => answerTeachBack(item, choice.id).right);
      expect(right.map((choice) => choice.id)).toEqual([item.correct]);
    }
  });

  it.each(cases)('is kind and always says the answer again in %s', (_name, given) => {
    for (const item of teachBackFrom(given)) {
      const correct = item.choices.find((choice) => choice.id === item.correct)?.text ?? '';
      for (const choice of item.choices) {
        const { right, feedback } = answerTeachBack(item, choice.id);
        expect(feedback).not.toMatch(/\b(wrong|false|fail|incorrect|no,|bad|should have)\b/i);
        expect(feedback).not.toMatch(/[{}]/);
        if (!right) expect(feedback).toContain(correct);
      }
    }
  });

  it('never offers a warning sign as a thing that can wait', () => {
    const [, help] = teachBackFrom(
      cases[0]?.[1] ?? { content: { ...material, stages }, explanation: explanationOf({}), signs: [] },
    );
    const others = help?.choices.filter((choice) => choice.id !== help.correct).map((choice) => choice.text) ?? [];
    expect(others).toHaveLength(2);
    for (const text of others)
      expect(text).not.toMatch(/pain|numb|cold|swell|swollen|blue|pale|breath|chest|calf|wound|fever|cast|boot/i);
  });

  it('says which foot, or that it has not been said', () => {
    const side = (state: Explanation['side']) =>
      teachBackFrom({ content: { ...material, stages }, explanation: explanationOf({ side: state }), signs: [] }).find(
        (item) => item.kind === 'side',
      );
    const correct = (state: Explanation['side']) => {
      const item = side(state);
      return item?.choices.find((choice) => choice.id === item.correct)?.text;
    };
    expect(correct({ state: 'stated', side: 'left', status: 'confirmed' })).toBe('The left foot.');
    expect(correct({ state: 'stated', side: 'right', status: 'reported' })).toBe('The right foot.');
    expect(correct({ state: 'notStated' })).toBe('That has not been said yet.');
    expect(correct({ state: 'contradiction' })).toBe('That has not been said yet.');
  });

  it('calls a reported break reported and never confirmed', () => {
    const item = teachBackFrom({
      content: { bones: [], regions: [], stages: [] },
      explanation: explanationOf(located),
      signs: [],
    }).find((i) => i.kind === 'known');
    expect(item?.choices.find((choice) => choice.id === item.correct)?.text).toMatch(/has not been checked/);
  });

  it('refuses a choice it did not offer', () => {
    const [item] = teachBackFrom({ content: { ...material, stages }, explanation: explanationOf({}), signs: SIGNS });
    if (item === undefined) throw new Error('no item');
    expect(() => answerTeachBack(item, 'choice-9')).toThrow(RangeError);
  });
});
