import { policyFlags, type PolicyFlag } from '../../core/ledger/rules/policyFlags.ts';
import type { RunFile } from '../../core/recording/recording.ts';
import type { RunResult } from '../../core/run/result.ts';
import type { Scenario } from '../../core/scenario/schema.ts';
import { bundleOfRun, type BundleOfRun } from '../../core/scoring/bundle/bundleOfRun.ts';
import type { NoticingOfRun } from '../../core/scoring/noticing/noticing.ts';
import { noticingOfRun } from '../../core/scoring/noticing/noticingOfRun.ts';
import { practiseNext, type Exercise } from '../../core/scoring/practise.ts';
import type { Score } from '../../core/scoring/score.ts';

/** Everything that a report says of a run, on screen and on paper. */
export interface ReportView {
  readonly file: RunFile;
  readonly result: RunResult;
  /** Null for a run that was broken off, or is from before there were scores. */
  readonly score: Score | null;
  readonly bundle: BundleOfRun;
  readonly noticing: NoticingOfRun;
  readonly flags: readonly PolicyFlag[];
  readonly exercises: readonly Exercise[];
}

/** What is to be said of a run with this result; `offers` are the scenarios that can be practised here. */
export function reportView(file: RunFile, result: RunResult, offers: readonly Scenario[]): ReportView {
  const { scenario, seed } = file.header;
  return {
    file,
    result,
    score: file.score,
    bundle: bundleOfRun(result, scenario),
    noticing: noticingOfRun(result, scenario),
    flags: policyFlags(scenario),
    exercises: file.score === null ? [] : practiseNext(file.score, { scenarioId: scenario.id, station: scenario.station, seed }, offers),
  };
}
