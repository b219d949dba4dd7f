/** Against fake-indexeddb, an implementation of the IndexedDB standard in memory; other stores by small stand-ins. */
import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { openDB } from 'idb';
import { beforeEach, describe, expect, test } from 'vitest';
import { browserStorage, KEPT_FOR_MS, type Kept, wipeStores } from '../../../src/session';

const kept = (caseText: string, keepOnDevice = false): Kept => ({ caseText, theme: 'auto', keepOnDevice });
let clock = 0;
const tab = (name: string) => browserStorage(() => clock, name);

beforeEach(() => {
  clock = 1_000_000_000_000;
  globalThis.indexedDB = new IDBFactory();
});

interface RawSlot {
  revision: number;
  savedAtMs: number;
  kept: Kept;
}
const slots = async (): Promise<RawSlot[]> => {
  const database = await openDB('underfoot', 1);
  const all = await database.getAll('slots');
  database.close();
  return all as RawSlot[];
};
const spoil = async (revision: number, change: (slot: RawSlot) => unknown): Promise<void> => {
  const database = await openDB('underfoot', 1);
  for (const key of await database.getAllKeys('slots')) {
    const slot = (await database.get('slots', key)) as RawSlot;
    if (slot.revision === revision) await database.put('slots', change(slot), key);
  }
  database.close();
};

test('an empty storage has nothing', async () => {
  expect(await tab('one').load()).toBe(null);
});

test('what was saved last comes back, in two slots written in turn', async () => {
  const one = tab('one');
  for (const text of ['first', 'second', 'third']) expect(await one.save(kept(text))).toEqual({ ok: true });
  expect(await tab('later').load()).toEqual(kept('third'));
  expect((await slots()).map(({ revision }) => revision).sort()).toEqual([2, 3]);
});

describe('a record that was cut off or changed', () => {
  test.each([
    ['changed text', (slot: RawSlot) => ({ ...slot, kept: kept('spoilt') })],
    ['changed time', (slot: RawSlot) => ({ ...slot, savedAtMs: slot.savedAtMs + 1 })],
    ['half of it', ({ revision, savedAtMs }: RawSlot) => ({ revision, savedAtMs })],
    ['no record', () => 'x'],
    ['nothing', () => null],
  ])('%s: the one before comes back, and the next save repairs', async (_, change) => {
    const one = tab('one');
    await one.save(kept('first'));
    await one.save(kept('second'));
    await spoil(2, change);
    const later = tab('later');
    expect(await later.load()).toEqual(kept('first'));
    await later.save(kept('third'));
    expect(await tab('last').load()).toEqual(kept('third'));
  });
});

describe('two tabs', () => {
  test('a tab never writes over what another saved after it last looked', async () => {
    const [one, two] = [tab('one'), tab('two')];
    await one.save(kept('of one'));
    await two.load();
    expect(await two.save(kept('of two'))).toEqual({ ok: true });
    expect(await one.save(kept('of one again'))).toEqual({ ok: false, reason: 'newer elsewhere' });
    expect(await tab('three').load()).toEqual(kept('of two'));
  });

  test('a tab that never looked is not newer', async () => {
    await tab('one').save(kept('of one'));
    expect(await tab('two').save(kept('of two'))).toEqual({ ok: false, reason: 'newer elsewhere' });
  });

  test('having looked, it may', async () => {
    const [one, two] = [tab('one'), tab('two')];
    await one.save(kept('of one'));
    await two.load();
    await two.save(kept('of two'));
    await one.load();
    expect(await one.save(kept('of one again'))).toEqual({ ok: true });
  });
});

describe('twelve hours', () => {
  test.each([
    [KEPT_FOR_MS, false, true],
    [KEPT_FOR_MS + 1, false, false],
    [-KEPT_FOR_MS - 1, false, false],
    [100 * KEPT_FOR_MS, true, true],
  ])('after %d ms, keep = %s: there = %s', async (later, keep, there) => {
    await tab('one').save(kept('text', keep));
    clock += later;
    expect((await tab('two').load()) !== null).toBe(there);
    // Gone means gone from the device, not only hidden.
    expect((await slots()).length).toBe(there ? 1 : 0);
  });
});

