import { packCommands } from '../core/recording/packedCommands.ts';
import type { RunFile, RunHeader } from '../core/recording/recording.ts';
import type { RunIncrement } from '../core/recording/Recorder.ts';
import type { RunSnapshot } from '../core/run/contract.ts';
import { writeRunFile } from '../core/recording/writeRunFile.ts';
import { latestVersion, MIGRATIONS } from '../core/recording/migrations.ts';
import { contentHashOf } from './contentHash.ts';
import { partsOf, RECORD_VERSION, writeWhole, type PartRecord, type RunDatabase } from './database.ts';
import { zipText } from './gzip.ts';
import type { RunLocks } from './runLocks.ts';
import { NO_HASH, summaryOf } from './runSummary.ts';
import { INTERRUPTED, storeFault } from './storeFault.ts';

class Interrupted extends Error {}

/**
 * Writes one run as it is played. Every call is one transaction, so that a page killed at any moment leaves whole parts only. What
 * could not be written is kept here and goes with the next call. Nothing here rejects: `notice` says what is wrong, or null.
 */
export class RunJournal {
  /** One sentence while the run is not being kept. */
  notice: string | null;
  private readonly database: RunDatabase | null;
  private readonly header: RunHeader;
  private readonly locks: RunLocks;
  private waiting: RunIncrement[] = [];
  private snapshot: RunSnapshot | null = null;
  private writing: Promise<unknown> = Promise.resolve();

  /** Use `RunStore.begin`; without a database it only carries the store's notice. */
  constructor(database: RunDatabase | null, header: RunHeader, locks: RunLocks, notice: string | null) {
    this.database = database;
    this.header = header;
    this.locks = locks;
    this.notice = notice;
  }

  /** Adds what was played since the last call, at least twice a second; every few seconds with a snapshot of the run as it now is. */
  append(increment: RunIncrement, snapshot: RunSnapshot | null = null): Promise<string | null> {
    if (this.database) this.waiting.push(increment);
    this.snapshot = snapshot ?? this.snapshot;
    return this.inTurn((database) => this.flush(database));
  }

  /** Writes the whole finished run, as a file, in place of its parts. Frees the run. */
  async finish(run: RunFile): Promise<string | null> {
    const notice = await this.inTurn((database) => this.replace(database, run));
    this.locks.release(this.header.runId);
    return notice;
  }

  /** Leaves the run as it stands; from now on it counts as broken off. */
  async close(): Promise<void> {
    await this.writing;
    this.locks.release(this.header.runId);
  }

  /** Does one piece of writing after those before it. */
  private inTurn(work: (database: RunDatabase) => Promise<void>): Promise<string | null> {
    const done = this.attempt(this.writing, work);
    this.writing = done;
    return done;
  }

  private async attempt(before: Promise<unknown>, work: (database: RunDatabase) => Promise<void>): Promise<string | null> {
    await before;
    if (!this.database) return this.notice;
    try {
      await work(this.database);
      this.notice = null;
    } catch (error) {
      this.notice = error instanceof Interrupted ? INTERRUPTED : storeFault(error);
    }
    return this.notice;
  }

  private async flush(database: RunDatabase): Promise<void> {
    const [increments, snapshot] = [[...this.waiting], this.snapshot];
    if (increments.length === 0) return;
    const { runId } = this.header;
    const stretch = joined(increments);
    await writeWhole(database, async (transaction) => {
      const before = await transaction.objectStore('runs').get(runId);
      if ((before?.steps ?? 0) !== stretch.fromStep) throw new Interrupted();
      const part = before?.parts ?? 0;
      await transaction.objectStore('parts').put(this.partRecord(part, stretch));
      const run = { version: RECORD_VERSION, runId, shape: latestVersion(MIGRATIONS), header: this.header, parts: part + 1, steps: stretch.toStep, result: null };
      await transaction.objectStore('runs').put(run);
      await transaction.objectStore('summaries').put(summaryOf(runId, run, NO_HASH)!);
      if (snapshot) await transaction.objectStore('snapshots').put({ version: RECORD_VERSION, runId, snapshot });
    });
    this.waiting = this.waiting.slice(increments.length);
    if (this.snapshot === snapshot) this.snapshot = null;
  }

  private async replace(database: RunDatabase, run: RunFile): Promise<void> {
    const { runId } = this.header;
    const zipped = await zipText(writeRunFile(run));
    const summary = summaryOf(runId, run, contentHashOf(run))!;
    await writeWhole(database, async (transaction) => {
      await transaction.objectStore('parts').delete(partsOf(runId));
      await transaction.objectStore('runs').delete(runId);
      await transaction.objectStore('snapshots').delete(runId);
      await transaction.objectStore('bodies').put({ version: RECORD_VERSION, key: runId, zipped });
      await transaction.objectStore('summaries').put(summary);
    });
    this.waiting = [];
  }

  private partRecord(part: number, stretch: RunIncrement): PartRecord {
    const { fromStep, toStep, commands, hashes } = stretch;
    return { version: RECORD_VERSION, runId: this.header.runId, part, fromStep, toStep, commands: packCommands(commands), hashes };
  }
}

/** Increments in a row as one. */
const joined = (increments: readonly RunIncrement[]): RunIncrement => ({
  fromStep: increments[0]!.fromStep,
  toStep: increments.at(-1)!.toStep,
  commands: increments.flatMap(({ commands }) => commands),
  hashes: increments.flatMap(({ hashes }) => hashes),
});
