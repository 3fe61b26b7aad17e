import type { Break } from '../ledger/break.ts';
import type { Reach } from '../ledger/surface.ts';
import { remedyBy } from './alternatives.ts';
import { chainTo } from './causeGraph.ts';
import { indexOf, surfaceOf } from './logIndex.ts';
import { remedyFor, type RemedyChoice } from './remedyFor.ts';
import type { RunLog } from './runLog.ts';
import { reachAfter } from './whatIf.ts';
import type { Alternative } from './whatIfTypes.ts';

/** The remedy that would have kept device and site clean; told for the last moment at which it still does. */
export interface Suggestion extends Alternative {
  /** From this step on it would have helped, and until `byStep`. */
  readonly fromStep: number;
  readonly byStep: number;
}

/** Moments that are tried for one remedy. */
const MOMENTS_MAX = 8;

const REACHED: readonly Reach[] = ['device', 'site'];

/**
 * For a run in which a break got to the device or the site: the earliest single remedy that would have kept both clean, or null. What
 * was spoiled on the way there is gone through from the root on; for each thing, the remedy is tried from when it was spoiled.
 */
export function suggestion(log: RunLog): Suggestion | null {
  const reached = indexOf(log).ledger.breaks.filter(({ reach }) => REACHED.includes(reach));
  for (const known of reached) {
    for (const { choice, moments } of waysToStop(log, known)) {
      const keepsClean = (step: number): boolean => !REACHED.includes(reachAfter(log, { kind: 'remedy', remedy: choice.remedy, things: choice.things, step }));
      const first = moments.findIndex(keepsClean);
      if (first < 0) continue;
      const byStep = moments[lastThat(moments, first, keepsClean)]!;
      return { ...remedyBy(log, choice, byStep), fromStep: moments[first]!, byStep };
    }
  }
  return null;
}

/** Place of the last moment that keeps clean, from one that does, if later ones do so less and less. */
function lastThat(moments: readonly number[], from: number, keepsClean: (step: number) => boolean): number {
  let low = from;
  let high = moments.length;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (keepsClean(moments[middle]!)) low = middle;
    else high = middle;
  }
  return low;
}

interface Way {
  readonly choice: RemedyChoice;
  /** Steps at which it could have been done, rising. */
  readonly moments: readonly number[];
}

/** Remedies along the chain from the root to the first thing of the device or the site that the break got to. */
function waysToStop(log: RunLog, known: Break): Way[] {
  const { touchOf } = indexOf(log);
  const goal = known.spread.find(({ surface }) => REACHED.includes(surfaceOf(log, surface).reach));
  if (!goal) return [];
  const seen = new Set<string>();
  return chainTo(log, goal.surface).flatMap(({ surface, step }): Way[] => {
    const choice = step < goal.step ? remedyFor(log, surfaceOf(log, surface), step) : null;
    if (!choice || seen.has(choice.things.join(' '))) return [];
    seen.add(choice.things.join(' '));
    const spread = known.spread.find((one) => one.surface === surface)!;
    const over = spread.touch === null ? step : touchOf.get(spread.touch)!.toStep;
    const before = known.spread.filter((one) => one.step > step && one.step <= goal.step).map((one) => one.step - 1);
    const moments = [...new Set([step, over, ...before])].filter((moment) => moment >= step && moment < goal.step).sort((p, q) => p - q);
    return [{ choice, moments: thinned(moments) }];
  });
}

/** The first and the last moments, and some between. */
function thinned(moments: readonly number[]): number[] {
  if (moments.length <= MOMENTS_MAX) return [...moments];
  return Array.from({ length: MOMENTS_MAX }, (_, k) => moments[Math.round((k * (moments.length - 1)) / (MOMENTS_MAX - 1))]!);
}
