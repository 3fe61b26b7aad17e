import type { SolverState } from './solverState.ts';
import type { Strand } from './strands.ts';

/** Measures the links of a strand and describes every node as if it touched nothing: free nodes by their mass, held nodes by their body. */
export function describeLinks(state: SolverState, strand: Strand): void {
  const { nodes, chain } = state;
  const { x, y, rest, inverseMass } = nodes;
  const { dirX, dirY, excess, before, after, lower, upper } = chain;
  const { start } = strand;
  const links = strand.size - 1;
  let px = x[start];
  let py = y[start];
  let beforeX = 0;
  let beforeY = 0;
  for (let k = 0; k < links; k++) {
    const qx = x[start + k + 1];
    const qy = y[start + k + 1];
    const dx = qx - px;
    const dy = qy - py;
    const length = Math.sqrt(dx * dx + dy * dy);
    const inverse = 1 / (length > 1e-12 ? length : 1e-12);
    const afterX = dx * inverse;
    const afterY = dy * inverse;
    const w = inverseMass[start + k];
    dirX[k] = afterX;
    dirY[k] = afterY;
    excess[k] = length - rest[start + k];
    before[k] = after[k] = w;
    lower[k] = upper[k] = -w * (beforeX * afterX + beforeY * afterY);
    px = qx;
    py = qy;
    beforeX = afterX;
    beforeY = afterY;
  }
  finishEnds(state, strand);
}

/** Describes the nodes of measured links again, as if they touched nothing. */
export function describeNodes(state: SolverState, strand: Strand): void {
  const { nodes, chain } = state;
  const { inverseMass } = nodes;
  const { dirX, dirY, before, after, lower, upper } = chain;
  const { start } = strand;
  for (let k = 1, links = strand.size - 1; k < links; k++) {
    const w = inverseMass[start + k];
    before[k] = after[k] = w;
    lower[k] = upper[k] = -w * (dirX[k - 1] * dirX[k] + dirY[k - 1] * dirY[k]);
  }
  finishEnds(state, strand);
}

/** The end nodes have one link each; held nodes answer as their bodies do; no node has an offset. */
function finishEnds(state: SolverState, strand: Strand): void {
  const { nodes, chain, held } = state;
  const { before, after, shiftBefore, shiftAfter } = chain;
  const { start, end } = strand;
  const links = strand.size - 1;
  shiftBefore.fill(0, 0, links + 1);
  shiftAfter.fill(0, 0, links + 1);
  before[0] = 0;
  after[0] = nodes.inverseMass[start];
  before[links] = nodes.inverseMass[start + links];
  after[links] = 0;
  for (let q = 0; q < held.length; q++) {
    const i = held[q]!;
    if (i >= start && i < end) describeHeld(state, i, i - start, links);
  }
}

/** A held node answers a force f with the displacement M f, M = [[xx, xy], [xy, yy]] in 1/kg. */
function describeHeld(state: SolverState, i: number, k: number, links: number): void {
  const { nodes, bodies, chain } = state;
  const { dirX, dirY } = chain;
  const b = nodes.holder[i];
  const armX = nodes.x[i] - bodies.x[b] - bodies.dx[b];
  const armY = nodes.y[i] - bodies.y[b] - bodies.dy[b];
  const inertia = bodies.inverseInertia[b];
  const mass = bodies.inverseMass[b];
  const xx = mass + inertia * armY * armY;
  const xy = -inertia * armX * armY;
  const yy = mass + inertia * armX * armX;
  const ax = k > 0 ? dirX[k - 1] : 0;
  const ay = k > 0 ? dirY[k - 1] : 0;
  const bx = k < links ? dirX[k] : 0;
  const by = k < links ? dirY[k] : 0;
  const leftX = xx * ax + xy * ay;
  const leftY = xy * ax + yy * ay;
  const rightX = xx * bx + xy * by;
  const rightY = xy * bx + yy * by;
  chain.before[k] = ax * leftX + ay * leftY;
  chain.after[k] = bx * rightX + by * rightY;
  chain.upper[k] = -(ax * rightX + ay * rightY);
  chain.lower[k] = -(bx * leftX + by * leftY);
}
