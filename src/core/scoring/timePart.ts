import { stepsToSeconds } from '../base/time.ts';
import type { RunResult } from '../run/result.ts';
import type { Scenario } from '../scenario/schema.ts';
import { remedyRefs } from './asepsis.ts';
import { type Earned, weighed } from './procedurePart.ts';
import { clamped } from './round.ts';
import type { ScorePart } from './score.ts';
import { minutesText } from './words.ts';

/** Share of the time foreseen by which a run may be over before it earns nothing for time; own proposal. */
const GRACE = 0.5;

/** Working time and its limit in seconds. What was spent on remedies is not working time: putting right never costs more than going on. */
export interface Timing {
  readonly workS: number;
  readonly limitS: number;
  readonly over: boolean;
}

export function timingOf({ steps, remedies }: RunResult, { minutes, rubric }: Scenario): Timing {
  const spent = remedies.reduce((sum, { startStep, endStep }) => sum + endStep - startStep, 0);
  const workS = stepsToSeconds(Math.max(0, steps - spent));
  const limitS = (rubric.time.minutes === 0 ? minutes : rubric.time.minutes) * 60;
  return { workS, limitS, over: workS > limitS };
}

export function timePart(result: RunResult, scenario: Scenario, worked: number): ScorePart {
  const { workS, limitS } = timingOf(result, scenario);
  const share = clamped(1 - (workS / limitS - 1) / GRACE);
  const line = { id: 'work', words: `Working time, of ${minutesText(limitS)} foreseen`, value: Math.round(workS), unit: 's', events: remedyRefs(result) };
  const earned: Earned[] = [{ line, weight: 1, share }];
  return weighed('time', 'Time', scenario.rubric.points.time, earned, worked);
}
