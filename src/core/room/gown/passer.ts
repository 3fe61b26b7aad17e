import { secondsToSteps } from '../../base/time.ts';
import type { Scenario } from '../../scenario/schema.ts';

/** Walking pace (m/s) and how long somebody stands (s); common practice. */
const WALK_MPS = 1.2;
const STANDS_S = 2;

/** Where somebody who passes by is in that step (m), or null while nobody does. */
export function passerAt({ gown: { passer } }: Scenario, step: number): number | null {
  const { atS, fromXM, toXM } = passer;
  if (atS === 0) return null;
  const walk = secondsToSteps(Math.abs(toXM - fromXM) / WALK_MPS);
  const since = step - secondsToSteps(atS);
  const back = since - walk - secondsToSteps(STANDS_S);
  if (since < 0 || back > walk) return null;
  const share = Math.min(1, since / walk) - Math.max(0, back / walk);
  return fromXM + (toXM - fromXM) * share;
}
