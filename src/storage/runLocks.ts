/** Tells which runs are being played in some page of this browser, so that no other page takes them for broken off. */
export interface RunLocks {
  /** Takes the lock; false when another page has it. Ends by itself with the page. */
  hold(runId: string): Promise<boolean>;
  release(runId: string): void;
  /** Runs that are being played now. */
  held(): Promise<ReadonlySet<string>>;
}

const PREFIX = 'sterile-field-run:';

/** Locks of the browser; where it has none, every run counts as free. */
export function browserLocks(): RunLocks {
  const manager = typeof navigator === 'undefined' ? undefined : (navigator.locks as LockManager | undefined);
  const releases = new Map<string, () => void>();
  return {
    hold(runId) {
      if (!manager || releases.has(runId)) return Promise.resolve(true);
      return new Promise((resolve) => {
        const whileHeld = (lock: Lock | null): Promise<void> | undefined => {
          resolve(lock !== null);
          return lock === null ? undefined : new Promise((release) => void releases.set(runId, release));
        };
        manager.request(PREFIX + runId, { ifAvailable: true }, whileHeld).catch(() => resolve(true));
      });
    },
    release(runId) {
      releases.get(runId)?.();
      releases.delete(runId);
    },
    async held() {
      const snapshot = await manager?.query();
      return new Set((snapshot?.held ?? []).flatMap(({ name }) => (name?.startsWith(PREFIX) ? [name.slice(PREFIX.length)] : [])));
    },
  };
}
