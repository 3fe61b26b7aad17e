import type { StoredRun } from '../../storage/storedRun.ts';
import { dateText } from '../parts/dateText.ts';

/** Which runs are shown; an empty text lets everything pass. */
export interface RunFilter {
  /** Id of a scenario. */
  readonly scenario: string;
  readonly verdict: '' | 'met' | 'notYet' | 'none';
  /** Words that must all occur in title, id or date. */
  readonly text: string;
  /** First and last day, YYYY-MM-DD in the reader's own time zone. */
  readonly from: string;
  readonly to: string;
}

export const NO_FILTER: RunFilter = { scenario: '', verdict: '', text: '', from: '', to: '' };

/** The runs that pass, in the same order. */
export const filterRuns = (runs: readonly StoredRun[], filter: RunFilter): StoredRun[] => runs.filter((run) => passes(run, filter));

function passes(run: StoredRun, { scenario, verdict, text, from, to }: RunFilter): boolean {
  if (scenario !== '' && run.scenarioId !== scenario) return false;
  if (verdict !== '' && (run.verdict ?? 'none') !== verdict) return false;
  const day = localDay(run.startedAt);
  if ((from !== '' && day < from) || (to !== '' && day > to)) return false;
  if (text === '') return true;
  const told = `${run.title} ${run.scenarioId} ${run.runId} ${dateText(run.startedAt)} ${day}`.toLowerCase();
  return text.toLowerCase().split(/\s+/).every((word) => told.includes(word));
}

/** Day of a moment where the reader is, YYYY-MM-DD. */
function localDay(iso: string): string {
  const moment = new Date(iso);
  if (Number.isNaN(moment.getTime())) return '';
  return [moment.getFullYear(), moment.getMonth() + 1, moment.getDate()].map((part) => String(part).padStart(2, '0')).join('-');
}

/** Scenarios of some runs, each once, by title. */
export function scenariosOf(runs: readonly StoredRun[]): readonly { readonly id: string; readonly title: string }[] {
  const titles = new Map(runs.filter(({ scenarioId }) => scenarioId !== '').map(({ scenarioId, title }) => [scenarioId, title]));
  return [...titles].map(([id, title]) => ({ id, title })).sort((a, b) => a.title.localeCompare(b.title));
}
