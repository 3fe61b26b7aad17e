import type { MovingSegment } from './movingSegment.ts';
import { nearestPoints, noNearestPoints } from './segmentGap.ts';

/** A touch is reported when the gap is within this of the tolerance, in metres; it bounds the number of rounds. */
const SLACK_M = 1e-9;

/**
 * Finds the first touch of two moving capsules by conservative advancement: along the line of the nearest points the gap cannot
 * close faster than the sum of both speed bounds, so time may jump to where it could be closed at the earliest. Nothing is
 * stepped over, however fast, and the time found is never later than the true one.
 * Two capsules that overlap at the beginning touch at time 0.
 */
export class TouchFinder {
  /** Time of the last touch found, 0 to 1, and the point midway between the nearest points then, in metres. */
  time = -1;
  x = 0;
  y = 0;
  private readonly p = new Float64Array(4);
  private readonly q = new Float64Array(4);
  private readonly nearest = noNearestPoints();

  /** True when the gap comes to `toleranceM` or less anywhere in the step. */
  find(a: MovingSegment, b: MovingSegment, toleranceM: number): boolean {
    const { nearest } = this;
    let time = 0;
    while (time <= 1) {
      const gap = this.gapAt(a, b, time);
      if (gap <= toleranceM + SLACK_M) {
        this.time = time;
        this.x = (nearest.px + nearest.qx) / 2;
        this.y = (nearest.py + nearest.qy) / 2;
        return true;
      }
      const nx = (nearest.qx - nearest.px) / nearest.distance;
      const ny = (nearest.qy - nearest.py) / nearest.distance;
      const closing = a.speedAlong(nx, ny) + b.speedAlong(-nx, -ny);
      if (closing <= 0) break;
      time += (gap - toleranceM) / closing;
    }
    this.time = -1;
    return false;
  }

  /** Gap between the rounded outlines at `time` in metres; negative when they overlap. */
  gapAt(a: MovingSegment, b: MovingSegment, time: number): number {
    a.at(time, this.p);
    b.at(time, this.q);
    nearestPoints(this.p, this.q, this.nearest);
    return this.nearest.distance - a.radius - b.radius;
  }
}

const finder = new TouchFinder();

/** First time in [0, 1] at which the gap of two moving capsules is at most `toleranceM` (metres), or -1 when it never is. */
export const firstTouch = (a: MovingSegment, b: MovingSegment, toleranceM: number): number =>
  finder.find(a, b, toleranceM) ? finder.time : -1;

/** Gap in metres at the end of the step. */
export const endGap = (a: MovingSegment, b: MovingSegment): number => finder.gapAt(a, b, 1);
