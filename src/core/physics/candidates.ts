import type { SolverState } from './solverState.ts';
import { SolverState as State } from './solverState.ts';
import { collectSidePairs } from './sidePairs.ts';
import { linksCross } from './segments.ts';
import type { Strand } from './strands.ts';

const RUN = 6;
const BODY_PAIRS = 512;

/**
 * What may touch within the next sub-steps. The lists hold until something has moved by the margin; every entry also knows
 * the travel (m, of both sides together) from which it is worth another look (`due`).
 */
export class Candidates {
  readonly capacity: number;
  /** Nodes near shapes, grouped by shape: entries nodeRun[shape] .. nodeRun[shape + 1] − 1. */
  readonly nodeRun: Int32Array;
  readonly node: Int32Array;
  readonly nodeFace: Int32Array;
  readonly nodeDue: Float64Array;
  linkCount = 0;
  /** Links near vertices of shapes. */
  readonly link: Int32Array;
  readonly linkVertex: Int32Array;
  readonly linkDue: Float64Array;
  axisCount = 0;
  /** Links that cross the axis of a fixed capsule. */
  readonly axisLink: Int32Array;
  readonly axisShape: Int32Array;
  bodyPairCount = 0;
  readonly pairA = new Int32Array(BODY_PAIRS);
  readonly pairB = new Int32Array(BODY_PAIRS);
  /** Boxes of runs of six links: min x, min y, max x, max y. */
  readonly runBox: Float64Array;

  constructor(nodeCount: number, shapeCount: number) {
    const n = (this.capacity = 16 * nodeCount + 256);
    this.nodeRun = new Int32Array(shapeCount + 1);
    this.node = new Int32Array(n);
    this.nodeFace = new Int32Array(n);
    this.nodeDue = new Float64Array(n);
    this.link = new Int32Array(n);
    this.linkVertex = new Int32Array(n);
    this.linkDue = new Float64Array(n);
    this.axisLink = new Int32Array(n);
    this.axisShape = new Int32Array(n);
    this.runBox = new Float64Array(4 * (nodeCount + 16));
  }
}

/** Rebuilds the lists that may have missed something: what appeared, or two things that may have closed the margin since. */
export function refreshCandidates(state: SolverState): void {
  const { bodies, strands, settings } = state;
  let ofStrands = 0;
  let sinceShapes = 0;
  let ofBodies = 0;
  for (const strand of strands) {
    if (strand.awake) measureTravel(state, strand);
    ofStrands = Math.max(ofStrands, strand.travel);
    sinceShapes = Math.max(sinceShapes, strand.travel + strand.travelAtShapes);
  }
  for (let b = 0; b < bodies.count; b++) {
    if (bodies.awake[b] === 1) bodies.measureTravel(b);
    if (bodies.travel[b] > ofBodies) ofBodies = bodies.travel[b];
  }
  const reach = settings.margin - settings.slack;
  const pairsDue = state.stale || 2 * ofStrands > reach;
  const shapesDue = pairsDue || ofBodies + Math.max(sinceShapes, ofBodies) > reach;
  if (!shapesDue) return;
  state.stale = false;
  boxStrands(state);
  if (pairsDue) {
    state.nodes.listedX.set(state.nodes.x);
    state.nodes.listedY.set(state.nodes.y);
    for (const strand of strands) strand.travel = 0;
    collectSidePairs(state);
  }
  for (const strand of strands) strand.travelAtShapes = strand.travel;
  for (let b = 0; b < bodies.count; b++) bodies.list(b);
  collectNearShapes(state);
  collectBodyPairs(state);
}

function measureTravel(state: SolverState, strand: Strand): void {
  const { x, y, listedX, listedY } = state.nodes;
  let far2 = 0;
  for (let i = strand.start; i < strand.end; i++) {
    const dx = x[i] - listedX[i];
    const dy = y[i] - listedY[i];
    const d2 = dx * dx + dy * dy;
    if (d2 > far2) far2 = d2;
  }
  strand.travel = Math.sqrt(far2);
}

