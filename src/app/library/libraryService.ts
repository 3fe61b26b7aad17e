import type { StoredRun } from '../../storage/storedRun.ts';
import type { OnShare } from '../services.ts';

/** All runs of this browser, the newest first. */
export interface Library {
  readonly runs: readonly StoredRun[];
  /** Deleted, but can still be taken back. */
  readonly deleted: readonly StoredRun[];
  /** Sentences about what of the list is damaged or cannot be kept. */
  readonly notes: readonly string[];
}

/** A file or run with one sentence about why nothing came of it. */
export interface Refusal {
  readonly name: string;
  readonly words: string;
}

/** What came of an import, counted in runs. */
export interface ImportOutcome {
  readonly added: number;
  /** Were here already. */
  readonly same: number;
  /** Had been deleted here, or had lost their recording. */
  readonly takenBack: number;
  /** Other recordings under an id that was here already; both are kept. */
  readonly beside: number;
  readonly refused: readonly Refusal[];
}

/** What came of an export. */
export interface ExportOutcome {
  readonly saved: number;
  readonly failed: readonly Refusal[];
}

/** Where the runs are kept, as far as the browser says. */
export interface StorageState {
  /** The browser has promised not to clear the runs by itself; null when it makes no such promises. */
  readonly persisted: boolean | null;
  readonly usedBytes: number | null;
  readonly quotaBytes: number | null;
}

/** Everything that the page of runs needs of the store. Faults come as one sentence, or null. */
export interface LibraryService {
  list(): Promise<Library>;
  setDeleted(keys: readonly string[], deleted: boolean): Promise<string | null>;
  deleteForGood(keys: readonly string[]): Promise<string | null>;
  /** Saves runs as one archive. */
  exportRuns(runs: readonly StoredRun[], onShare: OnShare): Promise<ExportOutcome>;
  /** Takes in archives and single run files. */
  importFiles(files: readonly File[], onShare: OnShare): Promise<ImportOutcome>;
  storage(): Promise<StorageState>;
  /** Asks the browser not to clear the runs by itself. */
  askToKeep(): Promise<StorageState>;
}
