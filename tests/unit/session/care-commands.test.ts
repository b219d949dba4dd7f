/** Commands on what stands beside the claims: each one step back, saved like the rest of the case, and gone with it. */
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { type CaseFile, type Fixture, type KeptForecast, readCase, writeCase } from '../../../src/cases';
import { type CriterionId, type ExerciseId, idOf, type StageId, type TopicId } from '../../../src/ids';
import { createSession, type SessionCommands } from '../../../src/session';
import type { IsoDate } from '../../../src/units';
import { CONTENT, caseFile, claim, echo, echoed, MemoryStorage, START, settle } from './helpers';

const RUN = idOf<StageId>('run');
const FORECAST = {
  endpoint: 'training',
  option: 'screw',
  injury: 'mt5-metaphyseal',
  madeOn: '2026-09-14',
  start: null,
  atWeek: 0,
  branches: [
    { name: 'uneventful', chance: 0.8, time: { mu: 2, sigma: 0.4 } },
    { name: 'problem', chance: 0.15, time: null },
    { name: 'notReturned', chance: 0.05, time: null },
  ],
  studies: ['a-study'],
} as unknown as KeptForecast;
const GAME = { on: '2027-01-02', name: 'home game' } as Fixture;
const UNITED = idOf<CriterionId>('bone-united');
const DAY = '2026-11-02' as IsoDate;
const NOTES = { struck: [], met: [], weeks: null, sharePercent: null, note: null };
const stageWith = (more: object) => ({ clinic: { stage: null, stages: { run: { ...NOTES, ...more } }, answers: {} } });

type Step = readonly [string, (commands: SessionCommands) => void, object];
const STEPS: readonly Step[] = [
  ['keepForecast', (c) => c.keepForecast(FORECAST), { forecasts: [FORECAST] }],
  ['setStage', (c) => c.setStage(RUN), { clinic: { stage: 'run', stages: {}, answers: {} } }],
  ['strikeExercise', (c) => c.strikeExercise(RUN, idOf<ExerciseId>('towel'), true), stageWith({ struck: ['towel'] })],
  ['meetCriterion', (c) => c.meetCriterion(RUN, UNITED, DAY), stageWith({ met: [{ criterion: UNITED, on: DAY }] })],
  ['setStageWeeks', (c) => c.setStageWeeks(RUN, { from: 2, to: 6 }), stageWith({ weeks: { from: 2, to: 6 } })],
  [
    'setStageShare',
    (c) => c.setStageShare(RUN, { low: 20, high: 50 }),
    stageWith({ sharePercent: { low: 20, high: 50 } }),
  ],
  ['setStageNote', (c) => c.setStageNote(RUN, 'two sticks'), stageWith({ note: 'two sticks' })],
  [
    'answerDaily',
    (c) => c.answerDaily(idOf<TopicId>('driving'), 'not yet'),
    { clinic: { stage: null, stages: {}, answers: { driving: 'not yet' } } },
  ],
  ['setFixtures', (c) => c.setFixtures([GAME]), { fixtures: [GAME] }],
];

const session = (more: object = {}) =>
  createSession({ content: CONTENT, file: START, runExplain: async (request) => echo(request), ...more });

test.each(STEPS)(
  '%s is one step of the case, undone and redone, and the explanation follows',
  async (_, run, change) => {
    const s = session();
    run(s.commands);
    const after = { ...START, ...change };
    expect(s.getState()).toMatchObject({ problem: null, canUndo: true });
    expect(s.getState().file).toEqual(after);
    await settle();
    expect(echoed(s.getState().explanation)?.file).toEqual(after);
    run(s.commands);
    s.commands.undo();
    expect(s.getState()).toMatchObject({ file: START, canUndo: false });
    s.commands.redo();
    expect(s.getState().file).toEqual(after);
  },
);

test('all of them together, stepped back to the start and forward to the end', () => {
  const s = session();
  for (const [, run] of STEPS) run(s.commands);
  const end = s.getState().file;
  for (const _ of STEPS) s.commands.undo();
  expect(s.getState()).toMatchObject({ file: START, canUndo: false });
  for (const _ of STEPS) s.commands.redo();
  expect(s.getState()).toMatchObject({ file: end, canRedo: false });
  s.commands.dropForecast(0);
  expect(s.getState().file.forecasts).toEqual([]);
});

