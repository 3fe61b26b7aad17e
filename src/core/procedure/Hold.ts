import { secondsToSteps } from '../base/time.ts';

export interface HoldState {
  readonly held: number;
  readonly gap: number;
}

/** A hold survives an interruption that is no longer than this, in seconds: about the time in which a person reacts. */
export const INTERRUPTION_S = 0.25;

/**
 * Counts the steps for which something is kept up. Steps in which it is not do not count; after more of them in a row than an
 * interruption may last, counting starts again.
 */
export class Hold {
  private held = 0;
  private gap = 0;
  private readonly needed: number;
  private readonly gapMax: number;

  /** Both in seconds: how long it must be kept up, and how long an interruption may last. */
  constructor(seconds: number, interruptionS: number) {
    this.needed = secondsToSteps(seconds);
    this.gapMax = secondsToSteps(interruptionS);
  }

  /** Takes one step and says whether it has now been kept up for long enough. */
  feed(kept: boolean): boolean {
    if (kept) {
      this.held = Math.min(this.needed, this.held + 1);
      this.gap = 0;
    } else if (this.held > 0 && ++this.gap > this.gapMax) this.clear();
    return this.held === this.needed;
  }

  clear(): void {
    this.held = 0;
    this.gap = 0;
  }

  /** Part of the time so far, 0 to 1. */
  get share(): number {
    return this.held / this.needed;
  }

  save(): HoldState {
    return { held: this.held, gap: this.gap };
  }

  restore(state: HoldState): void {
    this.held = state.held;
    this.gap = state.gap;
  }
}
