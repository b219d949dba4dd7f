import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { readCase, writeCase } from '../../../src/cases';
import { createSession, KEPT_FOR_MS } from '../../../src/session';
import { CONTENT, caseFile, claim, echo, echoed, MemoryStorage, START } from './helpers';

const WORK = caseFile('work', [claim('c1', 'side', 'left')]);
let storage: MemoryStorage;
beforeEach(() => {
  vi.useFakeTimers();
  storage = new MemoryStorage();
});
afterEach(() => void vi.useRealTimers());

const session = (more: object = {}) =>
  createSession({ content: CONTENT, file: START, runExplain: async (request) => echo(request), storage, ...more });
const savedId = (): string | null => {
  const read = storage.kept === null ? null : readCase(storage.kept.caseText);
  return read?.ok ? read.file.id : null;
};

describe('keeping', () => {
  test('nothing is saved until the case changes, then once for several changes', async () => {
    const s = session();
    s.commands.ask('why');
    s.commands.setWhatIf({ massKg: 80 });
    await vi.advanceTimersByTimeAsync(10_000);
    expect(storage.saves).toBe(0);
    s.commands.openCase(WORK);
    s.commands.addClaim(claim('c2', 'massKg', 70));
    await vi.advanceTimersByTimeAsync(10_000);
    expect([storage.saves, savedId()]).toEqual([1, 'work']);
    expect(storage.kept?.caseText).toBe(writeCase(s.getState().file));
    s.commands.undo();
    await vi.advanceTimersByTimeAsync(10_000);
    expect(storage.saves).toBe(2);
  });

  test('at once when the page is hidden, and only if something waits', async () => {
    const s = session();
    s.commands.openCase(WORK);
    storage.hidden();
    await vi.advanceTimersByTimeAsync(0);
    expect(savedId()).toBe('work');
    storage.hidden();
    await vi.advanceTimersByTimeAsync(10_000);
    expect(storage.saves).toBe(1);
  });

  test('neither what-if nor explanation nor screen goes along', async () => {
    const s = session();
    s.commands.openCase(WORK);
    s.commands.setWhatIf({ massKg: 99 });
    await s.flush();
    expect(Object.keys(storage.kept ?? {}).sort()).toEqual(['caseText', 'keepOnDevice', 'theme']);
    expect(JSON.stringify(storage.kept)).not.toContain('99');
  });

  test('a newer save of another tab: nothing is written over, and it is said each time', async () => {
    storage.outcome = { ok: false, reason: 'newer elsewhere' };
    const s = session();
    s.commands.openCase(WORK);
    await s.flush();
    expect(s.getState().problem?.what).toContain('another tab');
    expect(s.getState().file).toEqual(WORK);
    storage.outcome = { ok: true };
    s.commands.addClaim(claim('c2', 'massKg', 70));
    expect(s.getState().problem).toBe(null);
    await s.flush();
    expect([storage.saves, savedId()]).toEqual([1, null]);
    expect(s.getState().problem?.what).toContain('another tab');
  });

  test('a storage that refuses is told once', async () => {
    storage.outcome = { ok: false, reason: 'failed', detail: 'quota' };
    const s = session();
    s.commands.openCase(WORK);
    await s.flush();
    expect(s.getState().problem?.what).toContain('quota');
    s.commands.addClaim(claim('c2', 'massKg', 70));
    await s.flush();
    expect([storage.saves, s.getState().problem]).toEqual([2, null]);
  });
});

describe('bringing back', () => {
  const KEPT = { caseText: writeCase(WORK), theme: 'slate', keepOnDevice: true } as const;

  test('the case, theme and the wish to keep it', async () => {
    storage.kept = KEPT;
    const s = session();
    expect(await s.restored).toBe(true);
    expect(s.getState()).toMatchObject({ file: WORK, theme: 'slate', keepOnDevice: true, problem: null });
    await vi.advanceTimersByTimeAsync(0);
    expect(echoed(s.getState().explanation)?.file).toEqual(WORK);
    expect(storage.saves).toBe(0);
  });

  test('not over what the person has done meanwhile', async () => {
    storage.kept = KEPT;
    const s = session();
    s.commands.addClaim(claim('c2', 'massKg', 70));
    expect(await s.restored).toBe(false);
    expect(s.getState().file.id).toBe('start-case');
  });

  test('not when a link asked for something else', async () => {
    storage.kept = KEPT;
    const s = session({ restore: false });
    await s.restored;
    expect(s.getState()).toMatchObject({ file: START, keepOnDevice: false });
    expect(storage.kept).toBe(KEPT);
  });

  test.each([
    ['a case that cannot be read', { ...KEPT, caseText: '{' }],
    ['a record of another version', { ...KEPT, view: 'top' }],
    ['something else', 7],
  ])('%s is a problem and changes nothing', async (_, kept) => {
    storage.kept = kept as never;
    const s = session();
    expect(await s.restored).toBe(false);
    expect(s.getState()).toMatchObject({ file: START, theme: 'auto' });
    expect(s.getState().problem).not.toBe(null);
  });
});