describe('what may not be is refused, and nothing changes', () => {
  const many = (n: number) => Array.from({ length: n }, (_, i) => i);
  test.each<[string, (commands: SessionCommands) => void, string]>([
    ['weeks the wrong way round', (c) => c.setStageWeeks(RUN, { from: 6, to: 2 }), 'clinic.stages.run.weeks'],
    [
      'a share above the whole',
      (c) => c.setStageShare(RUN, { low: 0, high: 101 }),
      'clinic.stages.run.sharePercent.high',
    ],
    ['a note too long', (c) => c.setStageNote(RUN, 'x'.repeat(301)), 'clinic.stages.run.note'],
    ['an answer too long', (c) => c.answerDaily(idOf<TopicId>('sleep'), 'x'.repeat(301)), 'clinic.answers.sleep'],
    ['too many fixtures', (c) => c.setFixtures(many(61).map(() => GAME)), 'fixtures'],
    ['a stage by no id', (c) => c.setStage(idOf<StageId>('run fast')), 'clinic.stage'],
    [
      'constructor as a stage',
      (c) => c.meetCriterion(idOf<StageId>('constructor'), UNITED, DAY),
      'clinic.stages.constructor',
    ],
    [
      'a forecast made tomorrow',
      (c) => c.keepForecast({ ...FORECAST, madeOn: '2026-11-30' } as KeptForecast),
      'forecasts[0].madeOn',
    ],
    ['a forecast that is no number', (c) => c.keepForecast({ ...FORECAST, atWeek: Number.NaN }), 'forecasts[0].atWeek'],
  ])('%s', (_, run, where) => {
    const s = session({ now: () => Date.parse('2026-11-29T12:00:00') });
    run(s.commands);
    expect(s.getState()).toMatchObject({ file: START, canUndo: false, problem: { where } });
  });

  test('the fifty-first forecast', () => {
    const s = session();
    for (const atWeek of many(51)) s.commands.keepForecast({ ...FORECAST, atWeek });
    expect(s.getState().file.forecasts).toHaveLength(50);
    expect(s.getState().problem?.what).toContain('at most 50 forecasts');
    s.commands.dropForecast(0);
    s.commands.keepForecast({ ...FORECAST, atWeek: 50 });
    expect(s.getState()).toMatchObject({ problem: null });
    expect(s.getState().file.forecasts.at(-1)?.atWeek).toBe(50);
  });
});

describe('kept and lost with the case', () => {
  let storage: MemoryStorage;
  beforeEach(() => {
    vi.useFakeTimers();
    storage = new MemoryStorage();
  });
  afterEach(() => void vi.useRealTimers());

  const worked = async () => {
    const s = session({ storage });
    await s.restored;
    for (const [, run] of STEPS) run(s.commands);
    await vi.advanceTimersByTimeAsync(10_000);
    return s;
  };
  const beside = ({ forecasts, clinic, fixtures }: CaseFile) => ({ forecasts, clinic, fixtures });

  test('saved by itself, and brought back by the next visit', async () => {
    const s = await worked();
    expect(storage.saves).toBe(1);
    const next = session({ storage });
    expect(await next.restored).toBe(true);
    expect(next.getState().file).toEqual(s.getState().file);
    expect(beside(next.getState().file)).not.toEqual(beside(START));
  });

  test('part of the file that is saved and opened', async () => {
    const s = await worked();
    const text = writeCase(s.getState().file);
    const other = session();
    other.commands.openText(text);
    expect(other.getState().file).toEqual(s.getState().file);
  });

  test('a case stored by version 1 is brought back with none of it', async () => {
    const { forecasts: _, fixtures: __, ...old } = caseFile('work', [claim('c1', 'side', 'left')]);
    storage.kept = { caseText: JSON.stringify({ ...old, version: 1 }), theme: 'auto', keepOnDevice: false };
    const s = session({ storage });
    expect(await s.restored).toBe(true);
    expect(s.getState()).toMatchObject({ problem: null, file: { ...old, version: 3, forecasts: [], fixtures: [] } });
  });

  test('wiped with Finish: nothing of it in the session, its history or the storage', async () => {
    const s = await worked();
    await s.commands.finish();
    expect(s.getState()).toMatchObject({ file: START, canUndo: false, canRedo: false });
    expect(JSON.stringify(s.getState())).not.toMatch(/two sticks|not yet|home game|a-study/);
    expect([storage.wipes, storage.kept]).toEqual([1, null]);
    await vi.advanceTimersByTimeAsync(10_000);
    expect(storage.kept).toBe(null);
  });

  test('left behind with another case', async () => {
    const s = await worked();
    s.commands.openCase(caseFile('other'));
    expect(beside(s.getState().file)).toEqual({ forecasts: [], clinic: undefined, fixtures: [] });
    s.commands.undo();
    expect(s.getState().file.id).toBe('other');
    s.commands.newCase();
    expect(beside(s.getState().file)).toEqual({ forecasts: [], clinic: undefined, fixtures: [] });
    expect(readCase(writeCase(s.getState().file)).ok).toBe(true);
  });
});
