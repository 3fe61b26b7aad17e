import { partsOf, writeWhole, type RunDatabase } from './database.ts';
import type { RunSummary } from './runSummary.ts';

/** How long a deleted run can be taken back. */
export const UNDO_HOURS = 24;
const UNDO_MS = UNDO_HOURS * 60 * 60 * 1000;

/** Marks runs as deleted at a moment (ISO 8601), or with null takes that back. Their recordings are not touched. */
export const markDeleted = (database: RunDatabase, keys: readonly string[], deletedAt: string | null): Promise<void> =>
  writeWhole(database, async (transaction) => {
    const summaries = transaction.objectStore('summaries');
    for (const key of keys) {
      const before: unknown = await summaries.get(key);
      // A damaged line, or one of a newer trainer, keeps whatever it holds.
      const line = typeof before === 'object' && before !== null ? before : { key };
      await summaries.put({ ...line, deletedAt } as RunSummary);
    }
  });

/** Deletes runs for good, with all that belongs to them. */
export const dropRuns = (database: RunDatabase, keys: readonly string[]): Promise<void> =>
  writeWhole(database, async (transaction) => {
    for (const key of keys) {
      await transaction.objectStore('parts').delete(partsOf(key));
      await transaction.objectStore('runs').delete(key);
      await transaction.objectStore('snapshots').delete(key);
      await transaction.objectStore('bodies').delete(key);
      await transaction.objectStore('summaries').delete(key);
    }
  });

/** Whether the time to take a deletion back has passed at a moment (milliseconds since 1970). */
export const undoIsOver = ({ deletedAt }: Pick<RunSummary, 'deletedAt'>, nowMs: number): boolean => deletedAt !== null && nowMs - Date.parse(deletedAt) > UNDO_MS;
