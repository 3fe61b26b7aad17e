import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { openDB, type IDBPDatabase } from 'idb';

/** A browser profile without any data. */
export function freshDatabase(): void {
  globalThis.indexedDB = new IDBFactory();
}

/** The same database past the store, to damage it. */
export const rawDatabase = (version = 2): Promise<IDBPDatabase> => openDB('sterile-field-runs', version);

/** A browser profile in which a trainer of version 1 of the database kept runs; `fill` puts records into its three tables. */
export async function oldDatabase(fill: (database: IDBPDatabase) => Promise<unknown>): Promise<void> {
  freshDatabase();
  const database = await openDB('sterile-field-runs', 1, {
    upgrade(made) {
      made.createObjectStore('runs', { keyPath: 'runId' });
      made.createObjectStore('parts', { keyPath: ['runId', 'part'] });
      made.createObjectStore('snapshots', { keyPath: 'runId' });
    },
  });
  await fill(database);
  database.close();
}
