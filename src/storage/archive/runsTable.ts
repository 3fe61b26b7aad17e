import type { RunSummary } from '../runSummary.ts';
import { csvText, type Cell } from './csv.ts';

/** Columns of runs.csv, in order, each with what it holds of a run and the name of its file in the archive. */
const COLUMNS: readonly (readonly [string, (run: RunSummary, file: string) => Cell])[] = [
  ['run_id', ({ runId }) => runId],
  ['scenario', ({ scenarioId }) => scenarioId],
  ['scenario_title', ({ title }) => title],
  ['started_at', ({ startedAt }) => startedAt],
  ['seconds', ({ seconds }) => Math.round(seconds * 10) / 10],
  ['finished', ({ finished }) => (finished ? 'yes' : 'no')],
  ['simulation_version', ({ simulation }) => simulation],
  ['verdict', ({ verdict }) => (verdict === null ? null : verdict === 'met' ? 'met' : 'not yet')],
  ['score', ({ total }) => total],
  ['breaks_critical', ({ breaks, finished }) => (finished ? breaks.critical : null)],
  ['breaks_major', ({ breaks, finished }) => (finished ? breaks.major : null)],
  ['breaks_minor', ({ breaks, finished }) => (finished ? breaks.minor : null)],
  ['unremedied_critical', ({ unremediedCriticals, finished }) => (finished ? unremediedCriticals : null)],
  ['content_hash', ({ contentHash }) => contentHash],
  ['file', (_run, file) => file],
];

/** Table of the runs in an archive: one row each, after a row of names. Cells of what a run does not have are empty. */
export const runsTable = (runs: readonly { readonly summary: RunSummary; readonly name: string }[]): string =>
  csvText([COLUMNS.map(([name]) => name), ...runs.map(({ summary, name }) => COLUMNS.map(([, cell]) => cell(summary, name)))]);
