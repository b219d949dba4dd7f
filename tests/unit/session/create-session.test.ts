import { describe, expect, test, vi } from 'vitest';
import { newClaim, writeCase } from '../../../src/cases';
import { createSession, NEW_CASE_ID, type SessionState } from '../../../src/session';
import { C, CONTENT, caseFile, claim, echo, echoed, START, settle } from './helpers';

const session = (more: object = {}) =>
  createSession({ content: CONTENT, file: START, runExplain: async (request) => echo(request), ...more });
const sides = (state: SessionState) => state.file.claims.map(({ id }) => id).join(' ');
const PERSON = { status: 'reported', source: { kind: 'person' } } as const;

test('a store needs no React: the library is not even loaded', async () => {
  vi.doMock('react', () => {
    throw new Error('React was imported');
  });
  vi.resetModules();
  await expect(import('../../../src/session')).resolves.toBeDefined();
  vi.doUnmock('react');
});

test('starts stale and without an explanation, then has the one of its case', async () => {
  const s = session();
  expect(s.getState()).toMatchObject({ explanation: null, stale: true, question: 'where', reader: 'patient' });
  await settle();
  expect(s.getState().stale).toBe(false);
  expect(echoed(s.getState().explanation)).toEqual({ file: START, whatIf: {} });
});

test('a broken case to start with is a mistake of the program', () => {
  const broken = caseFile('x', [claim('c1', 'side', 'right'), claim('c1', 'side', 'left')]);
  expect(() => session({ file: broken })).toThrow(TypeError);
});

describe('a bad file sets the problem and changes nothing else', () => {
  test.each([
    ['not JSON', '{'],
    ['unknown key', JSON.stringify({ ...START, patient: 'x' })],
    ['mass of 7500', JSON.stringify(caseFile('x', [claim('c1', 'massKg', 7500)]))],
    ['a newer version', JSON.stringify({ ...START, version: 9 })],
  ])('%s', async (_, text) => {
    const s = session();
    s.commands.setWhatIf({ massKg: 80 });
    s.commands.addClaim(claim('c2', 'massKg', 70));
    await settle();
    const before = s.getState();
    s.commands.openText(text);
    await settle();
    const { problem, ...after } = s.getState();
    const { problem: none, ...expected } = before;
    expect(none).toBe(null);
    expect(after).toEqual(expected);
    expect(after.file).toBe(before.file);
    expect(problem?.what.length).toBeGreaterThan(10);
    expect(problem?.remedy.length).toBeGreaterThan(5);
    s.commands.dismissProblem();
    expect(s.getState().problem).toBe(null);
  });

  test('a day to come, in a file and in a form', () => {
    const s = session({ now: () => Date.parse('2026-11-29T12:00:00') });
    const ahead = claim('c1', 'injuryDate', '2026-12-24');
    for (const tell of [
      () => s.commands.openText(writeCase(caseFile('x', [ahead]))),
      () => s.commands.addClaim({ ...ahead, id: C('c2') }),
      () => s.commands.changeCase({ ...START, claims: [ahead] }),
    ]) {
      s.commands.dismissProblem();
      tell();
      expect(s.getState()).toMatchObject({ problem: { where: expect.stringMatching(/value$/) }, file: START });
      expect(s.getState().problem?.what).toContain('2026-12-24');
    }
  });

  test('what only content and foot can tell is asked too', async () => {
    const problem = { what: 'no such injury', where: 'claims[0].value', remedy: 'choose another' };
    const checkFile = (file: { claims: readonly { subject: string }[] }) =>
      file.claims.some(({ subject }) => subject === 'injury') ? [problem] : [];
    const s = session({ checkFile });
    s.commands.openText(writeCase(caseFile('x', [claim('c1', 'injury', 'no-such')])));
    expect(s.getState()).toMatchObject({ problem, file: START });
    s.commands.addClaim(claim('c2', 'injury', 'no-such'));
    expect(s.getState()).toMatchObject({ problem, file: START });
  });
});

