import { isSameSimulation, type RunFile } from '../recording/recording.ts';
import type { Verification } from '../recording/verifyRun.ts';
import type { DebriefSource } from './debriefSource.ts';
import type { RunLog } from './runLog.ts';
import { Trace } from './Trace.ts';
import type { TraceNews } from './traceRun.ts';

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
      const { steps, result } = chunk;
      const { header, commands } = this.file;
      this.share = this.file.steps === 0 ? 1 : Math.min(1, steps / this.file.steps);
      this.log = { scenario: header.scenario, facts: [...this.trace.facts], commands, result, steps, complete: steps >= this.file.steps };
    }
    this.tell();
  }

  /** Nothing more comes. */
  end(): void {
    if (this.stopped) return;
    this.share = 1;
    if (this.log && !this.log.complete) this.log = { ...this.log, complete: true };
    this.stopWork();
    this.tell();
  }

  fail(sentence: string): void {
    if (this.stopped) return;
    this.fault = sentence;
    this.stopWork();
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
    this.stopWork();
  }

  private tell(): void {
    for (const callback of this.callbacks) callback();
  }
}
