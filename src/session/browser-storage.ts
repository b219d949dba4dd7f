/**
 * The session kept in IndexedDB: two slots written in turn, each with a revision and a checksum, so that a write that was cut
 * off leaves the one before whole. Each record carries the stamp of its tab: a tab never writes over what another tab saved
 * after this one last looked. Records are gone after twelve hours unless the person chose to keep them.
 */
import { type IDBPDatabase, openDB } from 'idb';
import type { CaseStorage, Kept, SaveOutcome } from './case-storage';
import { checksumOf } from './checksum';
import { isPastItsTime } from './kept-time';
import { reasonOf } from './session-problems';
import { DATABASE, wipeStores } from './wipe-stores';

const STORE = 'slots';
const SLOTS = ['a', 'b'] as const;
type Slot = (typeof SLOTS)[number];

interface SlotRecord {
  readonly revision: number;
  readonly tab: string;
  readonly savedAtMs: number;
  readonly kept: Kept;
  readonly checksum: string;
}

const sealed = (record: Omit<SlotRecord, 'checksum'>): SlotRecord => ({
  ...record,
  checksum: checksumOf(JSON.stringify([record.revision, record.tab, record.savedAtMs, record.kept])),
});

const isWhole = (record: SlotRecord | undefined): record is SlotRecord => {
  if (typeof record !== 'object' || record === null) return false;
  const { revision, tab, savedAtMs, kept, checksum } = record;
  return checksum === sealed({ revision, tab, savedAtMs, kept }).checksum;
};

interface Found {
  readonly slot: Slot;
  readonly record: SlotRecord;
}

const newestOf = (records: readonly (SlotRecord | undefined)[]): Found | null => {
  const whole = SLOTS.flatMap((slot, i) => {
    const record = records[i];
    return isWhole(record) ? [{ slot, record }] : [];
  });
  return whole.sort((a, b) => b.record.revision - a.record.revision)[0] ?? null;
};

const tabStamp = (): string => Array.from(crypto.getRandomValues(new Uint32Array(2)), (n) => n.toString(36)).join('-');

/** Opened and closed for each use, so that no tab ever holds the database against a wipe. */
const withDatabase = async <T>(use: (database: IDBPDatabase) => Promise<T>): Promise<T> => {
  const database = await openDB(DATABASE, 1, {
    upgrade: (opened) => {
      opened.createObjectStore(STORE);
    },
    blocking: (_current, _blocked, event) => (event.target as IDBDatabase).close(),
  });
  try {
    return await use(database);
  } finally {
    database.close();
  }
};

const listen = (hidden: boolean, listener: () => void): (() => void) => {
  if (typeof document === 'undefined') return () => {};
  const heard = (): void => {
    if (document.hidden === hidden) listener();
  };
  document.addEventListener('visibilitychange', heard);
  return () => document.removeEventListener('visibilitychange', heard);
};

export const browserStorage = (now: () => number = Date.now, tab: string = tabStamp()): CaseStorage => {
  /** Revision this tab last read or wrote. */
  let known = 0;

  const load = (): Promise<Kept | null> =>
    withDatabase(async (database) => {
      const transaction = database.transaction(STORE, 'readwrite');
      const newest = newestOf(await Promise.all(SLOTS.map((slot) => transaction.store.get(slot))));
      const old = newest !== null && isPastItsTime(newest.record.savedAtMs, newest.record.kept.keepOnDevice, now());
      if (old || newest === null) await transaction.store.clear();
      await transaction.done;
      known = newest?.record.revision ?? 0;
      return old || newest === null ? null : newest.record.kept;
    });

  const save = async (kept: Kept): Promise<SaveOutcome> => {
    try {
      return await withDatabase(async (database): Promise<SaveOutcome> => {
        const transaction = database.transaction(STORE, 'readwrite');
        const newest = newestOf(await Promise.all(SLOTS.map((slot) => transaction.store.get(slot))));
        if (newest !== null && newest.record.tab !== tab && newest.record.revision > known) {
          await transaction.done;
          return { ok: false, reason: 'newer elsewhere' };
        }
        const revision = Math.max(known, newest?.record.revision ?? 0) + 1;
        const slot: Slot = newest?.slot === 'a' ? 'b' : 'a';
        await transaction.store.put(sealed({ revision, tab, savedAtMs: now(), kept }), slot);
        await transaction.done;
        known = revision;
        return { ok: true };
      });
    } catch (error) {
      return { ok: false, reason: 'failed', detail: reasonOf(error) };
    }
  };

  return {
    load,
    save,
    wipe: async () => {
      known = 0;
      return wipeStores();
    },
    onHidden: (listener) => listen(true, listener),
    onShown: (listener) => listen(false, listener),
  };
};
