import { STEPS_PER_SECOND } from '../base/time.ts';
import { indexOf } from './logIndex.ts';
import type { RunLog } from './runLog.ts';

/**
 * What one can go to: the beginning of a break, a touch of a hand or arm or the moment at which any touch spoiled something, what the
 * operator did (but for moving and turning the hands), or a tenth of a second further.
 */
export type EventKind = 'break' | 'touch' | 'command' | 'tenth';

const TENTH_STEPS = STEPS_PER_SECOND / 10;
const MOVEMENTS = ['hand.move', 'hand.turn'];

/** Step of the next event (`direction` 1) or of the one before (−1) as seen from a step, or null when there is none. */
export function nextEvent(log: RunLog, kind: EventKind, fromStep: number, direction: 1 | -1): number | null {
  if (kind === 'tenth') {
    const step = Math.max(0, Math.min(log.steps - 1, fromStep + direction * TENTH_STEPS));
    return step === fromStep ? null : step;
  }
  const steps = eventSteps(log, kind);
  if (direction === 1) return steps.find((step) => step > fromStep) ?? null;
  for (let k = steps.length - 1; k >= 0; k--) if (steps[k]! < fromStep) return steps[k]!;
  return null;
}

/** Steps of all events of a kind, rising. */
function eventSteps(log: RunLog, kind: Exclude<EventKind, 'tenth'>): readonly number[] {
  const { ledger, touches, spoiledAt } = indexOf(log);
  if (kind === 'break') return ledger.breaks.map(({ step }) => step);
  if (kind === 'touch') return [...new Set([...touches.filter(({ side }) => side !== null).map(({ fromStep }) => fromStep), ...spoiledAt.values()])].sort((p, q) => p - q);
  return log.commands.filter(({ step, commands }) => step < log.steps && commands.some(({ type }) => !MOVEMENTS.includes(type))).map(({ step }) => step);
}
