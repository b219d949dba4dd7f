/**
 * Empties everything this origin can keep on the device: IndexedDB, local and session storage, Cache storage. Each store is
 * looked at afterwards; what is still there is reported, never passed over.
 */
import type { WipeReport } from './case-storage';
import { reasonOf } from './session-problems';

export interface BrowserStores {
  readonly indexedDB?: IDBFactory;
  readonly localStorage?: Storage;
  readonly sessionStorage?: Storage;
  readonly caches?: CacheStorage;
}

/** Our own database, for browsers that cannot list theirs. */
export const DATABASE = 'underfoot';

const deleteDatabase = (factory: IDBFactory, name: string): Promise<void> =>
  new Promise((resolve, reject) => {
    const request = factory.deleteDatabase(name);
    request.onsuccess = () => resolve();
    request.onerror = () => reject(request.error ?? new Error(`${name} could not be deleted`));
    request.onblocked = () => reject(new Error(`${name} is open in another tab`));
  });

const wipeDatabases = async (factory: IDBFactory): Promise<void> => {
  const listed = (await factory.databases?.()) ?? [];
  const names = new Set([DATABASE, ...listed.flatMap(({ name }) => (name === undefined ? [] : [name]))]);
  await Promise.all([...names].map((name) => deleteDatabase(factory, name)));
  const left = (await factory.databases?.()) ?? [];
  if (left.length > 0) throw new Error(`${left.length} databases are still there`);
};

const wipeStorage = (storage: Storage): void => {
  storage.clear();
  if (storage.length > 0) throw new Error(`${storage.length} entries are still there`);
};

const wipeCaches = async (caches: CacheStorage): Promise<void> => {
  await Promise.all((await caches.keys()).map((name) => caches.delete(name)));
  const left = await caches.keys();
  if (left.length > 0) throw new Error(`${left.length} caches are still there`);
};

/** A store that the browser does not have, or whose very name it refuses to give, cannot hold anything of ours. */
export const wipeStores = async (stores: BrowserStores = globalThis): Promise<WipeReport> => {
  const jobs: Readonly<Record<keyof BrowserStores, () => Promise<boolean>>> = {
    indexedDB: async () => {
      if (!stores.indexedDB) return false;
      await wipeDatabases(stores.indexedDB);
      return true;
    },
    localStorage: async () => {
      if (!stores.localStorage) return false;
      wipeStorage(stores.localStorage);
      return true;
    },
    sessionStorage: async () => {
      if (!stores.sessionStorage) return false;
      wipeStorage(stores.sessionStorage);
      return true;
    },
    caches: async () => {
      if (!stores.caches) return false;
      await wipeCaches(stores.caches);
      return true;
    },
  };
  const emptied: string[] = [];
  const failed: { store: string; why: string }[] = [];
  await Promise.all(
    Object.entries(jobs).map(async ([store, wipe]) => {
      try {
        if (await wipe()) emptied.push(store);
      } catch (error) {
        failed.push({ store, why: reasonOf(error) });
      }
    }),
  );
  return { emptied: emptied.sort(), failed };
};
