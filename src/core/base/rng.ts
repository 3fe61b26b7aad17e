/**
 * Seeded random numbers in [0, 1). State is one 32-bit integer, so that a run can be stored and continued.
 * Generator: mulberry32 (public domain), integer arithmetic only, the same in every engine.
 */
export class Rng {
  private state: number;

  constructor(seed: number) {
    this.state = seed >>> 0;
  }

  /** Next number in [0, 1). */
  next(): number {
    this.state = (this.state + 0x6d2b79f5) | 0;
    const a = this.state;
    let t = Math.imul(a ^ (a >>> 15), 1 | a);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  }

  /** Next number in [low, high). */
  between(low: number, high: number): number {
    return low + (high - low) * this.next();
  }

  save(): number {
    return this.state;
  }

  restore(state: number): void {
    this.state = state | 0;
  }
}
