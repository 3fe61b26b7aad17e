import { it } from 'vitest';
import type { Scenario } from '../../src/core/scenario/schema.ts';
import { expectBreaks, type ExpectedBreak } from './expectBreaks.ts';
import type { Operator } from './operator.ts';
import { runOperator, type OperatorRun, type ShippedRoom } from './runOperator.ts';

/** A script that breaks sterility, and all that it breaks. */
export interface BreakRun {
  readonly what: string;
  /** The quiet room, if not given. */
  readonly room?: ShippedRoom | Scenario;
  readonly play: (op: Operator) => void;
  /** The complete list of breaks, in order, each with its root and its whole spread. */
  readonly breaks: readonly ExpectedBreak[];
  /** What else must be so in the end. */
  readonly after?: (done: OperatorRun) => void;
}

/** Plays each of them as a test of its own. */
export function playAll(runs: readonly BreakRun[]): void {
  for (const { what, room, play, breaks, after } of runs) {
    it(what, () => {
      const done = runOperator(play, room);
      expectBreaks(done.result, breaks);
      after?.(done);
    });
  }
}

/** A break by which one surface alone is lost. */
export const alone = (rule: string, surface: string, against: string | null, more: Partial<ExpectedBreak> = {}): ExpectedBreak => ({ rule, surface, against, spread: [`0 ${surface}`], ...more });
