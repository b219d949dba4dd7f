/** Bands are worked out for who looks at them, once, in two steps, and never for a case that is gone. */
import { expect, test } from 'vitest';
import type { Explanation } from '../../../src/explain/types';
import { createSession, type ExplainRequest } from '../../../src/session';
import { CONTENT, START, settle } from './helpers';

const PENDING = { none: ['loadPending', 'supportPending'], ratio: ['supportPending'], all: [] } as const;
const made = ({ file, whatIf, bands }: ExplainRequest): Explanation =>
  ({
    file,
    whatIf,
    loads: { bands: bands === 'none' ? null : {}, told: { tables: [] } },
    questions: [{ findings: PENDING[bands].map((id) => ({ message: { id } })) }],
    asked: bands,
  }) as unknown as Explanation;

const watched = (fails = false) => {
  const runs: string[] = [];
  const session = createSession({
    content: CONTENT,
    file: START,
    runExplain: async (request) => made(request),
    runBands: async (request) => {
      runs.push(`${request.bands} ${request.whatIf.massKg ?? '-'}`);
      if (fails) throw new Error('out of memory');
      return made(request);
    },
  });
  return { session, runs, shown: () => (session.getState().explanation as unknown as { asked: string }).asked };
};

test('nobody looks: none are worked out', async () => {
  const { runs, session, shown } = watched();
  await settle();
  session.commands.setWhatIf({ massKg: 80 });
  await settle();
  expect([runs, shown()]).toEqual([[], 'none']);
});

test('a page that looks gets the ratio, then the rest; two pages get them once', async () => {
  const { runs, session, shown } = watched();
  await settle();
  session.commands.wantBands();
  session.commands.wantBands();
  await settle();
  expect([runs, shown()]).toEqual([['ratio -', 'all -'], 'all']);
  session.commands.wantBands();
  await settle();
  expect(runs).toHaveLength(2);
});

test('a page that looks before there is anything to look at gets them too', async () => {
  const { runs, session } = watched();
  session.commands.wantBands();
  await settle();
  expect(runs).toEqual(['ratio -', 'all -']);
});

test('of each new value, until the page is left', async () => {
  const { runs, session, shown } = watched();
  const leave = session.commands.wantBands();
  await settle();
  session.commands.setWhatIf({ massKg: 80 });
  await settle();
  expect(runs.slice(2)).toEqual(['ratio 80', 'all 80']);
  leave();
  session.commands.setWhatIf({ massKg: 90 });
  await settle();
  expect(runs).toHaveLength(4);
  expect(shown()).toBe('none');
});

test('what comes for an earlier value is not shown', async () => {
  const { runs, session, shown } = watched();
  session.commands.wantBands();
  while (runs.length === 0) await Promise.resolve();
  session.commands.setWhatIf({ massKg: 80 });
  await settle();
  expect(runs).toEqual(['ratio -', 'ratio 80', 'all 80']);
  expect(shown()).toBe('all');
  expect(session.getState().explanation).toMatchObject({ whatIf: { massKg: 80 } });
});

test('a run that fails is told, and what stands stays', async () => {
  const { session, shown } = watched(true);
  session.commands.wantBands();
  await settle();
  expect(session.getState().problem?.what).toContain('out of memory');
  expect(shown()).toBe('none');
});
