import type { Point } from './followPointer.ts';

/** Faster than this (pixels per second) the pointer is on its way elsewhere, to the panel most often; calmer than that it leads again. */
const FLICK_PX_PER_S = 1300;
const CALM_PX_PER_S = 450;
/** Speed is measured over this time, and a flick takes the hand back to where it was this long before. */
const WINDOW_MS = 90;

interface Moment {
  readonly atMs: number;
  readonly px: number;
  readonly hand: Point;
}

export type FlickChange = 'led' | 'flickBegan' | 'flicking' | 'flickEnded';

/**
 * Tells the calm movements that lead a hand from flicks of the pointer, which leave it where it was: nobody should have to drag a
 * hand across the room to reach a button with the mouse.
 */
export class FlickGuard {
  private moments: Moment[] = [];
  private flicking = false;

  /** Notes a movement of so many pixels, with the hand's place before it. */
  moved(px: number, atMs: number, hand: Point): FlickChange {
    this.moments = [...this.moments.filter((moment) => atMs - moment.atMs < WINDOW_MS), { atMs, px, hand }];
    const speed = (this.moments.reduce((sum, moment) => sum + moment.px, 0) / WINDOW_MS) * 1000;
    if (this.flicking) {
      if (speed >= CALM_PX_PER_S) return 'flicking';
      this.flicking = false;
      return 'flickEnded';
    }
    if (speed < FLICK_PX_PER_S) return 'led';
    this.flicking = true;
    return 'flickBegan';
  }

  /** Where the hand was before the flick began. */
  get before(): Point {
    return this.moments[0]!.hand;
  }

  forget(): void {
    this.moments = [];
    this.flicking = false;
  }
}
