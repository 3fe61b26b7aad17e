import type { Verification } from '../recording/verifyRun.ts';
import type { RunLog } from './runLog.ts';
import type { TraceView } from './traceTypes.ts';

/** A recording that is being played again; the page may show and read what there is at any time. */
export interface DebriefSource {
  readonly trace: TraceView;
  /** As far as played; null until the first seconds are there. */
  readonly log: RunLog | null;
  /** Share of the recording that is played, 0 to 1. */
  readonly share: number;
  /** What the comparison came to; null until it is known (a divergence is known at once, the rest at the end). */
  readonly verification: Verification | null;
  /** False for a run of another version of the simulation: it is played as this version does it. */
  readonly exact: boolean;
  /** One sentence when playing broke down; what there is stays. */
  readonly fault: string | null;
  /** Called after each growth and at the end; returns what takes the callback off. */
  onGrow(callback: () => void): () => void;
  /** Ends the work and forgets the callbacks. */
  stop(): void;
}
