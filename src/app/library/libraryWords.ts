import type { StoredRun } from '../../storage/storedRun.ts';
import { counted } from '../parts/sentence.ts';
import type { ExportOutcome, ImportOutcome, StorageState } from './libraryService.ts';

/** What came of an import, in sentences. */
export function importWords({ added, same, takenBack, beside, refused }: ImportOutcome): string {
  const told = [
    added > 0 || same + takenBack + beside === 0 ? `${counted(added, 'run')} imported.` : '',
    same > 0 ? `${counted(same, 'run was', 'runs were')} here already and skipped.` : '',
    takenBack > 0 ? `${counted(takenBack, 'run')} that had been deleted or damaged here ${takenBack === 1 ? 'is' : 'are'} back.` : '',
    beside > 0 ? `${counted(beside, 'run has', 'runs have')} the id of a run that was here, but another content: both are kept and marked.` : '',
    refused.length > 0 ? `${counted(refused.length, 'file was', 'files were')} refused.` : '',
  ];
  return told.filter((words) => words !== '').join(' ');
}

/** What came of an export. */
export function exportWords({ saved, failed }: ExportOutcome): string {
  const told = saved > 0 ? `${counted(saved, 'run')} exported as one archive.` : 'Nothing was exported.';
  return failed.length > 0 ? `${told} ${counted(failed.length, 'run')} could not be read.` : told;
}

/** Whether the browser keeps the runs, in a sentence. */
export function keepingWords({ persisted }: StorageState): string {
  if (persisted) return 'The browser has promised not to clear these runs by itself.';
  return 'The browser may clear these runs by itself when it needs room, or when this page has not been opened for a while.';
}

/** How much room there is; null when the browser does not say. */
export function roomWords({ usedBytes, quotaBytes }: StorageState): string | null {
  if (usedBytes === null || quotaBytes === null) return null;
  return `${bytesText(usedBytes)} used of about ${bytesText(quotaBytes)} that it allows.`;
}

/** Runs of which there is no copy outside this browser. */
export function exportReminder(runs: readonly StoredRun[]): string | null {
  const never = runs.filter(({ exportedAt, fault }) => exportedAt === null && fault === null).length;
  if (never === 0) return runs.length === 0 ? null : 'Of every run there is a copy outside this browser: it was exported, or came from a file.';
  return `${counted(never, 'run has', 'runs have')} not been exported yet. An archive on another disk is the only sure copy.`;
}

/** "820 kB", "1.4 MB", "62 GB". */
export function bytesText(bytes: number): string {
  const [size, unit] = bytes < 1e6 ? [bytes / 1e3, 'kB'] : bytes < 1e9 ? [bytes / 1e6, 'MB'] : [bytes / 1e9, 'GB'];
  return `${size < 10 ? Math.round(size * 10) / 10 : Math.round(size)} ${unit}`;
}
