import { missingForScore, scoreRun } from '../../core/scoring/scoreRun.ts';
import type { Verdict } from '../../core/scoring/score.ts';
import type { RunResult } from '../../core/run/result.ts';
import type { Scenario } from '../../core/scenario/schema.ts';

/** Whether a result meets the scenario's rubric; null when it was written before runs measured all that the rubric weighs. */
export const verdictOf = (result: RunResult, scenario: Scenario): Verdict | null => (missingForScore(result, scenario).length > 0 ? null : scoreRun(result, scenario).verdict);
