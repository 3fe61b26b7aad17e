import type { Result } from '../core/base/result.ts';
import { clock } from '../core/recording/clock.ts';
import type { RunFile } from '../core/recording/recording.ts';
import type { Verification } from '../core/recording/verifyRun.ts';
import { breakRows, type BreakRow } from './breakRows.ts';
import { scoreLines } from './scoreLines.ts';
import { verdictWords } from './verdictWords.ts';

/** One file that was looked at: the run and what verifying it came to, or why it cannot be read. */
export interface Examined {
  readonly file: string;
  readonly outcome: Result<{ readonly run: RunFile; readonly verification: Verification }, string>;
}

/**
 * 0: the result follows from the recording. 1: it does not, or that cannot be told (broken off, another simulation).
 * 2: the file cannot be read as a run.
 */
export function exitCode({ outcome }: Examined): 0 | 1 | 2 {
  if (!outcome.ok) return 2;
  return outcome.value.verification.verdict === 'verified' ? 0 : 1;
}

/** A line on the file, its score and, where its run has breaks, a table of them. */
export function reportText(examined: Examined): string {
  const { file, outcome } = examined;
  if (!outcome.ok) return printable(`${file}: UNREADABLE. ${outcome.error}`);
  const { run, verification } = outcome.value;
  const { word, clause } = verdictWords(verification);
  const line = `${file}: ${word}. “${run.header.scenario.title}”, ${clock(run.steps)}, ${breakCount(run)}: ${clause}.`;
  return [line, ...scoreLines(run), ...table(run.result ? breakRows(run.result) : [])].map(printable).join('\n');
}

/** The same for programs. */
export function reportJson(examined: Examined): object {
  const { file, outcome } = examined;
  if (!outcome.ok) return { file, exitCode: 2, verdict: 'unreadable', words: outcome.error };
  const { run, verification } = outcome.value;
  const { runId, startedAt, engine, simulation, scenarioHash, scenario, seed, resumedAt } = run.header;
  const header = { runId, startedAt, engine, simulation, scenario: scenario.id, scenarioHash, seed, resumedAt };
  return { file, exitCode: exitCode(examined), ...verification, words: verdictWords(verification).clause, ...header, steps: run.steps, breaks: run.result ? breakRows(run.result) : null, score: run.score };
}

function breakCount(run: RunFile): string {
  if (!run.result) return 'no result';
  const { length } = run.result.breaks;
  return length === 0 ? 'no breaks' : length === 1 ? '1 break' : `${length} breaks`;
}

const COLUMNS: readonly (readonly [keyof BreakRow, string])[] = [
  ['number', 'no'],
  ['at', 'at'],
  ['severity', 'severity'],
  ['reach', 'reach'],
  ['words', 'what happened'],
  ['noticed', 'noticed'],
  ['remedied', 'remedied'],
];

function table(rows: readonly BreakRow[]): string[] {
  if (rows.length === 0) return [];
  const cells = [COLUMNS.map(([, title]) => title), ...rows.map((row) => COLUMNS.map(([key]) => String(row[key])))];
  const widths = COLUMNS.map((_, column) => Math.max(...cells.map((row) => row[column]!.length)));
  return cells.map((row) => `  ${row.map((cell, column) => cell.padEnd(widths[column]!)).join('  ')}`.trimEnd());
}

/** A file may hold any text; none of it may steer the terminal. */
const printable = (text: string): string => text.replace(/\p{Cc}/gu, '\u{fffd}');
