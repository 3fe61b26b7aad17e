import type { StorageState } from '../../library/libraryService.ts';

/** What the browser says about the room for runs and whether it may clear them by itself. */
export async function storageState(): Promise<StorageState> {
  const storage = manager();
  const [persisted, estimate] = await Promise.all([
    storage?.persisted?.().catch(() => null) ?? null,
    storage?.estimate?.().catch(() => null) ?? null,
  ]);
  return { persisted, usedBytes: estimate?.usage ?? null, quotaBytes: estimate?.quota ?? null };
}

/** Asks the browser not to clear the runs by itself; some ask the person first. */
export async function askToKeep(): Promise<StorageState> {
  await manager()?.persist?.().catch(() => false);
  return storageState();
}

let askedForNewRun = false;

/** Asks the same once while the page is open, when a run was made that is worth keeping. */
export async function askToKeepNewRun(): Promise<void> {
  if (askedForNewRun) return;
  askedForNewRun = true;
  const { persisted } = await storageState();
  if (persisted === false) await askToKeep();
}

const manager = (): Partial<StorageManager> | undefined => navigator.storage as StorageManager | undefined;
