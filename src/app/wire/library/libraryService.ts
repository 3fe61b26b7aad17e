import type { RunStore } from '../../../storage/RunStore.ts';
import type { LibraryService } from '../../library/libraryService.ts';
import { askToKeep, askToKeepNewRun, storageState } from './browserStorage.ts';

/** The page of runs over the store of this browser; packing and unpacking are loaded when they are asked for. */
export function libraryService(opened: Promise<RunStore>): LibraryService {
  return {
    async list() {
      const store = await opened;
      await store.deleteExpired(Date.now());
      const { runs, notes } = await store.listing();
      return { runs: runs.filter(({ deletedAt }) => deletedAt === null), deleted: runs.filter(({ deletedAt }) => deletedAt !== null), notes };
    },
    setDeleted: async (keys, deleted) => (await opened).setDeleted(keys, deleted ? new Date().toISOString() : null),
    deleteForGood: async (keys) => (await opened).delete(...keys),
    exportRuns: async (runs, onShare) => (await import('./exportRuns.ts')).exportRuns(await opened, runs, onShare),
    async importFiles(files, onShare) {
      const outcome = await (await import('./importFiles.ts')).importFiles(await opened, files, onShare);
      if (outcome.added > 0) await askToKeepNewRun();
      return outcome;
    },
    storage: storageState,
    askToKeep,
  };
}