function boxStrands(state: SolverState): void {
  const { x, y } = state.nodes;
  const { runBox } = state.candidates;
  let run = 0;
  for (const strand of state.strands) {
    strand.firstBox = run;
    for (let i = strand.start; i < strand.end; i += RUN, run++) {
      let minX = 1e9;
      let minY = 1e9;
      let maxX = -1e9;
      let maxY = -1e9;
      const stop = Math.min(i + RUN + 1, strand.end);
      for (let q = i; q < stop; q++) {
        if (x[q] < minX) minX = x[q];
        if (x[q] > maxX) maxX = x[q];
        if (y[q] < minY) minY = y[q];
        if (y[q] > maxY) maxY = y[q];
      }
      runBox[4 * run] = minX;
      runBox[4 * run + 1] = minY;
      runBox[4 * run + 2] = maxX;
      runBox[4 * run + 3] = maxY;
    }
    strand.endBox = run;
  }
}

function collectNearShapes(state: SolverState): void {
  const { candidates, shapes, bodies, strands } = state;
  const counts = { node: 0, link: 0, axis: 0 };
  for (let shape = 0; shape < shapes.count; shape++) {
    candidates.nodeRun[shape] = counts.node;
    const body = shapes.body[shape];
    if (bodies.enabled[body] === 0) continue;
    const bodyAwake = bodies.awake[body] === 1;
    for (const strand of strands) {
      if (!strand.awake && !bodyAwake) continue;
      if (!State.admits(strand.collides, strand.collidesWith, bodies.collides[body], bodies.collidesWith[body])) continue;
      collectStrandNearShape(state, strand, shape, counts);
    }
  }
  candidates.nodeRun[shapes.count] = counts.node;
  candidates.linkCount = counts.link;
  candidates.axisCount = counts.axis;
}

function collectStrandNearShape(state: SolverState, strand: Strand, shape: number, counts: { node: number; link: number; axis: number }): void {
  const { candidates, shapes } = state;
  const { runBox } = candidates;
  const { box } = shapes;
  const body = shapes.body[shape];
  const isHeld = holdsStrand(state, strand, body);
  const grow = growthOf(state, strand, shape);
  const minX = box[4 * shape] - grow;
  const minY = box[4 * shape + 1] - grow;
  const maxX = box[4 * shape + 2] + grow;
  const maxY = box[4 * shape + 3] + grow;
  for (let run = strand.firstBox; run < strand.endBox; run++) {
    if (runBox[4 * run] > maxX || runBox[4 * run + 2] < minX || runBox[4 * run + 1] > maxY || runBox[4 * run + 3] < minY) continue;
    const from = strand.start + RUN * (run - strand.firstBox);
    const to = Math.min(from + RUN, strand.end);
    for (let i = from; i < to; i++) {
      if (isHeld && isNearHold(state, strand, i, body)) continue;
      if (counts.node >= candidates.capacity - 1) continue;
      collectNode(state, strand, shape, i, counts);
      if (i + 1 < strand.end && !(isHeld && isNearHold(state, strand, i + 1, body))) collectLink(state, strand, shape, i, counts);
    }
  }
}

function holdsStrand({ held, nodes }: SolverState, strand: Strand, body: number): boolean {
  for (let k = 0; k < held.length; k++) {
    const i = held[k]!;
    if (nodes.holder[i] === body && i >= strand.start && i < strand.end) return true;
  }
  return false;
}

function growthOf({ bodies, shapes, settings }: SolverState, strand: Strand, shape: number): number {
  return (bodies.inverseMass[shapes.body[shape]] > 0 ? strand.radius : strand.radiusOnStatic) + settings.margin;
}

