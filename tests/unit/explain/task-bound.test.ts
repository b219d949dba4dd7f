/** The frame raises the pull under a high arch in some tasks and lowers it in others: no sign is told of it (frame trial: do not claim). */
import { expect, it } from 'vitest';
import { contextOf } from '../../../src/explain/context';
import { taskBoundFor } from '../../../src/explain/loads';
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

it('the arch has no sign of its own in the fifth metatarsal, in whatever task it is asked', () => {
  const context = contextOf(content, foot);
  const bound = taskBoundFor(context, run, 5);
  expect(bound).toContain('highArch');
  expect(taskBoundFor(context, { ...run, activity: idOf<ActivityId>('walking') }, 5)).toEqual(bound);
});

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
