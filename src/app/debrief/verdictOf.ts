import { missingForScore, scoreRun } from '../../core/scoring/scoreRun.ts';
import type { Verdict } from '../../core/scoring/score.ts';
import type { RunResult } from '../../core/run/result.ts';
import type { Scenario } from '../../core/scenario/schema.ts';

/** Whether a result meets the rubric of its scenario, and the first sentence that says why not. */
export interface VerdictWords {
  readonly verdict: Verdict;
  readonly why: string | null;
}

/** Null when the result was written before runs measured all that the rubric weighs. */
export function verdictOf(result: RunResult, scenario: Scenario): VerdictWords | null {
  if (missingForScore(result, scenario).length > 0) return null;
  const { verdict, reasons } = scoreRun(result, scenario);
  return { verdict, why: reasons.find(({ holds }) => !holds)?.words ?? null };
}
