const STEP_MS = 1000 / 120;
/** More steps than this in one frame and the machine is too slow: then room time stretches, as the run counts steps, not seconds. */
const STEPS_PER_FRAME_MAX = 6;

/** Cuts the time of animation frames into steps of fixed length, slowed down where asked. */
export class FrameClock {
  private carryMs = 0;

  constructor(public slowdown: 1 | 2 | 4) {}

  /** Steps that are due after another `elapsedMs` of real time. */
  take(elapsedMs: number): number {
    this.carryMs += Math.max(0, elapsedMs) / this.slowdown;
    const due = Math.floor(this.carryMs / STEP_MS);
    this.carryMs -= due * STEP_MS;
    return Math.min(due, STEPS_PER_FRAME_MAX);
  }

  /** How far the present moment lies between the last two steps, 0 to 1. */
  get blend(): number {
    return this.carryMs / STEP_MS;
  }

  /** After a pause the time that passed does not count. */
  reset(): void {
    this.carryMs = 0;
  }
}
