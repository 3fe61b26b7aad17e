import { secondsToSteps } from '../../base/time.ts';
import type { Break } from '../../ledger/break.ts';
import type { RunResult } from '../../run/result.ts';
import type { Scenario } from '../../scenario/schema.ts';
import type { LookAlikeTrial, TrialOutcome } from './noticing.ts';

/** A report that follows another within this time says the same thing twice, in steps (2 s, as for one mishap of the ledger). */
const SAME_REPORT_STEPS = 240;

/** Step until which a break was there unsaid: it was reported, answered by a remedy, or the run ended. */
export const unsaidUntil = ({ noticedStep, remediedStep, remedies }: Break, end: number): number => noticedStep ?? (remedies.length > 0 ? (remediedStep ?? end) : end);

/** Steps of reports that answered no break, without those that only repeat the one before. */
export const falseReports = ({ notices }: RunResult): readonly number[] =>
  notices.filter(({ step, breaks }, k) => breaks.length === 0 && (k === 0 || step - notices[k - 1]!.step > SAME_REPORT_STEPS)).map(({ step }) => step);

/** Planted look-alikes that came in the run, in order, each with what became of it. */
export function lookAlikeTrials(result: RunResult, scenario: Scenario): readonly LookAlikeTrial[] {
  const windowSteps = secondsToSteps(scenario.noticing.windowS);
  return scenario.cues
    .filter(({ lookAlike }) => lookAlike)
    .flatMap(({ atS, kind }) => result.cues.find((cue) => cue.kind === kind && cue.step === secondsToSteps(atS)) ?? [])
    .sort((a, b) => a.step - b.step)
    .map(({ step, words }) => ({ step, untilStep: step + windowSteps, words, outcome: outcomeOf(result, step, step + windowSteps) }));
}

function outcomeOf(result: RunResult, from: number, until: number): TrialOutcome {
  const { breaks, steps } = result;
  if (breaks.some((known) => known.step <= until && unsaidUntil(known, steps) >= from)) return 'droppedForBreak';
  if (falseReports(result).some((step) => step >= from && step <= until)) return 'falseAlarm';
  return steps < until ? 'droppedForEnd' : 'leftAlone';
}