describe('letting go', () => {
  test('finish empties the stores and starts with the demo case', async () => {
    const s = session();
    s.commands.openCase(WORK);
    s.commands.setKeepOnDevice(true);
    s.commands.setTheme('slate');
    s.commands.setReader('study');
    await s.flush();
    expect(savedId()).toBe('work');
    await s.commands.finish();
    expect([storage.wipes, savedId()]).toEqual([1, null]);
    expect(s.getState()).toMatchObject({
      file: START,
      keepOnDevice: false,
      theme: 'auto',
      reader: 'patient',
      canUndo: false,
      problem: null,
    });
    s.commands.undo();
    expect(s.getState().file).toBe(START);
  });

  test('a save that was waiting does not come after it', async () => {
    const s = session();
    s.commands.openCase(WORK);
    await s.commands.finish();
    await vi.advanceTimersByTimeAsync(60_000);
    storage.hidden();
    await vi.advanceTimersByTimeAsync(60_000);
    expect([storage.saves, savedId()]).toEqual([0, null]);
  });

  test('a save under way is waited for, then wiped', async () => {
    const order: string[] = [];
    storage.save = async () => {
      await new Promise((resolve) => setTimeout(resolve, 100));
      order.push('saved');
      return { ok: true };
    };
    storage.wipe = async () => {
      order.push('wiped');
      return { emptied: [], failed: [] };
    };
    const s = session();
    s.commands.openCase(WORK);
    void s.flush();
    await vi.advanceTimersByTimeAsync(1);
    const finished = s.commands.finish();
    await vi.advanceTimersByTimeAsync(1000);
    await finished;
    expect(order).toEqual(['saved', 'wiped']);
  });

  test('a store that could not be emptied is named', async () => {
    storage.wipeReport = { emptied: [], failed: [{ store: 'indexedDB', why: 'open in another tab' }] };
    const s = session();
    await s.commands.finish();
    expect(s.getState().problem?.what).toContain('indexedDB (open in another tab)');
  });

  test('after 12 hours without a change the case is gone, from the screen too', async () => {
    const s = session();
    s.commands.openCase(WORK);
    await vi.advanceTimersByTimeAsync(KEPT_FOR_MS - 1000);
    expect(s.getState().file).toEqual(WORK);
    await vi.advanceTimersByTimeAsync(2000);
    expect(s.getState().file).toBe(START);
    expect([storage.wipes, savedId()]).toEqual([1, null]);
  });

  test('also when the device slept through it and is woken', async () => {
    let clock = 1000;
    const s = session({ now: () => clock });
    s.commands.openCase(WORK);
    clock += KEPT_FOR_MS + 1;
    storage.shown();
    expect(s.getState().file).toBe(START);
  });

  test('a case brought back has its 12 hours', async () => {
    storage.kept = { caseText: writeCase(WORK), theme: 'auto', keepOnDevice: false };
    const s = session();
    await s.restored;
    await vi.advanceTimersByTimeAsync(KEPT_FOR_MS + 1000);
    expect(s.getState().file).toBe(START);
  });

  test('not when the person chose to keep it', async () => {
    const s = session();
    s.commands.openCase(WORK);
    s.commands.setKeepOnDevice(true);
    await vi.advanceTimersByTimeAsync(3 * KEPT_FOR_MS);
    expect(s.getState().file).toEqual(WORK);
    expect(storage.wipes).toBe(0);
  });

  test('a closed session has no timers left', async () => {
    const s = session();
    s.commands.openCase(WORK);
    s.close();
    expect(vi.getTimerCount()).toBe(0);
  });
});