describe('what is tried on the foot itself', () => {
  const tried = () => {
    const s = session();
    s.commands.setPose('heelRaise');
    s.commands.showAngle('meary');
    s.commands.selectBone('talus');
    s.commands.showLookAlike('os-trigonum');
    return s;
  };
  const PLAIN = { pose: 'standing', angle: null, lookAlike: null, selectedBone: null };

  test.each([
    ['another question', (s: ReturnType<typeof tried>) => s.commands.ask('how')],
    ['its place being closed', (s: ReturnType<typeof tried>) => s.commands.plainFoot()],
    ['another case', (s: ReturnType<typeof tried>) => s.commands.openText(writeCase(caseFile('other')))],
  ])('ends with %s', (_, leave) => {
    const s = tried();
    expect(s.getState()).toMatchObject({ pose: 'heelRaise', angle: 'meary', lookAlike: 'os-trigonum' });
    leave(s);
    expect(s.getState()).toMatchObject(PLAIN);
  });

  test('stays while the same question is asked again', () => {
    const s = tried();
    s.commands.ask(s.getState().question);
    expect(s.getState()).toMatchObject({ pose: 'heelRaise', angle: 'meary', lookAlike: 'os-trigonum' });
  });

  test('leaves a bone that was chosen for itself', () => {
    const s = session();
    s.commands.selectBone('cuboid');
    s.commands.setPose('seated');
    s.commands.ask('how');
    expect(s.getState()).toMatchObject({ pose: 'standing', selectedBone: 'cuboid' });
  });
});

describe('opening a case', () => {
  test('drops what-if, history, selection, and the picture of the case before', async () => {
    const s = session();
    s.commands.addClaim(claim('c2', 'massKg', 70));
    s.commands.setWhatIf({ massKg: 80 });
    s.commands.selectBone('cuboid');
    await settle();
    s.commands.openText(writeCase(caseFile('other')));
    expect(s.getState()).toMatchObject({
      whatIf: {},
      canUndo: false,
      selectedBone: null,
      explanation: null,
      stale: true,
    });
    s.commands.undo();
    expect(s.getState().file.id).toBe('other');
    await settle();
    expect(echoed(s.getState().explanation)?.file.id).toBe('other');
  });

  test('never shows an explanation of the case before, however late it comes', async () => {
    const late: (() => void)[] = [];
    const s = session({
      runExplain: (request: never) => new Promise((resolve) => late.push(() => resolve(echo(request)))),
    });
    s.commands.newCase();
    late[0]?.();
    await settle();
    expect(s.getState()).toMatchObject({ explanation: null, stale: true });
    late[1]?.();
    await settle();
    expect(echoed(s.getState().explanation)?.file.id).toBe(NEW_CASE_ID);
  });

  test('the same case again keeps its picture until the new one is there', async () => {
    const s = session();
    await settle();
    s.commands.openCase({ ...START, claims: [] });
    expect(s.getState()).toMatchObject({ stale: true, canUndo: false });
    expect(echoed(s.getState().explanation)?.file).toBe(START);
  });
});

describe('editing claims', () => {
  test('undo and redo', () => {
    const s = session();
    s.commands.addClaim(claim('c2', 'massKg', 70));
    s.commands.removeClaim(C('c1'));
    expect([sides(s.getState()), s.getState().canUndo, s.getState().canRedo]).toEqual(['c2', true, false]);
    s.commands.undo();
    expect([sides(s.getState()), s.getState().canRedo]).toEqual(['c1 c2', true]);
    s.commands.undo();
    expect([sides(s.getState()), s.getState().canUndo]).toEqual(['c1', false]);
    s.commands.undo();
    expect(sides(s.getState())).toBe('c1');
    s.commands.redo();
    s.commands.redo();
    s.commands.redo();
    expect([sides(s.getState()), s.getState().canRedo]).toEqual(['c2', false]);
    s.commands.undo();
    s.commands.addClaim(claim('c3', 'heightCm', 170));
    expect(s.getState().canRedo).toBe(false);
  });

  test('several changes at once are one step', () => {
    const s = session();
    s.commands.changeCase(caseFile('start-case', [claim('c1', 'side', 'left'), claim('c2', 'massKg', 60)]));
    s.commands.undo();
    expect(s.getState().file).toBe(START);
  });

  test('a change that changes nothing is no step', () => {
    const s = session();
    s.commands.removeClaim(C('c9'));
    s.commands.changeCase(structuredClone(START));
    expect(s.getState()).toMatchObject({ canUndo: false, file: START });
  });

  test('in line and 5 mm apart is refused, and what to do is said', () => {
    const s = session();
    s.commands.addClaim(newClaim(START, 'displacement', { displaced: false, mm: 5 }, PERSON));
    expect(s.getState().file).toBe(START);
    expect(s.getState().problem).toMatchObject({ remedy: 'Say that it is displaced, or leave the millimetres out.' });
  });

  test('a claim that may not be made is refused', () => {
    const s = session();
    s.commands.addClaim(claim('c2', 'side', 'right', { status: 'confirmed' }));
    expect(s.getState()).toMatchObject({ file: START, canUndo: false });
    expect(s.getState().problem?.where).toBe('claims[1].status');
    s.commands.addClaim(newClaim(s.getState().file, 'massKg', 70, PERSON));
    expect(s.getState().problem).toBe(null);
  });

  test('the what-if is kept apart: neither undone nor a reason to forget what can be redone', () => {
    const s = session();
    s.commands.addClaim(claim('c2', 'massKg', 70));
    s.commands.undo();
    s.commands.setWhatIf({ massKg: 90 });
    expect(s.getState()).toMatchObject({ canUndo: false, canRedo: true, whatIf: { massKg: 90 } });
    s.commands.redo();
    expect(s.getState().whatIf).toEqual({ massKg: 90 });
    s.commands.dropWhatIf();
    expect(s.getState()).toMatchObject({ whatIf: {}, canUndo: true });
  });
});

