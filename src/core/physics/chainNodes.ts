import type { ChainScratch } from './chainScratch.ts';
import type { SolverState } from './solverState.ts';
import type { Strand } from './strands.ts';

/** Describes every node of a strand as if it touched nothing: free nodes by their mass, held nodes by their body. */
export function describeNodes(state: SolverState, strand: Strand): void {
  const { nodes, chain, held } = state;
  const { inverseMass } = nodes;
  const { dirX, dirY, before, after, lower, upper, shiftBefore, shiftAfter } = chain;
  const { start } = strand;
  const links = strand.size - 1;
  shiftBefore.fill(0, 0, links + 1);
  shiftAfter.fill(0, 0, links + 1);
  before[0] = 0;
  after[0] = inverseMass[start];
  for (let k = 1; k < links; k++) {
    const w = inverseMass[start + k];
    before[k] = w;
    after[k] = w;
    lower[k] = upper[k] = -w * (dirX[k - 1] * dirX[k] + dirY[k - 1] * dirY[k]);
  }
  before[links] = inverseMass[start + links];
  after[links] = 0;
  for (let q = 0; q < held.length; q++) {
    const i = held[q]!;
    if (i >= start && i < strand.end) describeHeld(state, i, i - start, links);
  }
}

function describeHeld(state: SolverState, i: number, k: number, links: number): void {
  const { nodes, bodies, chain } = state;
  const b = nodes.holder[i];
  const armX = nodes.x[i] - bodies.x[b] - bodies.dx[b];
  const armY = nodes.y[i] - bodies.y[b] - bodies.dy[b];
  const inertia = bodies.inverseInertia[b];
  const mass = bodies.inverseMass[b];
  const cross = -inertia * armX * armY;
  describeMatrix(chain, k, links, mass + inertia * armY * armY, cross, cross, mass + inertia * armX * armX);
}

/** Describes a free node that touches nothing. */
export function describeFree(chain: ChainScratch, k: number, links: number, w: number): void {
  chain.shiftBefore[k] = chain.shiftAfter[k] = 0;
  chain.before[k] = k > 0 ? w : 0;
  chain.after[k] = k < links ? w : 0;
  if (k > 0 && k < links) chain.lower[k] = chain.upper[k] = -w * (chain.dirX[k - 1] * chain.dirX[k] + chain.dirY[k - 1] * chain.dirY[k]);
}

/** Describes a node that answers a force f with the displacement M f, M = [[xx, xy], [yx, yy]] in 1/kg. */
export function describeMatrix(chain: ChainScratch, k: number, links: number, xx: number, xy: number, yx: number, yy: number): void {
  const { dirX, dirY } = chain;
  const ax = k > 0 ? dirX[k - 1] : 0;
  const ay = k > 0 ? dirY[k - 1] : 0;
  const bx = k < links ? dirX[k] : 0;
  const by = k < links ? dirY[k] : 0;
  const leftX = xx * ax + xy * ay;
  const leftY = yx * ax + yy * ay;
  const rightX = xx * bx + xy * by;
  const rightY = yx * bx + yy * by;
  chain.before[k] = ax * leftX + ay * leftY;
  chain.after[k] = bx * rightX + by * rightY;
  chain.upper[k] = -(ax * rightX + ay * rightY);
  chain.lower[k] = -(bx * leftX + by * leftY);
}

/** Gives a node an offset (m) that the links on both sides have to follow. */
export function describeOffset(chain: ChainScratch, k: number, links: number, x: number, y: number): void {
  chain.offsetX[k] = x;
  chain.offsetY[k] = y;
  chain.shiftBefore[k] = k > 0 ? -(chain.dirX[k - 1] * x + chain.dirY[k - 1] * y) : 0;
  chain.shiftAfter[k] = k < links ? chain.dirX[k] * x + chain.dirY[k] * y : 0;
}
