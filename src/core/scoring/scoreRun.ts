import { assert } from '../base/assert.ts';
import type { RunResult } from '../run/result.ts';
import type { Scenario } from '../scenario/schema.ts';
import { asepsisPart, workedShare } from './asepsis.ts';
import { handlingPart } from './handlingPart.ts';
import { procedurePart, taskRefs } from './procedurePart.ts';
import { tenthsDown } from './round.ts';
import type { Score, ScoreLine, ScorePart } from './score.ts';
import { timePart } from './timePart.ts';
import { reasonsOf } from './verdict.ts';

/** Version of the rules in this folder. Raised with every change after which the same result may come to another score. */
export const RUBRIC_VERSION = 1;

/** What a result lacks for a score under the scenario's rubric; empty when it has everything. */
export function missingForScore({ handling }: RunResult, { rubric }: Scenario): readonly string[] {
  if (handling.measured !== null || rubric.points.handling === 0) return [];
  const needed = [
    { weight: rubric.handling.clearance, words: 'the clearance that the hands kept' },
    { weight: rubric.handling.smoothness, words: 'how smoothly the hands moved' },
    { weight: rubric.handling.drops, words: 'when things were dropped' },
  ];
  return needed.flatMap(({ weight, words }) => (weight > 0 ? [words] : []));
}

/** The score of a result, or null when it lacks something that the rubric weighs. */
export const scoreOf = (result: RunResult, scenario: Scenario): Score | null => (missingForScore(result, scenario).length > 0 ? null : scoreRun(result, scenario));

/** Scores a run: a pure function of its result and its scenario. The result must lack nothing (`missingForScore`). */
export function scoreRun(result: RunResult, scenario: Scenario): Score {
  assert(missingForScore(result, scenario).length === 0, 'the result has all that its rubric weighs');
  const worked = workedShare(result, scenario);
  const inPart = (part: ScorePart): ScorePart => (worked < 1 ? { ...part, lines: [littleWorkLine(result, worked), ...part.lines] } : part);
  const parts = [
    inPart(asepsisPart(result, scenario, worked)),
    procedurePart(result, scenario),
    inPart(handlingPart(result, scenario, worked)),
    inPart(timePart(result, scenario, worked)),
  ];
  const of = parts.reduce((sum, part) => sum + part.of, 0);
  const points = parts.reduce((sum, part) => sum + part.points, 0);
  const total = of > 0 ? tenthsDown((100 * points) / of) : 0;
  const reasons = reasonsOf(result, scenario, total);
  return { rubricVersion: RUBRIC_VERSION, verdict: reasons.every(({ holds }) => holds) ? 'met' : 'notYet', reasons, total, standard: scenario.rubric.standard, parts };
}

/** Why a part counts for less than it shows. */
const littleWorkLine = ({ progress }: RunResult, worked: number): ScoreLine => ({
  id: 'worked', words: 'Counted in part: too little of the work was done to judge by', value: Math.round(worked * 100), unit: '%', points: null, of: null, events: taskRefs(progress.tasks),
});
