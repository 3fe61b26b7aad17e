import type { Fact } from '../ledger/fact.ts';
import type { StepCommands } from '../recording/recording.ts';
import type { RunResult } from '../run/result.ts';
import type { Scenario } from '../scenario/schema.ts';

/**
 * What a debrief reads: a run, or as much of it as has been played again. Never changed; a longer one takes its place. Everything
 * in this folder but the trace is a pure function of it. Steps are those of facts: "at step k" means once step k is done.
 */
export interface RunLog {
  readonly scenario: Scenario;
  /** The whole touch log in order: what is in the room from the beginning, then the facts of each step. */
  readonly facts: readonly Fact[];
  readonly commands: readonly StepCommands[];
  /** What the run had come to by `steps`. */
  readonly result: RunResult;
  /** Steps in the log: the last one is `steps − 1`. */
  readonly steps: number;
  /** Nothing more comes: all recorded steps are in it, or those that could be played. */
  readonly complete: boolean;
}
