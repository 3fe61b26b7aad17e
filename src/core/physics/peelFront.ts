import { length } from '../base/portableMath.ts';
import { nearestOnCore } from './manifold.ts';
import type { SolverState } from './solverState.ts';
import type { Strand } from './strands.ts';

/** Adhesive of one node: it sticks to a body until the peel front has passed it. */
export interface GlueSpec {
  readonly peelN: number;
  readonly shearN: number;
}

/**
 * The edge of a glued stretch. The last glued node is the front: as it peels it slides back along the skin, and the link to the
 * free side grows by as much, up to two links; then the next node becomes the front and this one is freed in the middle.
 * Peeling follows Kendall's energy balance for a tape that hardly stretches: F (1 − cos θ) = peel force per width × width
 * (K. Kendall, J. Phys. D 8, 1449 (1975)).
 */
export interface PeelFront {
  node: number;
  /** +1 if the free side has the higher node numbers. */
  readonly step: 1 | -1;
  readonly body: number;
  peelN: number;
  shearN: number;
  /** Way the front has moved back from the node's own place (m). */
  receded: number;
  /** The node must come off: the front has passed it, or it was the last one, or it was sheared off. */
  isDone: boolean;
  /** Smoothed pull along the skin (N). */
  pull: number;
  /** Unit vector along the skin towards the free side, in the body's frame. */
  alongX: number;
  alongY: number;
}

const PULL_TIME = 0.005;

/** First node of the front's free link, counted from the strand's start. */
const linkOf = (front: PeelFront, strand: Strand): number => (front.step > 0 ? front.node : front.node - 1) - strand.start;

/** Rebuilds the fronts after nodes were glued or freed; fronts that stay keep their progress. */
export function rebuildFronts(state: SolverState): void {
  const { nodes, strands, glue } = state;
  const old = state.fronts;
  for (const front of old) if (!glue.has(front.node) || glue.has(front.node + front.step)) nodes.rest[front.step > 0 ? front.node : front.node - 1] = strands[nodes.strand[front.node]]!.linkM;
  state.fronts = [];
  for (const [node, spec] of glue) {
    const strand = strands[nodes.strand[node]]!;
    for (const step of [-1, 1] as const) {
      const next = node + step;
      if (next < strand.start || next >= strand.end || glue.has(next)) continue;
      const before = (at: number): PeelFront | undefined => old.find((front) => front.node === at && front.step === step);
      state.fronts.push(before(node) ?? newFront(state, node, step, spec, before(next)));
    }
  }
}

/** `passed` is the front that has just come to this node, if one has: where the free side folds back, only it tells which way along the skin that was. */
function newFront(state: SolverState, node: number, step: 1 | -1, spec: GlueSpec, passed: PeelFront | undefined): PeelFront {
  const { nodes, bodies } = state;
  const body = nodes.holder[node];
  const front: PeelFront = { node, step, body, peelN: spec.peelN, shearN: spec.shearN, receded: 0, isDone: false, pull: 0, alongX: step, alongY: 0 };
  let ax: number;
  let ay: number;
  if (state.glue.has(node - step)) {
    ax = nodes.x[node] - nodes.x[node - step];
    ay = nodes.y[node] - nodes.y[node - step];
  } else { // a single glued node: along the surface under it
    const near = surfaceNormal(state, body, nodes.x[node], nodes.y[node]);
    ax = near.ny;
    ay = -near.nx;
    const out = passed ? skinDirection(state, passed) : { x: nodes.x[node + step] - nodes.x[node], y: nodes.y[node + step] - nodes.y[node] };
    if (ax * out.x + ay * out.y < 0) {
      ax = -ax;
      ay = -ay;
    }
  }
  const size = length(ax, ay) || 1;
  front.alongX = (bodies.c[body] * ax + bodies.s[body] * ay) / size;
  front.alongY = (bodies.c[body] * ay - bodies.s[body] * ax) / size;
  return front;
}

function surfaceNormal(state: SolverState, body: number, x: number, y: number): { nx: number; ny: number } {
  const { shapes } = state;
  let best = { distance: 1e9, nx: 0, ny: 1 };
  for (let shape = shapes.firstOfBody[body]; shape < shapes.firstOfBody[body + 1]; shape++) {
    const near = nearestOnCore(shapes, shape, x, y);
    if (near.distance < best.distance) best = { distance: near.distance, nx: near.nx, ny: near.ny };
  }
  return best;
}

