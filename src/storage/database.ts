import { openDB, type DBSchema, type IDBPDatabase, type IDBPTransaction } from 'idb';
import type { PackedCommands } from '../core/recording/packedCommands.ts';
import type { RunHeader } from '../core/recording/recording.ts';
import type { RunSnapshot } from '../core/run/contract.ts';
import type { RunResult } from '../core/run/result.ts';

const DATABASE = 'sterile-field-runs';
const DATABASE_VERSION = 1;
/** Version of the single records; each carries it. */
export const RECORD_VERSION = 1;

/** What is known of a run without reading its parts. */
export interface RunRecord {
  readonly version: number;
  readonly runId: string;
  readonly header: RunHeader;
  /** Number of parts, and of steps in them. */
  readonly parts: number;
  readonly steps: number;
  /** Null while the run is under way or broken off. */
  readonly result: RunResult | null;
}

/** One stretch of a run. */
export interface PartRecord {
  readonly version: number;
  readonly runId: string;
  /** 0, 1, 2 … */
  readonly part: number;
  readonly fromStep: number;
  readonly toStep: number;
  readonly commands: PackedCommands;
  readonly hashes: readonly string[];
}

/** The newest snapshot of a run. */
export interface SnapshotRecord {
  readonly version: number;
  readonly runId: string;
  readonly snapshot: RunSnapshot;
}

interface RunTables extends DBSchema {
  runs: { key: string; value: RunRecord };
  parts: { key: [string, number]; value: PartRecord };
  snapshots: { key: string; value: SnapshotRecord };
}

export type RunDatabase = IDBPDatabase<RunTables>;

type Writing = IDBPTransaction<RunTables, ('runs' | 'parts' | 'snapshots')[], 'readwrite'>;

/** Does `work` whole or not at all; rejects when it did not. */
export async function writeWhole(database: RunDatabase, work: (transaction: Writing) => Promise<unknown>): Promise<void> {
  const transaction = database.transaction(['runs', 'parts', 'snapshots'], 'readwrite');
  try {
    await Promise.all([work(transaction), transaction.done]);
  } catch (error) {
    abort(transaction);
    throw error;
  }
}

/** A request that could not even be made leaves its transaction alive, with what was asked before. */
function abort(transaction: Writing): void {
  try {
    transaction.abort();
  } catch {
    // It had ended by itself.
  }
}

/** Keys of all parts of a run. */
export const partsOf = (runId: string): IDBKeyRange => IDBKeyRange.bound([runId, 0], [runId, Number.MAX_SAFE_INTEGER]);

/** Opens the database, or rejects as IndexedDB does. A page with a newer version may take it over at any time. */
export const openDatabase = (): Promise<RunDatabase> =>
  openDB<RunTables>(DATABASE, DATABASE_VERSION, {
    upgrade(database) {
      database.createObjectStore('runs', { keyPath: 'runId' });
      database.createObjectStore('parts', { keyPath: ['runId', 'part'] });
      database.createObjectStore('snapshots', { keyPath: 'runId' });
    },
    blocking(_current, _blocked, event) {
      (event.target as IDBDatabase).close();
    },
  });
