import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { openDB, type IDBPDatabase } from 'idb';

/** A browser profile without any data. */
export function freshDatabase(): void {
  globalThis.indexedDB = new IDBFactory();
}

/** The same database past the store, to damage it. */
export const rawDatabase = (version = 1): Promise<IDBPDatabase> => openDB('sterile-field-runs', version);
