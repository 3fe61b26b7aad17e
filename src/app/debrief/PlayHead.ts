import { STEPS_PER_SECOND } from '../../core/base/time.ts';

/** How fast a run is played again, as a multiple of the time in the room. */
export const SPEEDS = [1 / 8, 1 / 4, 1 / 2, 1, 2, 4, 8] as const;
export type Speed = (typeof SPEEDS)[number];

/** A gap longer than this between frames is no time of the run: the page was not shown. */
const FRAME_MS_MAX = 250;

/**
 * The instant of the run that is shown, as a step with a fraction, and how it moves on. It waits at the end of what can be played so
 * far, and stops at the end of the run.
 */
export class PlayHead {
  private at: number;
  private going = false;
  private pace: Speed = 1;
  private ready: number;
  private readonly listeners = new Set<() => void>();

  /**
   * @param end last step of the run
   * @param playable last step that can be shown so far
   */
  constructor(readonly end: number, playable = end, start = 0) {
    this.ready = Math.min(playable, end);
    this.at = Math.min(Math.max(0, start), end);
  }

  /** The wanted instant. */
  get step(): number {
    return this.at;
  }

  get playing(): boolean {
    return this.going;
  }

  get speed(): Speed {
    return this.pace;
  }

  /** Last step that can be shown so far. */
  get playable(): number {
    return this.ready;
  }

  /** Whether the wanted instant cannot be shown yet. */
  get waiting(): boolean {
    return this.at > this.ready;
  }

  setPlayable(step: number): void {
    if (step <= this.ready) return;
    this.ready = Math.min(step, this.end);
    this.tell();
  }

  /** Goes to an instant of the run; what lies outside is brought to its ends. */
  goTo(step: number): void {
    const to = Math.min(Math.max(0, step), this.end);
    if (to === this.at) return;
    this.at = to;
    this.tell();
  }

  goBy(seconds: number): void {
    this.goTo(this.at + seconds * STEPS_PER_SECOND);
  }

  /** Begins or stops to play; from the end it begins again. */
  toggle(): void {
    this.going = !this.going;
    if (this.going && this.at >= this.end) this.at = 0;
    this.tell();
  }

  pause(): void {
    if (!this.going) return;
    this.going = false;
    this.tell();
  }

  setSpeed(speed: Speed): void {
    if (speed === this.pace) return;
    this.pace = speed;
    this.tell();
  }

  /** The next faster (1) or slower (-1) speed. */
  changeSpeed(by: 1 | -1): void {
    const next = SPEEDS[SPEEDS.indexOf(this.pace) + by];
    if (next !== undefined) this.setSpeed(next);
  }

  /** Moves on with real time while playing. */
  advance(elapsedMs: number): void {
    if (!this.going || this.waiting) return;
    const to = this.at + (Math.min(elapsedMs, FRAME_MS_MAX) / 1000) * STEPS_PER_SECOND * this.pace;
    this.at = Math.min(to, this.ready);
    if (this.at >= this.end) this.going = false;
    this.tell();
  }

  subscribe(listener: () => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  private tell(): void {
    for (const listener of this.listeners) listener();
  }
}
