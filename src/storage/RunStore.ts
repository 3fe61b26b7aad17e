import { failure, success, type Result } from '../core/base/result.ts';
import type { RunHeader } from '../core/recording/recording.ts';
import type { LoadedRun } from './assembleRun.ts';
import { openDatabase, writeWhole, type RunDatabase } from './database.ts';
import { dropRuns, markDeleted, undoIsOver } from './deleteRuns.ts';
import { keepRun, type ArrivedRun, type Kept } from './keepRun.ts';
import { listRuns, type RunListing } from './listRuns.ts';
import { loadRun, zippedRun } from './runBody.ts';
import { RunJournal } from './RunJournal.ts';
import { browserLocks, type RunLocks } from './runLocks.ts';
import { readSummary } from './runSummary.ts';
import { isBrokenOff, type StoredRun } from './storedRun.ts';
import { storeFault } from './storeFault.ts';

/**
 * The runs kept in this browser: those broken off and all finished ones, until a person deletes them. When the browser refuses to
 * keep any, the store is empty, keeps nothing and says why in `notice`; no call rejects, and faults are one sentence each.
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

  /** Everything that no page is playing now, the deleted ones that can be taken back among it, the newest first; and what of the list was damaged. */
  async listing(): Promise<RunListing> {
    if (!this.database) return { runs: [], notes: this.notice ? [this.notice] : [] };
    try {
      const { runs, notes } = await listRuns(this.database);
      const played = await this.locks.held();
      return { runs: runs.filter(({ key }) => !played.has(key)).sort(newestFirst), notes };
    } catch (error) {
      return { runs: [], notes: [storeFault(error)] };
    }
  }

  /** All kept runs that no page is playing now, the newest first. */
  async list(): Promise<StoredRun[]> {
    return (await this.listing()).runs.filter(({ deletedAt }) => deletedAt === null);
  }

  /** Kept runs that can go on where they were broken off, the newest first. */
  async brokenOff(): Promise<StoredRun[]> {
    return (await this.list()).filter(isBrokenOff);
  }

  /** A kept run, as far as it is whole. */
  load(key: string): Promise<Result<LoadedRun, string>> {
    return this.read((database) => loadRun(database, key));
  }

  /** A kept run as a zipped run file. */
  zipped(key: string): Promise<Result<Uint8Array<ArrayBuffer>, string>> {
    return this.read((database) => zippedRun(database, key));
  }

  /** Keeps a run that came from a file, once. */
  keep(arrived: ArrivedRun): Promise<Result<Kept, string>> {
    return this.read(async (database) => success(await keepRun(database, arrived)));
  }

  /** Marks runs as deleted at a moment in ISO 8601, or with null takes that back. Gives one sentence when that failed, or null. */
  setDeleted(keys: readonly string[], deletedAt: string | null): Promise<string | null> {
    return this.write((database) => markDeleted(database, keys, deletedAt));
  }

  /** Notes when runs were last written to an archive. */
  setExported(keys: readonly string[], exportedAt: string): Promise<string | null> {
    return this.write((database) =>
      writeWhole(database, async (transaction) => {
        for (const key of keys) {
          const summary = readSummary(await transaction.objectStore('summaries').get(key));
          if (summary) await transaction.objectStore('summaries').put({ ...summary, exportedAt });
        }
      }),
    );
  }

  /** Deletes a kept run for good. Gives one sentence when that failed, or null. */
  delete(...keys: string[]): Promise<string | null> {
    return this.write((database) => dropRuns(database, keys));
  }

  /** Deletes for good what was deleted so long ago that it can no longer be taken back. */
  async deleteExpired(nowMs: number): Promise<void> {
    const expired = (await this.listing()).runs.filter((run) => undoIsOver(run, nowMs)).map(({ key }) => key);
    if (expired.length > 0) await this.delete(...expired);
  }

  private async read<Value>(work: (database: RunDatabase) => Promise<Result<Value, string>>): Promise<Result<Value, string>> {
    if (!this.database) return failure(this.notice ?? storeFault(null));
    try {
      return await work(this.database);
    } catch (error) {
      return failure(storeFault(error));
    }
  }

  private async write(work: (database: RunDatabase) => Promise<void>): Promise<string | null> {
    try {
      if (this.database) await work(this.database);
      return null;
    } catch (error) {
      return storeFault(error);
    }
  }
}

const newestFirst = (a: StoredRun, b: StoredRun): number => b.startedAt.localeCompare(a.startedAt) || a.key.localeCompare(b.key);
