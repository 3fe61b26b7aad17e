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

const manager = (): Partial<StorageManager> | undefined => navigator.storage as StorageManager | undefined;
