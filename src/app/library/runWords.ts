import type { Severity } from '../../core/ledger/break.ts';
import type { StoredRun } from '../../storage/storedRun.ts';
import { listed } from '../parts/sentence.ts';

/** The verdict of a run in a word or two. */
export function verdictText({ verdict, finished }: Pick<StoredRun, 'verdict' | 'finished'>): string {
  if (verdict === 'met') return 'met';
  if (verdict === 'notYet') return 'not yet';
  return finished ? 'not scored' : 'none';
}

const SEVERITIES: readonly Severity[] = ['critical', 'major', 'minor'];

/** "none", "2 critical and 1 minor". */
export function breaksText({ breaks, finished }: Pick<StoredRun, 'breaks' | 'finished'>): string {
  if (!finished) return '–';
  const told = SEVERITIES.filter((severity) => breaks[severity] > 0).map((severity) => `${breaks[severity]} ${severity}`);
  return told.length === 0 ? 'none' : listed(told);
}
