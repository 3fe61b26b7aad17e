import type { MakeRun } from '../core/recording/recording.ts';
import { verifyRun, type Progress } from '../core/recording/verifyRun.ts';
import { readRunPath } from './readRunPath.ts';
import { exitCode, reportJson, reportText, type Examined } from './report.ts';

export const USAGE = `Usage: npm run replay -- FILE… [--json]

Plays recorded runs (.json or .json.gz) again, tells whether their results and scores follow from them, and prints
verdict, points and breaks.
  --json   print an array for programs instead of text

Ends with 0 when everything follows, 1 when something does not or cannot be told (a run that was broken off or
recorded under another simulation or scoring), 2 when a file cannot be read; with several files, the worst of these.`;

/** Where the command writes, one line (or block of lines) at a time. */
export interface Output {
  out(text: string): void;
  fault(text: string): void;
  /** Told while a run is played, if wanted. */
  readonly progress?: Progress;
}

/** Examines the files named in `words` (the command line after the program) and gives the exit code. */
export function replayCommand(words: readonly string[], makeRun: MakeRun, output: Output): 0 | 1 | 2 {
  const files = words.filter((word) => !word.startsWith('--'));
  const options = words.filter((word) => word.startsWith('--'));
  if (options.includes('--help')) return output.out(USAGE), 0;
  if (files.length === 0 || options.some((option) => option !== '--json')) return output.fault(USAGE), 2;
  const json: object[] = [];
  let worst: 0 | 1 | 2 = 0;
  for (const file of files) {
    const examined = examine(file, makeRun, output.progress);
    if (options.length > 0) json.push(reportJson(examined));
    else output.out(reportText(examined));
    worst = Math.max(worst, exitCode(examined)) as 0 | 1 | 2;
  }
  if (options.length > 0) output.out(JSON.stringify(json, null, 2));
  return worst;
}

function examine(file: string, makeRun: MakeRun, progress?: Progress): Examined {
  const read = readRunPath(file);
  return { file, outcome: read.ok ? { ok: true, value: { run: read.value, verification: verifyRun(read.value, makeRun, progress) } } : read };
}
