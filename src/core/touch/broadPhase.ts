import type { TrackedCapsule } from './trackedCapsule.ts';

/** Steps in which a surface must have stood still, the present one among them, before it counts as resting. */
const RESTING_STEPS = 2;

/**
 * Finds the pairs of surfaces whose boxes over the whole step come near each other: sort and sweep along x, in flat arrays that
 * are kept from step to step. `slots` number the surfaces of this step in the order of their first capsule. Most surfaces stand
 * still most of the time: they keep their boxes, and two that rest are no pair, because nothing is new between them.
 */
export class BroadPhase {
  /** Surfaces of this step, and for each its group and the chain of its capsules (`next`, ended by -1). */
  count = 0;
  surface = new Int32Array(0);
  group = new Int32Array(0);
  first = new Int32Array(0);
  next = new Int32Array(0);
  /** Boxes of the capsules over the step, grown by the reach: [x from, y from, x to, y to]. */
  capsuleBox = new Float64Array(0);
  /** Results of `findPairs` and `findNear`. */
  pairs = new Int32Array(256);
  near = new Int32Array(64);
  private box = new Float64Array(0);
  private order = new Int32Array(0);
  private slotOf = new Int32Array(0);
  /** Steps in which the surface of a slot stood still, up to `RESTING_STEPS`. */
  private stood = new Uint8Array(0);
  private moved = new Uint8Array(0);
  /** Capsules of the step before: how many, and for each its slot and [ax, ay, bx, by, radius] at the end of that step. */
  private capsuleCount = 0;
  private slot = new Int32Array(0);
  private ends = new Float64Array(0);

  /** `reachM` is the gap in metres at which a pair is still of interest. */
  constructor(private readonly reachM: number) {}

  /** Takes in the capsules of a step. */
  load(capsules: readonly TrackedCapsule[]): void {
    if (!this.areSameSurfaces(capsules)) this.takeSurfaces(capsules);
    const { slot, stood, moved } = this;
    for (let k = 0; k < capsules.length; k++) {
      const still = this.stoodStill(capsules[k]!, k);
      if (!still) moved[slot[k]!] = 1;
      // A surface that stands still for the first time has the box of its last movement.
      if (!still || stood[slot[k]!] === 0) this.boxOf(capsules[k]!, k);
    }
    for (let s = 0; s < this.count; s++) {
      if (moved[s] === 1 || stood[s] === 0) this.boxAround(s);
      if (moved[s] === 1) stood[s] = moved[s] = 0;
      else if (stood[s]! < RESTING_STEPS) stood[s]!++;
    }
    this.sort();
  }

  /** Forgets what stood still: the next step is not the one after the last. */
  forget(): void {
    this.capsuleCount = -1;
  }

  /** Whether a surface has stood still in this step and the one before. */
  rests(surface: number): boolean {
    const slot = surface < this.slotOf.length ? this.slotOf[surface]! : -1;
    return slot >= 0 && this.stood[slot] === RESTING_STEPS;
  }

  /**
   * Fills `pairs` with the slots of every two surfaces whose boxes overlap and of which one does not rest, two by two; gives how many
   * numbers there are.
   */
  findPairs(): number {
    const { order, box, count, stood } = this;
    let found = 0;
    for (let i = 0; i < count; i++) {
      const a = order[i]! * 4;
      const rests = stood[order[i]!] === RESTING_STEPS;
      const right = box[a + 2]!;
      const low = box[a + 1]!;
      const high = box[a + 3]!;
      for (let j = i + 1; j < count; j++) {
        const b = order[j]! * 4;
        if (box[b]! > right) break;
        if ((rests && stood[order[j]!] === RESTING_STEPS) || box[b + 1]! > high || box[b + 3]! < low) continue;
        if (found === this.pairs.length) this.pairs = enlarged(this.pairs);
        this.pairs[found++] = order[i]!;
        this.pairs[found++] = order[j]!;
      }
    }
    return found;
  }

  /** Fills `near` with the capsules of two surfaces whose boxes overlap, two by two; gives how many numbers there are. */
  findNear(slotA: number, slotB: number): number {
    let found = 0;
    for (let a = this.first[slotA]!; a >= 0; a = this.next[a]!)
      for (let b = this.first[slotB]!; b >= 0; b = this.next[b]!) {
        if (!this.overlap(a * 4, b * 4)) continue;
        if (found === this.near.length) this.near = enlarged(this.near);
        this.near[found++] = a;
        this.near[found++] = b;
      }
    return found;
  }

  private overlap(i: number, j: number): boolean {
    const box = this.capsuleBox;
    return box[i]! <= box[j + 2]! && box[j]! <= box[i + 2]! && box[i + 1]! <= box[j + 3]! && box[j + 1]! <= box[i + 3]!;
  }

