/** The task that all others are measured by is not more or less than itself, and nothing matters for a ratio of one. */
import { expect, test } from 'vitest';
import { factsOf } from '../../../src/cases';
import { type Explanation, explain, type WhatIf } from '../../../src/explain';
import type { ActivityId } from '../../../src/ids';
import { plainText, wordFinding } from '../../../src/wording';
import { content, demoOnDefaultFoot, foot } from '../../tools/explained';

const facts = factsOf(demoOnDefaultFoot('handball-zone-2'));
const told = (activity: string, whatIf: Partial<WhatIf> = {}): Explanation =>
  explain(content, facts, { activity: activity as ActivityId, ...whatIf }, foot, { bands: 'ratio' });
const said = (of: Explanation, id: string): string | null => {
  const finding = of.questions.flatMap(({ findings }) => findings).find(({ message }) => message.id === id);
  return finding === undefined ? null : plainText(wordFinding(content, of, finding, 'patient'));
};

test('walking against walking is told as the measure, and what matters most is not told', () => {
  const walking = told('walking');
  expect(said(walking, 'loadRatio')).toContain('the movement that the others are held against');
  expect(said(walking, 'loadSensitivity')).toBeNull();
  // Three in ten draws turn farther than the theory goes: neither sentence nor table has a size.
  expect(walking.loads?.forcesRank).toBe(true);
  expect(said(walking, 'loadForces')).toBeNull();
});

test('walking on ground that leans is held against level ground', () => {
  const leaning = told('walking', { tiltDeg: 8 });
  expect(said(leaning, 'loadRatio')).toContain('harder than pushing off when you walk');
  expect(said(leaning, 'loadSensitivity')).not.toBeNull();
});

test('forces in quiet standing have sizes, in the sentence as in the table, though its ratio to walking has none', () => {
  const standing = told('standing');
  expect([standing.loads?.ranksOnly, standing.loads?.forcesRank]).toEqual([true, false]);
  expect(said(standing, 'loadForces')).toContain('times body weight');
});