test('a browser without IndexedDB says so and does not throw', async () => {
  Reflect.deleteProperty(globalThis, 'indexedDB');
  expect(await tab('one').save(kept('text'))).toMatchObject({ ok: false, reason: 'failed' });
});

test('hears the page being hidden and shown, until told to stop', () => {
  const page = Object.assign(new EventTarget(), { hidden: false });
  Object.assign(globalThis, { document: page });
  const heard: string[] = [];
  const one = tab('one');
  const stops = [one.onHidden(() => heard.push('hidden')), one.onShown(() => heard.push('shown'))];
  for (const hidden of [true, false]) {
    page.hidden = hidden;
    page.dispatchEvent(new Event('visibilitychange'));
  }
  for (const stop of stops) stop();
  page.dispatchEvent(new Event('visibilitychange'));
  Reflect.deleteProperty(globalThis, 'document');
  expect(heard).toEqual(['hidden', 'shown']);
});

/** Storage and CacheStorage as far as they are used. */
const webStorage = (entries: Record<string, string>): Storage => {
  const map = new Map(Object.entries(entries));
  return {
    get length() {
      return map.size;
    },
    clear: () => map.clear(),
  } as Storage;
};
const cacheStorage = (names: string[]): CacheStorage => {
  const left = new Set(names);
  return { keys: async () => [...left], delete: async (name: string) => left.delete(name) } as unknown as CacheStorage;
};

describe('wiping', () => {
  const stores = () => ({
    indexedDB: globalThis.indexedDB,
    localStorage: webStorage({ a: '1' }),
    sessionStorage: webStorage({ b: '2' }),
    caches: cacheStorage(['v1', 'v2']),
  });

  test('empties every store', async () => {
    await tab('one').save(kept('text', true));
    (await openDB('another', 1)).close();
    const all = stores();
    expect(await wipeStores(all)).toEqual({
      emptied: ['caches', 'indexedDB', 'localStorage', 'sessionStorage'],
      failed: [],
    });
    expect(await all.indexedDB.databases()).toEqual([]);
    expect([all.localStorage.length, all.sessionStorage.length]).toEqual([0, 0]);
    expect(await all.caches.keys()).toEqual([]);
    expect(await tab('two').load()).toBe(null);
  });

  test('a database held open elsewhere is reported, the rest is emptied', async () => {
    await tab('one').save(kept('text'));
    const held = await openDB('underfoot', 1);
    const all = stores();
    const report = await wipeStores(all);
    expect(report.failed).toEqual([{ store: 'indexedDB', why: 'underfoot is open in another tab' }]);
    expect(report.emptied).toEqual(['caches', 'localStorage', 'sessionStorage']);
    held.close();
  });

  test('a store that does not empty, or may not even be named, is reported', async () => {
    const stubborn = { ...webStorage({ a: '1' }), length: 1, clear: () => {} } as Storage;
    const report = await wipeStores({
      localStorage: stubborn,
      caches: cacheStorage([]),
      get sessionStorage(): Storage {
        throw new Error('denied');
      },
    });
    expect(report.failed.map(({ store, why }) => `${store}: ${why}`).sort()).toEqual([
      'localStorage: 1 entries are still there',
      'sessionStorage: denied',
    ]);
  });

  test('our own database goes even where the browser cannot list databases', async () => {
    await tab('one').save(kept('text', true));
    const { indexedDB } = globalThis;
    const unlisted = { deleteDatabase: (name: string) => indexedDB.deleteDatabase(name) } as unknown as IDBFactory;
    expect((await wipeStores({ indexedDB: unlisted as never })).failed).toEqual([]);
    expect(await indexedDB.databases()).toEqual([]);
  });

  test('after a wipe a tab starts anew', async () => {
    const one = tab('one');
    await one.save(kept('text'));
    await one.wipe();
    expect(await one.load()).toBe(null);
    expect(await one.save(kept('next'))).toEqual({ ok: true });
  });
});
