import type { TrackedCapsule } from './trackedCapsule.ts';

/**
 * Finds the pairs of surfaces whose boxes over the whole step come near each other: sort and sweep along x, in flat arrays that
 * are kept from step to step. `slots` number the surfaces of this step in the order of their first capsule.
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
  private orderCount = 0;
  private slotOf = new Int32Array(0);

  /** Takes in the capsules of a step; `reachM` is the gap at which a pair is still of interest. */
  load(capsules: readonly TrackedCapsule[], reachM: number): void {
    for (let slot = 0; slot < this.count; slot++) this.slotOf[this.surface[slot]!] = -1;
    this.count = 0;
    if (this.next.length < capsules.length) this.grow(capsules.length * 2);
    for (let k = 0; k < capsules.length; k++) {
      this.boxOf(capsules[k]!, k, reachM / 2);
      this.join(capsules[k]!, k);
    }
    this.sort();
  }

  /** Fills `pairs` with the slots of every two surfaces whose boxes overlap, two by two; gives how many numbers there are. */
  findPairs(): number {
    const { order, box, count } = this;
    let found = 0;
    for (let i = 0; i < count; i++) {
      const a = order[i]! * 4;
      const right = box[a + 2]!;
      const low = box[a + 1]!;
      const high = box[a + 3]!;
      for (let j = i + 1; j < count; j++) {
        const b = order[j]! * 4;
        if (box[b]! > right) break;
        if (box[b + 1]! > high || box[b + 3]! < low) continue;
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

  private boxOf(c: TrackedCapsule, k: number, grown: number): void {
    const box = this.capsuleBox;
    const r = c.r + grown;
    box[k * 4] = Math.min(Math.min(c.ax, c.bx), Math.min(c.Ax, c.Bx)) - r;
    box[k * 4 + 1] = Math.min(Math.min(c.ay, c.by), Math.min(c.Ay, c.By)) - r;
    box[k * 4 + 2] = Math.max(Math.max(c.ax, c.bx), Math.max(c.Ax, c.Bx)) + r;
    box[k * 4 + 3] = Math.max(Math.max(c.ay, c.by), Math.max(c.Ay, c.By)) + r;
  }

  private join(c: TrackedCapsule, k: number): void {
    const { box, capsuleBox } = this;
    if (c.surface >= this.slotOf.length) this.growSurfaces(c.surface);
    let slot = this.slotOf[c.surface]!;
    if (slot < 0) {
      slot = this.slotOf[c.surface] = this.count++;
      this.surface[slot] = c.surface;
      this.group[slot] = c.group;
      this.first[slot] = -1;
      for (let n = 0; n < 4; n++) box[slot * 4 + n] = capsuleBox[k * 4 + n]!;
    } else {
      for (let n = 0; n < 2; n++) {
        if (capsuleBox[k * 4 + n]! < box[slot * 4 + n]!) box[slot * 4 + n] = capsuleBox[k * 4 + n]!;
        if (capsuleBox[k * 4 + n + 2]! > box[slot * 4 + n + 2]!) box[slot * 4 + n + 2] = capsuleBox[k * 4 + n + 2]!;
      }
    }
    this.next[k] = this.first[slot]!;
    this.first[slot] = k;
  }

  /** Insertion sort by left edge: the order of the last step is nearly that of this one. */
  private sort(): void {
    const { order, box, count } = this;
    if (this.orderCount !== count) for (let k = 0; k < count; k++) order[k] = k;
    this.orderCount = count;
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
    this.surface = new Int32Array(size);
    this.group = new Int32Array(size);
    this.first = new Int32Array(size);
    this.next = new Int32Array(size);
    this.order = new Int32Array(size);
    this.orderCount = 0;
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
