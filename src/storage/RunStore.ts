import { failure, type Result } from '../core/base/result.ts';
import type { RunHeader } from '../core/recording/recording.ts';
import { assembleRun, type LoadedRun } from './assembleRun.ts';
import { openDatabase, partsOf, type RunDatabase } from './database.ts';
import { dropRun } from './dropOldRuns.ts';
import { RunJournal } from './RunJournal.ts';
import { browserLocks, type RunLocks } from './runLocks.ts';
import { storedRun, type StoredRun } from './storedRun.ts';
import { storeFault } from './storeFault.ts';

/**
 * The runs kept in this browser: those under way, broken off, and the last finished ones. When the browser refuses to keep any, the
 * store is empty, keeps nothing and says why in `notice`; no call rejects.
 */
export class RunStore {
  /** One sentence when nothing can be kept, or null. */
  readonly notice: string | null;
  private readonly database: RunDatabase | null;
  private readonly locks: RunLocks;

  private constructor(database: RunDatabase | null, locks: RunLocks, notice: string | null) {
    this.database = database;
    this.locks = locks;
    this.notice = notice;
  }

  static async open(locks: RunLocks = browserLocks()): Promise<RunStore> {
    try {
      return new RunStore(await openDatabase(), locks, null);
    } catch (error) {
      return new RunStore(null, locks, storeFault(error));
    }
  }

  /** Journal of a run that begins, or goes on when its header says so. */
  async begin(header: RunHeader): Promise<RunJournal> {
    const free = await this.locks.hold(header.runId);
    if (!free) return new RunJournal(null, header, this.locks, 'This run is open in another window, which keeps it.');
    return new RunJournal(this.database, header, this.locks, this.notice);
  }

  /** All kept runs that no page is playing now, the newest first. */
  async list(): Promise<StoredRun[]> {
    if (!this.database) return [];
    try {
      const transaction = this.database.transaction('runs');
      const [ids, records] = await Promise.all([transaction.store.getAllKeys(), transaction.store.getAll()]);
      const played = await this.locks.held();
      const runs = ids.map((runId, k) => storedRun(runId, records[k]));
      return runs.filter(({ runId }) => !played.has(runId)).sort((a, b) => b.startedAt.localeCompare(a.startedAt));
    } catch {
      return [];
    }
  }

  /** Kept runs without an end, the newest first. */
  async brokenOff(): Promise<StoredRun[]> {
    return (await this.list()).filter(({ finished }) => !finished);
  }

  /** A kept run, as far as it is whole. The error is one sentence. */
  async load(runId: string): Promise<Result<LoadedRun, string>> {
    if (!this.database) return failure(this.notice ?? storeFault(null));
    try {
      const transaction = this.database.transaction(['runs', 'parts', 'snapshots']);
      const [run, parts, snapshot] = await Promise.all([
        transaction.objectStore('runs').get(runId),
        transaction.objectStore('parts').getAll(partsOf(runId)),
        transaction.objectStore('snapshots').get(runId),
      ]);
      return run ? assembleRun({ run, parts, snapshot }) : failure('This run is no longer kept in this browser.');
    } catch (error) {
      return failure(storeFault(error));
    }
  }

  /** Deletes a kept run. Gives one sentence when that failed, or null. */
  async delete(runId: string): Promise<string | null> {
    try {
      if (this.database) await dropRun(this.database, runId);
      return null;
    } catch (error) {
      return storeFault(error);
    }
  }
}
