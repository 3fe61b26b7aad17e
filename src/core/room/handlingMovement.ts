import { length, log } from '../base/portableMath.ts';

/** Steps over which a position is averaged: third differences of the averages speak of movements up to 7 Hz, not of the pointer's millimetres. */
export const SAMPLE_STEPS = 8;
/** Way in one sample below which a hand rests, and that it must reach somewhere to have moved: 0.01 and 0.05 m/s; own proposal. */
const REST_M = (0.01 * SAMPLE_STEPS) / 120;
const MOVED_M = (0.05 * SAMPLE_STEPS) / 120;
/** Shorter movements say nothing about smoothness (points, m); own proposal. */
const POINTS_MIN = 8;
const PATH_MIN_M = 0.03;

/** One movement of a hand from rest to rest, with the natural logarithm of its dimensionless jerk (less is smoother). */
export interface Movement {
  readonly startStep: number;
  readonly endStep: number;
  readonly pathM: number;
  readonly logJerk: number;
}

/**
 * Dimensionless squared jerk of a movement through evenly timed points: ∫ |jerk|² dt · D⁵ / L² with its duration D and the length L
 * of its path, that is D³ over the square of the mean speed (Hogan and Sternad, J Mot Behav 2009;41:529-34). It depends neither on
 * how far nor on how fast the hand goes. A straight minimum-jerk movement has 720 (textbook), the least that begins and ends at rest
 * without a jump of acceleration; seen in few points it comes out a little less.
 */
export function dimensionlessJerk(xs: readonly number[], ys: readonly number[]): number {
  let squares = 0;
  // A third difference is the jerk times the cube of the time between points, which cancels against D = samples × that time.
  for (let k = 3; k < xs.length; k++) {
    const jx = xs[k]! - 3 * xs[k - 1]! + 3 * xs[k - 2]! - xs[k - 3]!;
    const jy = ys[k]! - 3 * ys[k - 1]! + 3 * ys[k - 2]! - ys[k - 3]!;
    squares += jx * jx + jy * jy;
  }
  const samples = xs.length - 1;
  const path = pathOf(xs, ys);
  return (squares * samples * samples * samples * samples * samples) / (path * path);
}

function pathOf(xs: readonly number[], ys: readonly number[]): number {
  let path = 0;
  for (let k = 1; k < xs.length; k++) path += length(xs[k]! - xs[k - 1]!, ys[k]! - ys[k - 1]!);
  return path;
}

interface Saved {
  readonly sumX: number;
  readonly sumY: number;
  readonly xs: readonly number[];
  readonly ys: readonly number[];
  readonly most: number;
  readonly movements: readonly Movement[];
}

/** Cuts the way of a hand into movements between rests and measures each. Pauses are no part of any movement. */
export class MovementMeter {
  private sumX = 0;
  private sumY = 0;
  /** Points since the hand last rested, that of the rest first. */
  private xs: number[] = [];
  private ys: number[] = [];
  /** Longest way in one sample since then. */
  private most = 0;
  private found: Movement[] = [];

  get movements(): readonly Movement[] {
    return this.found;
  }

  /** Takes the place of the hand after a step, in metres. */
  step(step: number, x: number, y: number): void {
    this.sumX += x;
    this.sumY += y;
    if ((step + 1) % SAMPLE_STEPS !== 0) return;
    this.point(step, this.sumX / SAMPLE_STEPS, this.sumY / SAMPLE_STEPS);
    this.sumX = 0;
    this.sumY = 0;
  }

  save(): Saved {
    const { sumX, sumY, most } = this;
    return { sumX, sumY, most, xs: [...this.xs], ys: [...this.ys], movements: [...this.found] };
  }

  restore(saved: unknown): void {
    const { sumX, sumY, most, xs, ys, movements } = saved as Saved;
    Object.assign(this, { sumX, sumY, most, xs: [...xs], ys: [...ys], found: [...movements] });
  }

  private point(step: number, x: number, y: number): void {
    const last = this.xs.length - 1;
    const way = last < 0 ? 0 : length(x - this.xs[last]!, y - this.ys[last]!);
    if (way < REST_M) {
      // The first point of the rest still belongs to the movement: it has come to a stop there.
      if (last > 0) this.close(step, x, y);
      this.xs = [x];
      this.ys = [y];
      this.most = 0;
      return;
    }
    this.xs.push(x);
    this.ys.push(y);
    this.most = Math.max(this.most, way);
  }

  private close(step: number, x: number, y: number): void {
    const xs = [...this.xs, x];
    const ys = [...this.ys, y];
    const pathM = pathOf(xs, ys);
    if (xs.length < POINTS_MIN || this.most < MOVED_M || pathM < PATH_MIN_M) return;
    const endStep = step;
    this.found.push({ startStep: endStep - (xs.length - 1) * SAMPLE_STEPS, endStep, pathM, logJerk: log(dimensionlessJerk(xs, ys)) });
  }
}

/** Middle value, the mean of the two middle ones of an even number; null of nothing. */
export function median(values: readonly number[]): number | null {
  if (values.length === 0) return null;
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length / 2;
  return half % 1 === 0 ? (sorted[half - 1]! + sorted[half]!) / 2 : sorted[Math.floor(half)]!;
}