describe('what-if', () => {
  test('puts overrides together, and drops one or all', () => {
    const s = session();
    s.commands.setWhatIf({ massKg: 90 });
    s.commands.setWhatIf({ footShape: 'high' });
    expect(s.getState().whatIf).toEqual({ massKg: 90, footShape: 'high' });
    s.commands.dropWhatIf('massKg');
    expect(s.getState().whatIf).toEqual({ footShape: 'high' });
  });

  test.each([{ massKg: 7500 }, { massKg: Number.NaN }, { place: { by: 'distance', mm: 500 } }, { carriedKg: 200 }])(
    'refuses %o',
    (patch) => {
      const s = session();
      s.commands.setWhatIf(patch as never);
      expect(s.getState().whatIf).toEqual({});
      expect(s.getState().problem).not.toBe(null);
      s.commands.setWhatIf({ massKg: 81.5 });
      expect(s.getState()).toMatchObject({ whatIf: { massKg: 81.5 }, problem: null });
    },
  );

  test('becomes a claim only as said, and only within what the source can say', () => {
    const s = session();
    s.commands.setWhatIf({ massKg: 90 });
    s.commands.claimWhatIf('massKg', { status: 'confirmed', source: { kind: 'person' } });
    expect(s.getState()).toMatchObject({ file: START, whatIf: { massKg: 90 } });
    expect(s.getState().problem).not.toBe(null);
    s.commands.claimWhatIf('massKg', PERSON);
    expect(s.getState()).toMatchObject({ whatIf: {}, problem: null, canUndo: true });
    expect(s.getState().file.claims[1]).toEqual({ id: 'c2', subject: 'massKg', value: 90, ...PERSON });
  });
});

describe('an explanation that cannot be made', () => {
  test('says so, shows none, and the next one comes', async () => {
    let broken = true;
    const runExplain = async (request: never) => {
      if (broken) throw new Error('no bone');
      return echo(request);
    };
    const s = session({ runExplain });
    await settle();
    expect(s.getState()).toMatchObject({ explanation: null, stale: false });
    expect(s.getState().problem?.what).toContain('no bone');
    broken = false;
    s.commands.addClaim(claim('c2', 'massKg', 70));
    await settle();
    expect(echoed(s.getState().explanation)?.file.claims.length).toBe(2);
  });
});

test('looking around touches neither case nor explanation', async () => {
  const s = session();
  await settle();
  const { file, explanation } = s.getState();
  s.commands.ask('why');
  s.commands.setReader('study');
  s.commands.setTheme('slate');
  s.commands.lookFrom('sole');
  s.commands.lookFrom('sole');
  s.commands.setQuiz({ litBone: 'cuboid', litRegion: null, picking: true });
  s.commands.pickForQuiz('talus');
  expect(s.getState()).toMatchObject({
    question: 'why',
    reader: 'study',
    theme: 'slate',
    view: 'sole',
    viewTick: 2,
    quizPick: 'talus',
    stale: false,
  });
  s.commands.setQuiz(null);
  expect(s.getState().quizPick).toBe(null);
  expect([s.getState().file, s.getState().explanation]).toEqual([file, explanation]);
});
