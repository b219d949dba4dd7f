/** A shape raises the pull in some tasks and lowers it in others: said only of tasks whose draws agree (frame trial: do not claim). */
import { expect, it } from 'vitest';
import { contextOf } from '../../../src/explain/context';
import { contributorsFor, taskBoundFor } from '../../../src/explain/loads';
import type { Finding } from '../../../src/explain/types';
import { type ActivityId, idOf } from '../../../src/ids';
import { plainText, wordFinding } from '../../../src/wording';
import { contributorSays } from '../../../src/wording/change';
import { content, demoOnDefaultFoot, explained, findingsOf, foot } from '../../tools/explained';

const run = {
  foot: foot.parameters,
  bone: 'metatarsal5',
  massKg: 70,
  activity: idOf<ActivityId>('side-step-cut'),
  carriedKg: 0,
  soleBending: 0,
  speed: null,
  tiltDeg: null,
} as const;

/** Some hundred frames of the whole foot. */
const MANY_RUNS_MS = 240_000;

it(
  'a task that is told the other way, but whose draws do not agree, is none of the tasks in which it is less',
  () => {
    const context = contextOf(content, foot);
    const [lower] = contributorsFor(context, run, 5).filter(({ id }) => id === 'lowArch');
    const standing = { ...run, activity: idOf<ActivityId>('standing') };
    const [upright] = contributorsFor(context, standing, 5).filter(({ id }) => id === 'lowArch');
    // What made it "more in some, less in others": one run, which two draws in three contradict.
    expect([lower?.raises.holds, upright?.raises.holds]).toEqual([false, true]);
    expect(lower?.raises.share).toBeGreaterThanOrEqual(0.8);
    expect(upright?.raises.share).toBeLessThan(0.8);
    // A high arch is: the draws of this cut agree that it raises the pull, those of another task that it lowers it.
    expect(taskBoundFor(context, run, 5)).toEqual(['highArch']);
    expect(taskBoundFor(context, standing, 5)).not.toContain('lowArch');
  },
  MANY_RUNS_MS,
);

it('what depends on the task is told as such by every reader, whatever the draws of one task agree on', () => {
  const explanation = explained(demoOnDefaultFoot('handball-zone-2'));
  const args = {
    contributor: 'highArch',
    byTask: true,
    ratio: { value: 1.2, unit: 'times', lowHigh: [1.1, 1.3] },
    ranking: true,
    raises: true,
    agreed: { share: { value: 1, unit: 'share' }, enough: true },
    shift: {
      moves: 'stays',
      by: { value: 0, unit: 'mm' },
      sized: false,
      agreed: { share: { value: 1, unit: 'share' }, enough: true },
    },
  } as const;
  const [any] = findingsOf(explanation, 'how');
  const finding = { ...any, message: { id: 'contributor', args } } as Finding;
  const told = (reader: 'patient' | 'broadcast' | 'study') =>
    plainText(wordFinding(content, explanation, finding, reader));
  expect(told('patient')).toMatch(/: more pull in some movements, less in others\.$/);
  expect(told('broadcast')).toContain('more pull in some movements and less in others');
  expect(told('study')).toContain('no sign is stated');
  expect(contributorSays(args)).toBe('cannotTell');
  expect(contributorSays({ ...args, byTask: false })).toBe('raises');
});
