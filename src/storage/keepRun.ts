import { contentHashOf, HASH_SHAPE } from './contentHash.ts';
import { RECORD_VERSION, writeWhole, type RunDatabase } from './database.ts';
import { loadRun } from './runBody.ts';
import { readSummary, type RunSummary } from './runSummary.ts';

/**
 * What came of a run that was to be kept: it is new; it was there already; it was there but deleted or without its recording, and is taken back; or another
 * recording under the same id was there, and now both are.
 */
export type Kept = 'new' | 'same' | 'takenBack' | 'beside';

/** A run read from a file, with its bytes. `summary.key` is the run's id. */
export interface ArrivedRun {
  readonly summary: RunSummary;
  readonly zipped: Uint8Array<ArrayBuffer>;
}

/** Keeps a run that came from elsewhere, once: whole or not at all. Rejects as IndexedDB does. */
export async function keepRun(database: RunDatabase, { summary, zipped }: ArrivedRun): Promise<Kept> {
  const { runId, contentHash } = summary;
  await knowHashes(database, runId);
  return writeWhole(database, async (transaction) => {
    const summaries = transaction.objectStore('summaries');
    const sameId = (await summaries.index('runId').getAll(runId)).map(readSummary);
    const same = sameId.find((kept) => kept?.contentHash === contentHash);
    const bodies = transaction.objectStore('bodies');
    const isKept = async (key: string): Promise<boolean> => (await bodies.getKey(key)) !== undefined || (await transaction.objectStore('runs').getKey(key)) !== undefined;
    if (same) {
      const whole = await isKept(same.key);
      if (whole && !same.deletedAt) return 'same';
      if (!whole) await bodies.put({ version: RECORD_VERSION, key: same.key, zipped });
      await summaries.put({ ...same, deletedAt: null });
      return 'takenBack';
    }
    const taken = sameId.length > 0 || (await isKept(runId));
    const key = taken ? `${runId}.${contentHash}` : runId;
    await bodies.put({ version: RECORD_VERSION, key, zipped });
    await summaries.put({ ...summary, key });
    return taken ? 'beside' : 'new';
  });
}

/** Sees to it that all kept recordings of an id have a hash that can be compared. */
async function knowHashes(database: RunDatabase, runId: string): Promise<void> {
  for (const record of await database.getAllFromIndex('summaries', 'runId', runId)) {
    const summary = readSummary(record);
    if (!summary || (summary.contentHash !== null && summary.hashShape === HASH_SHAPE)) continue;
    const loaded = await loadRun(database, summary.key);
    if (loaded.ok) await database.put('summaries', { ...summary, ...contentHashOf(loaded.value.recording) });
  }
}
