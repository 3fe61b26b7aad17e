import { partsOf, writeWhole, type RunDatabase } from './database.ts';
import { storedRun } from './storedRun.ts';

/** Finished runs kept in the browser; a person who wants to keep more saves them as files. */
export const FINISHED_RUNS_MAX = 30;

/** Deletes a run with all that belongs to it. */
export const dropRun = (database: RunDatabase, runId: string): Promise<void> =>
  writeWhole(database, async (transaction) => {
    await transaction.objectStore('parts').delete(partsOf(runId));
    await transaction.objectStore('runs').delete(runId);
    await transaction.objectStore('snapshots').delete(runId);
  });

/** Deletes the oldest finished runs beyond `FINISHED_RUNS_MAX`; others, broken off or unreadable, are never deleted by themselves. */
export async function dropOldRuns(database: RunDatabase): Promise<void> {
  const runs = (await database.getAll('runs')).map((record) => storedRun(record.runId, record));
  const newestFirst = runs.filter(({ finished }) => finished).sort((a, b) => b.startedAt.localeCompare(a.startedAt));
  for (const { runId } of newestFirst.slice(FINISHED_RUNS_MAX)) await dropRun(database, runId);
}
