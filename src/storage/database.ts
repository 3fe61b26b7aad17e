import { openDB, type DBSchema, type IDBPDatabase, type IDBPTransaction } from 'idb';
import type { PackedCommands } from '../core/recording/packedCommands.ts';
import type { RunHeader } from '../core/recording/recording.ts';
import type { RunSnapshot } from '../core/run/contract.ts';
import type { RunResult } from '../core/run/result.ts';
import type { RunSummary } from './runSummary.ts';

const DATABASE = 'sterile-field-runs';
/** 2: finished runs are kept as files in `bodies`, and every run has its line in `summaries`, which is made when it is missing. */
const DATABASE_VERSION = 2;
/** Version of the single records of a run in parts and of bodies; each carries it. */
export const RECORD_VERSION = 1;

/** What is known of a run without reading its parts. */
export interface RunRecord {
  readonly version: number;
  readonly runId: string;
  /** Version of the run file whose shape header and commands have; 1 where it does not say. */
  readonly shape?: number;
  readonly header: RunHeader;
  /** Number of parts, and of steps in them. */
  readonly parts: number;
  readonly steps: number;
  /** Null while the run is under way or broken off. Version 1 of the database kept finished runs here as well. */
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

/** A run as a zipped run file, byte for byte as it was saved or imported. */
export interface BodyRecord {
  readonly version: number;
  readonly key: string;
  readonly zipped: Uint8Array;
}

interface RunTables extends DBSchema {
  runs: { key: string; value: RunRecord };
  parts: { key: [string, number]; value: PartRecord };
  snapshots: { key: string; value: SnapshotRecord };
  bodies: { key: string; value: BodyRecord };
  summaries: { key: string; value: RunSummary; indexes: { runId: string } };
}

export type RunDatabase = IDBPDatabase<RunTables>;

const TABLES = ['runs', 'parts', 'snapshots', 'bodies', 'summaries'] as const;

type Writing = IDBPTransaction<RunTables, typeof TABLES, 'readwrite'>;

/** Does `work` whole or not at all; rejects when it did not. */
export async function writeWhole<Outcome>(database: RunDatabase, work: (transaction: Writing) => Promise<Outcome>): Promise<Outcome> {
  const transaction = database.transaction(TABLES, 'readwrite');
  try {
    const [outcome] = await Promise.all([work(transaction), transaction.done]);
    return outcome;
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
    upgrade(database, before) {
      if (before < 1) {
        database.createObjectStore('runs', { keyPath: 'runId' });
        database.createObjectStore('parts', { keyPath: ['runId', 'part'] });
        database.createObjectStore('snapshots', { keyPath: 'runId' });
      }
      database.createObjectStore('bodies', { keyPath: 'key' });
      database.createObjectStore('summaries', { keyPath: 'key' }).createIndex('runId', 'runId');
    },
    blocking(_current, _blocked, event) {
      (event.target as IDBDatabase).close();
    },
  });