/** After a chain solve: marks the links whose front is loaded beyond its strength. Returns whether any is. */
export function yieldFronts(state: SolverState, strand: Strand): boolean {
  const { chain, nodes, h } = state;
  let yields = false;
  for (const front of state.fronts) {
    if (front.node < strand.start || front.node >= strand.end) continue;
    const k = linkOf(front, strand);
    chain.yieldTension[k] = -1;
    const tension = -chain.multiplier[k] / (h * h);
    if (tension <= 0) continue;
    // Force on the free end of the front, outwards: tension along the link and the shear force of bending.
    const towardsX = front.step * chain.dirX[k];
    const towardsY = front.step * chain.dirY[k];
    const shear = bendingShear(state, strand, front);
    const forceX = tension * towardsX + shear.x;
    const forceY = tension * towardsY + shear.y;
    const force = length(forceX, forceY);
    const skin = skinDirection(state, front);
    const along = forceX * skin.x + forceY * skin.y;
    front.pull += (Math.abs(along) - front.pull) * Math.min(1, h / PULL_TIME);
    if (front.pull > front.shearN) front.isDone = true;
    if (force - along <= front.peelN) continue;
    if (!state.glue.has(front.node - front.step)) { // nothing left to recede along
      front.isDone = true;
      continue;
    }
    const mx = forceX / force - skin.x;
    const my = forceY / force - skin.y;
    const lever = towardsX * mx + towardsY * my;
    if (lever <= 1e-6) continue;
    chain.yieldTension[k] = Math.max(0, (front.peelN - shear.x * mx - shear.y * my) / lever);
    nodes.contactState[front.node] = 0;
    yields = true;
  }
  return yields;
}

/** Transverse force (N) that bending carries across the front link. */
function bendingShear(state: SolverState, strand: Strand, front: PeelFront): { x: number; y: number } {
  const { prevX, prevY } = state.nodes;
  const { node, step } = front;
  const out2 = node + 2 * step;
  const back = node - step;
  if (strand.bendFactor === 0 || out2 < strand.start || out2 >= strand.end || back < strand.start || back >= strand.end) return { x: 0, y: 0 };
  const f = strand.bendFactor / (state.h * state.h);
  const at = (p: Float64Array, i: number): number => p[i - 1] - 2 * p[i] + p[i + 1];
  return { x: f * (at(prevX, node) - at(prevX, node + step)), y: f * (at(prevY, node) - at(prevY, node + step)) };
}

function skinDirection(state: SolverState, front: PeelFront): { x: number; y: number } {
  const { c, s } = state.bodies;
  const b = front.body;
  return { x: c[b] * front.alongX - s[b] * front.alongY, y: s[b] * front.alongX + c[b] * front.alongY };
}

/** After the chain was applied: lets yielding fronts recede by the length that their links still lack. */
export function finishFronts(state: SolverState, strand: Strand): void {
  const { chain, nodes } = state;
  for (const front of state.fronts) {
    if (front.node < strand.start || front.node >= strand.end) continue;
    const k = linkOf(front, strand);
    const tension = chain.yieldTension[k];
    if (tension < 0) continue;
    chain.yieldTension[k] = -1;
    const a = strand.start + k;
    const dx = nodes.x[a + 1] - nodes.x[a];
    const dy = nodes.y[a + 1] - nodes.y[a];
    const size = length(dx, dy);
    const skin = skinDirection(state, front);
    const cosine = (front.step * (dx * skin.x + dy * skin.y)) / size;
    const lacking = size - nodes.rest[a] - (tension * nodes.rest[a]) / strand.stiffnessN;
    if (lacking <= 0 || cosine > 0.9999) continue;
    const way = Math.min(lacking / (1 - cosine), strand.linkM);
    front.receded += way;
    nodes.rest[a] += way;
    if (front.receded >= strand.linkM) front.isDone = true;
    nodes.localX[front.node] -= way * front.alongX;
    nodes.localY[front.node] -= way * front.alongY;
  }
}
