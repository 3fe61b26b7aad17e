import type { Settings } from './settings.ts';
import type { NodeStore } from './strands.ts';

/**
 * Contacts of free nodes with static and driven bodies. They are solved last in every pass, because the fixed side must win,
 * and their state enters the chain solve. Loads are kept as displacements of the node (m): force = load / (inverse mass · h²).
 */
export class FixedContacts {
  count = 0;
  readonly capacity: number;
  readonly node: Int32Array;
  readonly shape: Int32Array;
  readonly nx: Float64Array;
  readonly ny: Float64Array;
  /** Gap at the beginning of the sub-step, never negative (m). */
  readonly gap: Float64Array;
  readonly friction: Float64Array;
  readonly load: Float64Array;
  readonly shear: Float64Array;
  /** Displacement of the touched surface in this sub-step (m). */
  readonly surfaceX: Float64Array;
  readonly surfaceY: Float64Array;
  /** The contact that represents each node in the chain solve, or −1. */
  readonly ofNode: Int32Array;
  /** Nodes that lay on something fixed in the last sub-step, and the normal there. */
  readonly supported: Uint8Array;
  readonly supportX: Float64Array;
  readonly supportY: Float64Array;

  constructor(nodeCount: number) {
    const n = (this.capacity = 4 * nodeCount + 64);
    this.node = new Int32Array(n);
    this.shape = new Int32Array(n);
    this.nx = new Float64Array(n);
    this.ny = new Float64Array(n);
    this.gap = new Float64Array(n);
    this.friction = new Float64Array(n);
    this.load = new Float64Array(n);
    this.shear = new Float64Array(n);
    this.surfaceX = new Float64Array(n);
    this.surfaceY = new Float64Array(n);
    this.ofNode = new Int32Array(nodeCount).fill(-1);
    this.supported = new Uint8Array(nodeCount);
    this.supportX = new Float64Array(nodeCount);
    this.supportY = new Float64Array(nodeCount);
  }

  /** Forgets the contacts, but remembers which nodes they held up. */
  clear(): void {
    const { node, nx, ny, load, ofNode, supported, supportX, supportY } = this;
    supported.fill(0);
    for (let k = 0; k < this.count; k++) {
      const i = node[k];
      ofNode[i] = -1;
      if (load[k] <= 0) continue;
      supported[i] = 1;
      supportX[i] = nx[k];
      supportY[i] = ny[k];
    }
    this.count = 0;
  }

  /**
   * Completes a contact of node i (not held, not pinned) whose normal, separation (as gap), friction and displacement of the surface
   * the caller has filled in at index `count`. What overlapped before the sub-step began is undone by shifting position and
   * previous position alike, at limited speed: it gives no velocity and no friction. What other contacts have just shifted the node
   * into the surface, to undo their own overlaps, is taken back at once.
   */
  close({ nodes, settings, startX, startY, h }: ContactStores, i: number, shape: number): void {
    const k = this.count;
    if (k === this.capacity) return;
    const { x, y, prevX, prevY } = nodes;
    const nx = this.nx[k];
    const ny = this.ny[k];
    const gap = this.gap[k] - nx * (x[i] - prevX[i] - this.surfaceX[k]) - ny * (y[i] - prevY[i] - this.surfaceY[k]);
    if (gap < 0) {
      const shoved = nx * (startX[i] - prevX[i]) + ny * (startY[i] - prevY[i]);
      const recover = settings.recoveryFixed * h + (shoved > 0 ? shoved : 0);
      const shift = -gap < recover ? -gap : recover;
      x[i] += shift * nx;
      y[i] += shift * ny;
      prevX[i] += shift * nx;
      prevY[i] += shift * ny;
    }
    this.count = k + 1;
    this.node[k] = i;
    this.shape[k] = shape;
    this.gap[k] = gap > 0 ? gap : 0;
    this.load[k] = 0;
    this.shear[k] = 0;
    this.ofNode[i] = k;
  }

  /** One projected Gauss-Seidel pass: normal load ≥ 0, |shear| ≤ µ · load (Coulomb), both accumulated over the passes. */
  solve(nodes: NodeStore): void {
    const { x, y, prevX, prevY } = nodes;
    const { node, nx, ny, gap, friction, load, shear, surfaceX, surfaceY } = this;
    for (let k = 0, n = this.count; k < n; k++) {
      const i = node[k];
      const ax = nx[k];
      const ay = ny[k];
      const ux = x[i] - prevX[i] - surfaceX[k];
      const uy = y[i] - prevY[i] - surfaceY[k];
      let push = -(gap[k] + ax * ux + ay * uy);
      let total = load[k] + push;
      if (total < 0) {
        push = -load[k];
        total = 0;
      }
      load[k] = total;
      if (total === 0 && push === 0 && shear[k] === 0) continue; // apart, as it was
      const limit = friction[k] * total;
      const wanted = shear[k] - (ax * uy - ay * ux);
      const held = wanted > limit ? limit : wanted < -limit ? -limit : wanted;
      const rub = held - shear[k];
      shear[k] = held;
      x[i] += ax * push - ay * rub;
      y[i] += ay * push + ax * rub;
    }
  }
}

/** What a contact reads and moves. */
interface ContactStores {
  readonly nodes: NodeStore;
  readonly settings: Settings;
  /** Node positions at the beginning of the sub-step. */
  readonly startX: Float64Array;
  readonly startY: Float64Array;
  readonly h: number;
}