  /** Whether the capsules belong to the surfaces of the step before, in the same order. */
  private areSameSurfaces(capsules: readonly TrackedCapsule[]): boolean {
    const { slot, surface, group } = this;
    if (capsules.length !== this.capsuleCount) return false;
    for (let k = 0; k < capsules.length; k++) if (surface[slot[k]!] !== capsules[k]!.surface || group[slot[k]!] !== capsules[k]!.group) return false;
    return true;
  }

  /** Numbers the surfaces of the capsules anew. */
  private takeSurfaces(capsules: readonly TrackedCapsule[]): void {
    for (let slot = 0; slot < this.count; slot++) this.slotOf[this.surface[slot]!] = -1;
    const countBefore = this.count;
    this.count = 0;
    if (this.next.length < capsules.length) this.grow(capsules.length * 2);
    for (let k = 0; k < capsules.length; k++) {
      const { surface, group } = capsules[k]!;
      if (surface >= this.slotOf.length) this.growSurfaces(surface);
      let slot = this.slotOf[surface]!;
      if (slot < 0) {
        slot = this.slotOf[surface] = this.count++;
        this.surface[slot] = surface;
        this.group[slot] = group;
        this.first[slot] = -1;
      }
      this.slot[k] = slot;
      this.next[k] = this.first[slot]!;
      this.first[slot] = k;
    }
    this.capsuleCount = capsules.length;
    this.ends.fill(NaN);
    this.stood.fill(0);
    if (this.count !== countBefore) for (let k = 0; k < this.count; k++) this.order[k] = k;
  }

  /** Whether a capsule stays where it was at the end of the step before; remembers where it is at the end of this one. */
  private stoodStill(c: TrackedCapsule, k: number): boolean {
    const { ends } = this;
    const at = k * 5;
    const still = c.ax === c.Ax && c.ay === c.Ay && c.bx === c.Bx && c.by === c.By
      && ends[at] === c.Ax && ends[at + 1] === c.Ay && ends[at + 2] === c.Bx && ends[at + 3] === c.By && ends[at + 4] === c.r;
    if (still) return true;
    ends[at] = c.Ax;
    ends[at + 1] = c.Ay;
    ends[at + 2] = c.Bx;
    ends[at + 3] = c.By;
    ends[at + 4] = c.r;
    return false;
  }

  private boxOf(c: TrackedCapsule, k: number): void {
    const box = this.capsuleBox;
    const r = c.r + this.reachM / 2;
    box[k * 4] = Math.min(Math.min(c.ax, c.bx), Math.min(c.Ax, c.Bx)) - r;
    box[k * 4 + 1] = Math.min(Math.min(c.ay, c.by), Math.min(c.Ay, c.By)) - r;
    box[k * 4 + 2] = Math.max(Math.max(c.ax, c.bx), Math.max(c.Ax, c.Bx)) + r;
    box[k * 4 + 3] = Math.max(Math.max(c.ay, c.by), Math.max(c.Ay, c.By)) + r;
  }

  /** Box of a surface, around those of its capsules. */
  private boxAround(slot: number): void {
    const { box, capsuleBox, next } = this;
    let k = this.first[slot]!;
    for (let n = 0; n < 4; n++) box[slot * 4 + n] = capsuleBox[k * 4 + n]!;
    for (k = next[k]!; k >= 0; k = next[k]!)
      for (let n = 0; n < 2; n++) {
        if (capsuleBox[k * 4 + n]! < box[slot * 4 + n]!) box[slot * 4 + n] = capsuleBox[k * 4 + n]!;
        if (capsuleBox[k * 4 + n + 2]! > box[slot * 4 + n + 2]!) box[slot * 4 + n + 2] = capsuleBox[k * 4 + n + 2]!;
      }
  }

  /** Insertion sort by left edge: the order of the last step is nearly that of this one. */
  private sort(): void {
    const { order, box, count } = this;
    for (let i = 1; i < count; i++) {
      const slot = order[i]!;
      const left = box[slot * 4]!;
      let j = i - 1;
      while (j >= 0 && box[order[j]! * 4]! > left) {
        order[j + 1] = order[j]!;
        j--;
      }
      order[j + 1] = slot;
    }
  }

  private grow(size: number): void {
    for (const name of ['surface', 'group', 'first', 'next', 'slot'] as const) this[name] = new Int32Array(size);
    this.order = Int32Array.from({ length: size }, (_, k) => k);
    this.stood = new Uint8Array(size);
    this.moved = new Uint8Array(size);
    this.ends = new Float64Array(size * 5);
    this.box = new Float64Array(size * 4);
    this.capsuleBox = new Float64Array(size * 4);
  }

  private growSurfaces(surface: number): void {
    const larger = new Int32Array((surface + 1) * 2).fill(-1);
    larger.set(this.slotOf);
    this.slotOf = larger;
  }
}

/** The same numbers in an array twice as long. */
function enlarged(numbers: Int32Array<ArrayBuffer>): Int32Array<ArrayBuffer> {
  const larger = new Int32Array(numbers.length * 2);
  larger.set(numbers);
  return larger;
}
