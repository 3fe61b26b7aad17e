import { STEPS_PER_SECOND } from '../base/time.ts';
import { isSameSimulation, type RunFile } from '../recording/recording.ts';
import type { Verification } from '../recording/verifyRun.ts';
import type { RunResult } from '../run/result.ts';
import type { DebriefSource } from './debriefSource.ts';
import type { RunLog } from './runLog.ts';
import { Trace } from './Trace.ts';
import type { TraceChunk } from './traceChunk.ts';
import type { TraceNews } from './traceRun.ts';

/** The log grows by at least five seconds. */
const LOG_STEPS = 5 * STEPS_PER_SECOND;

/** What is known of a recording while it is being played elsewhere, put together from what comes in. */
export class DebriefOfRun implements DebriefSource {
  readonly trace: Trace;
  readonly exact: boolean;
  log: RunLog | null = null;
  verification: Verification | null = null;
  fault: string | null = null;
  share = 0;
  private readonly callbacks = new Set<() => void>();
  private stopped = false;
  private working = true;
  /** What a log of all that was played would have beside the facts, while the log is shorter. */
  private pending: { readonly steps: number; readonly result: RunResult } | null = null;

  /** @param stopWork ends the work elsewhere; called once, when it is over or no longer wanted */
  constructor(private readonly file: RunFile, private readonly stopWork: () => void) {
    this.trace = new Trace(file.header.scenario);
    this.exact = isSameSimulation(file.header);
  }

  /** Takes in what came. */
  take({ chunk, verification }: TraceNews): void {
    if (this.stopped) return;
    this.verification = verification;
    if (verification?.verdict === 'diverged' && verification.fault !== undefined) this.fault = `The run could be played no further: ${verification.fault}.`;
    if (chunk) {
      this.trace.take(chunk);
      this.share = this.file.steps === 0 ? 1 : Math.min(1, chunk.steps / this.file.steps);
      this.grow(chunk);
    }
    this.tell();
  }

  /**
   * The log grows by a twentieth of its length and five seconds at a time, since whoever reads it looks at all of it anew.
   */
  private grow({ steps, result }: TraceChunk): void {
    const complete = steps >= this.file.steps;
    this.pending = null;
    if (this.log && !complete && steps < this.log.steps * 1.05 + LOG_STEPS) this.pending = { steps, result };
    else this.log = this.logOf(steps, result, complete);
  }

  /** While facts still come, a log has its own list of those so far. */
  private logOf(steps: number, result: RunResult, complete: boolean): RunLog {
    const { header, commands } = this.file;
    return { scenario: header.scenario, facts: complete ? this.trace.facts : [...this.trace.facts], commands, result, steps, complete };
  }

  /** Nothing more comes. */
  end(): void {
    if (this.stopped) return;
    this.share = 1;
    if (this.pending) this.log = this.logOf(this.pending.steps, this.pending.result, true);
    else if (this.log && !this.log.complete) this.log = { ...this.log, complete: true };
    this.endWork();
    this.tell();
  }

  /** The work broke down; the sentence says so. */
  fail(sentence: string): void {
    if (this.stopped) return;
    this.fault = sentence;
    this.endWork();
    this.tell();
  }

  onGrow(callback: () => void): () => void {
    this.callbacks.add(callback);
    return () => void this.callbacks.delete(callback);
  }

  stop(): void {
    if (this.stopped) return;
    this.stopped = true;
    this.callbacks.clear();
    this.endWork();
  }

  private endWork(): void {
    if (!this.working) return;
    this.working = false;
    this.stopWork();
  }

  private tell(): void {
    for (const callback of this.callbacks) callback();
  }
}
