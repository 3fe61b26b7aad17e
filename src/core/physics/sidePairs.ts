import type { SolverState } from './solverState.ts';
import { SolverState as State } from './solverState.ts';
import type { Strand } from './strands.ts';

const RUN = 6;

/**
 * Nodes near links of strands (their own or another). Each pair remembers on which side of the link the node lies (±1; ±2 when
 * the side is imposed to undo a crossing), as long as it stays within the side memory.
 */
export class SidePairs {
  count = 0;
  readonly capacity: number;
  /** Pairs runStart[r] .. runStart[r + 1] − 1 are of nodes of strand runStrand[r] and links of strand runOther[r]. */
  runCount = 0;
  readonly runStart: Int32Array;
  readonly runStrand: Int32Array;
  readonly runOther: Int32Array;
  node: Int32Array;
  link: Int32Array;
  side: Int8Array;
  due: Float64Array;
  private spareNode: Int32Array;
  private spareLink: Int32Array;
  private spareSide: Int8Array;
  private spareDue: Float64Array;
  /** Side by node · nodeCount + link, filled only while the lists are rebuilt. */
  readonly known: Int8Array;

  constructor(nodeCount: number, strandCount: number) {
    const n = (this.capacity = 48 * nodeCount + 64);
    this.runStart = new Int32Array(strandCount * strandCount + 1);
    this.runStrand = new Int32Array(strandCount * strandCount);
    this.runOther = new Int32Array(strandCount * strandCount);
    this.node = new Int32Array(n);
    this.link = new Int32Array(n);
    this.side = new Int8Array(n);
    this.due = new Float64Array(n);
    this.spareNode = new Int32Array(n);
    this.spareLink = new Int32Array(n);
    this.spareSide = new Int8Array(n);
    this.spareDue = new Float64Array(n);
    this.known = new Int8Array(nodeCount * nodeCount);
  }

  /** Swaps in an empty list; `known` then tells the sides of the old one. */
  begin(nodeCount: number): void {
    const { node, link, side, due, known } = this;
    for (let k = 0; k < this.count; k++) known[node[k] * nodeCount + link[k]] = side[k];
    this.node = this.spareNode;
    this.link = this.spareLink;
    this.side = this.spareSide;
    this.due = this.spareDue;
    this.spareNode = node;
    this.spareLink = link;
    this.spareSide = side;
    this.spareDue = due;
  }

  /** Forgets the sides of the old list, which had `oldCount` pairs. */
  end(nodeCount: number, oldCount: number): void {
    for (let k = 0; k < oldCount; k++) this.known[this.spareNode[k] * nodeCount + this.spareLink[k]] = 0;
  }
}

export function collectSidePairs(state: SolverState): void {
  const { pairs, strands, nodes } = state;
  const oldCount = pairs.count;
  pairs.begin(nodes.count);
  pairs.count = 0;
  pairs.runCount = 0;
  for (let p = 0; p < strands.length; p++) {
    for (let q = 0; q < strands.length; q++) {
      const a = strands[p]!;
      const b = strands[q]!;
      if (p === q ? !a.selfCollide : !State.admits(a.collides, a.collidesWith, b.collides, b.collidesWith)) continue;
      if (!a.awake && !b.awake) continue;
      pairs.runStrand[pairs.runCount] = p;
      pairs.runOther[pairs.runCount] = q;
      collectPairsOf(state, a, b);
      pairs.runStart[++pairs.runCount] = pairs.count;
    }
  }
  pairs.end(nodes.count, oldCount);
}

function collectPairsOf(state: SolverState, a: Strand, b: Strand): void {
  const { settings, crossings, candidates } = state;
  const { runBox } = candidates;
  const touch = a.radius + b.radius;
  const wide = crossings > 0 ? 1.3 * Math.max(a.linkM, b.linkM) : 0;
  const memory = Math.max(touch + settings.margin, settings.sideMemory, wide);
  const fresh = crossings > 0 && a !== b ? memory : touch + settings.margin;
  const skip = a === b ? Math.max(2, Math.ceil((2 * touch) / a.linkM) + 1) : 0;
  for (let p = a.firstBox; p < a.endBox; p++) {
    for (let q = b.firstBox; q < b.endBox; q++) {
      if (runBox[4 * p] - memory > runBox[4 * q + 2] || runBox[4 * q] - memory > runBox[4 * p + 2]) continue;
      if (runBox[4 * p + 1] - memory > runBox[4 * q + 3] || runBox[4 * q + 1] - memory > runBox[4 * p + 3]) continue;
      collectRunPairs(state, a, b, a.start + RUN * (p - a.firstBox), b.start + RUN * (q - b.firstBox), memory, fresh, skip);
    }
  }
}

function collectRunPairs(state: SolverState, a: Strand, b: Strand, fromNode: number, fromLink: number, memory: number, fresh: number, skip: number): void {
  const { pairs, nodes } = state;
  const { x, y, count } = nodes;
  const { known } = pairs;
  const far = memory + 1.5 * b.linkM; // farther than this from its first node, a link is out of reach
  const toNode = Math.min(fromNode + RUN, a.end);
  const toLink = Math.min(fromLink + RUN, b.end - 1);
  for (let i = fromNode; i < toNode; i++) {
    for (let j = fromLink; j < toLink; j++) {
      if (a === b && j >= i - skip && j <= i + skip - 1) continue;
      const dx = x[i] - x[j];
      if (dx > far || dx < -far) continue;
      const dy = y[i] - y[j];
      if (dy > far || dy < -far) continue;
      const ex = x[j + 1] - x[j];
      const ey = y[j + 1] - y[j];
      const t = (dx * ex + dy * ey) / (ex * ex + ey * ey);
      const k = t < 0 ? 0 : t > 1 ? 1 : t;
      const ux = dx - k * ex;
      const uy = dy - k * ey;
      const d2 = ux * ux + uy * uy;
      if (d2 > memory * memory) continue;
      const side = known[i * count + j];
      if ((side === 0 && d2 > fresh * fresh) || pairs.count === pairs.capacity) continue;
      const n = pairs.count++;
      pairs.node[n] = i;
      pairs.link[n] = j;
      pairs.side[n] = side !== 0 ? side : ex * dy - ey * dx >= 0 ? 1 : -1;
      pairs.due[n] = 0;
    }
  }
}
