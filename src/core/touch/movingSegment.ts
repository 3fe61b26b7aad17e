/**
 * A rounded segment (capsule; a circle when its ends are equal) on its way through one step, with time running from 0 to 1.
 * Lengths in metres, speeds in metres per step.
 */
export interface MovingSegment {
  readonly radius: number;
  /** Writes the ends [ax, ay, bx, by] at `time` (0 to 1) to `out`. */
  at(time: number, out: Float64Array): void;
  /** Upper bound, for the whole step, of the speed of any of its points along the unit vector (nx, ny). */
  speedAlong(nx: number, ny: number): number;
}

/** Both ends move in straight lines at constant speed; `begin` and `end` are [ax, ay, bx, by]. The bound of its speed is exact. */
export class LinearSegment implements MovingSegment {
  readonly begin = new Float64Array(4);
  readonly end = new Float64Array(4);
  radius: number;

  constructor(begin: ArrayLike<number> = [0, 0, 0, 0], end: ArrayLike<number> = begin, radius = 0) {
    this.begin.set(begin);
    this.end.set(end);
    this.radius = radius;
  }

  at(time: number, out: Float64Array): void {
    const { begin, end } = this;
    out[0] = begin[0]! + time * (end[0]! - begin[0]!);
    out[1] = begin[1]! + time * (end[1]! - begin[1]!);
    out[2] = begin[2]! + time * (end[2]! - begin[2]!);
    out[3] = begin[3]! + time * (end[3]! - begin[3]!);
  }

  speedAlong(nx: number, ny: number): number {
    const { begin, end } = this;
    const a = (end[0]! - begin[0]!) * nx + (end[1]! - begin[1]!) * ny;
    const b = (end[2]! - begin[2]!) * nx + (end[3]! - begin[3]!) * ny;
    return a > b ? a : b;
  }
}
