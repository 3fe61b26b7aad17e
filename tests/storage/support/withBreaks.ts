import type { Break, Severity } from '../../../src/core/ledger/break.ts';
import type { RunFile } from '../../../src/core/recording/recording.ts';

/** The run with breaks of these severities in its result; those at `remedied` (by place) were remedied. */
export function withBreaks(run: RunFile, severities: readonly Severity[], remedied: readonly number[] = []): RunFile {
  const breaks = severities.map((severity, k): Break => ({
    number: k + 1,
    rule: 'cord-rail',
    step: 10 * k,
    x: 0,
    y: 1,
    surface: 'glove.left#1:fingers',
    against: null,
    severity,
    reach: 'none',
    spread: [],
    noticedStep: null,
    remediedStep: remedied.includes(k) ? 100 : null,
    remedies: [],
  }));
  return { ...run, result: { ...run.result!, breaks } };
}
