import type { RunLocks } from '../../../src/storage/runLocks.ts';

/** Locks of several pages of one browser: all made by one call share them. */
export function pagesOfOneBrowser(count: number): RunLocks[] {
  const owner = new Map<string, number>();
  return Array.from({ length: count }, (_, page) => ({
    hold(runId) {
      if (!owner.has(runId)) owner.set(runId, page);
      return Promise.resolve(owner.get(runId) === page);
    },
    release(runId) {
      if (owner.get(runId) === page) owner.delete(runId);
    },
    held: () => Promise.resolve(new Set(owner.keys())),
  }));
}