function collectNode(state: SolverState, strand: Strand, shape: number, i: number, counts: { node: number; link: number; axis: number }): void {
  const { candidates, shapes, nodes } = state;
  const { box } = shapes;
  const x = nodes.x[i];
  const y = nodes.y[i];
  const grow = growthOf(state, strand, shape);
  if (x <= box[4 * shape] - grow || x >= box[4 * shape + 2] + grow || y <= box[4 * shape + 1] - grow || y >= box[4 * shape + 3] + grow) return;
  candidates.node[counts.node] = i;
  candidates.nodeFace[counts.node] = 0;
  candidates.nodeDue[counts.node] = 0;
  counts.node++;
}

function collectLink(state: SolverState, strand: Strand, shape: number, i: number, counts: { node: number; link: number; axis: number }): void {
  const { candidates, shapes, nodes } = state;
  const { x, y } = nodes;
  const { vx, vy, first, isPost } = shapes;
  const start = first[shape];
  const end = first[shape + 1];
  const reach = growthOf(state, strand, shape) + shapes.radius[shape];
  const minX = Math.min(x[i], x[i + 1]) - reach;
  const maxX = Math.max(x[i], x[i + 1]) + reach;
  const minY = Math.min(y[i], y[i + 1]) - reach;
  const maxY = Math.max(y[i], y[i + 1]) + reach;
  for (let v = start; v < end && counts.link < candidates.capacity; v++) {
    if (vx[v] < minX || vx[v] > maxX || vy[v] < minY || vy[v] > maxY) continue;
    candidates.link[counts.link] = i;
    candidates.linkVertex[counts.link] = v;
    candidates.linkDue[counts.link] = 0;
    counts.link++;
  }
  if (isPost[shape] === 0 || counts.axis >= candidates.capacity || !linksCross(x, y, i, vx, vy, start)) return;
  candidates.axisLink[counts.axis] = i;
  candidates.axisShape[counts.axis] = shape;
  counts.axis++;
}

/** A strand does not touch the body that holds it within two nodes of the hold. */
function isNearHold(state: SolverState, strand: Strand, i: number, body: number): boolean {
  const { holder } = state.nodes;
  const to = Math.min(strand.end - 1, i + 2);
  for (let j = Math.max(strand.start, i - 2); j <= to; j++) if (holder[j] === body) return true;
  return false;
}

function collectBodyPairs(state: SolverState): void {
  const { candidates, shapes, settings } = state;
  const { box, body } = shapes;
  const m = settings.margin;
  let n = 0;
  for (let a = 0; a < shapes.count; a++) {
    for (let b = a + 1; b < shapes.count && n < BODY_PAIRS; b++) {
      if (box[4 * a] - m > box[4 * b + 2] || box[4 * b] - m > box[4 * a + 2]) continue;
      if (box[4 * a + 1] - m > box[4 * b + 3] || box[4 * b + 1] - m > box[4 * a + 3]) continue;
      if (!bodiesMeet(state, body[a], body[b])) continue;
      candidates.pairA[n] = a;
      candidates.pairB[n] = b;
      n++;
    }
  }
  candidates.bodyPairCount = n;
}

function bodiesMeet(state: SolverState, a: number, b: number): boolean {
  const { bodies, welds } = state;
  if (a === b || bodies.enabled[a] === 0 || bodies.enabled[b] === 0) return false;
  const aMoves = bodies.isDynamic(a) && bodies.awake[a] === 1;
  const bMoves = bodies.isDynamic(b) && bodies.awake[b] === 1;
  const someoneMoves = aMoves || bMoves || (bodies.isDynamic(a) && bodies.awake[b] === 1) || (bodies.isDynamic(b) && bodies.awake[a] === 1);
  if (!someoneMoves) return false;
  if (!State.admits(bodies.collides[a], bodies.collidesWith[a], bodies.collides[b], bodies.collidesWith[b])) return false;
  for (const weld of welds) if ((weld.a === a && weld.b === b) || (weld.a === b && weld.b === a)) return false;
  return true;
}
