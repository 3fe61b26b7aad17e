import type { ChainScratch } from './chainScratch.ts';
import { beginContactStates, describeContacts, reviseContactStates } from './chainContacts.ts';
import { finishFronts, yieldFronts } from './peelFront.ts';
import type { SolverState } from './solverState.ts';
import type { Strand } from './strands.ts';
import { applyChain } from './chainApply.ts';

/**
 * Restores the lengths of all links of a strand at once: (J W Jᵀ + l/(EA h²)) λ = −(C + J c), a tridiagonal system solved directly,
 * so that a chain does not stretch at any ratio of masses. W is the answer of each node to a force: w·1 when free, the point
 * matrix of the body when held, none along what the node sticks to. Whether a touching node is free, sticks or slides is found
 * by solving again until the assumed states agree with the result (active set); otherwise a taut cord ignores friction.
 */
export function solveChain(state: SolverState, strand: Strand): void {
  const { chain, settings } = state;
  measureLinks(state, strand);
  describeHeld(state, strand);
  let touches = beginContactStates(state, strand);
  for (let round = touches ? settings.stateRounds : 0; ; round--) {
    if (touches) describeContacts(state, strand);
    assemble(state, strand);
    eliminate(chain, strand.size - 1);
    if (!touches) break;
    if (reviseContactStates(state, strand) === 0) break;
    if (round <= 1) { // not settled: solve without contact states, but keep them as the next guess
      touches = false;
      clearContacts(state, strand);
    }
  }
  const yields = state.fronts.length > 0 && yieldFronts(state, strand);
  if (yields) {
    assemble(state, strand);
    eliminate(chain, strand.size - 1);
  }
  applyChain(state, strand, touches);
  if (yields) finishFronts(state, strand);
}

function measureLinks(state: SolverState, strand: Strand): void {
  const { x, y, rest } = state.nodes;
  const { dirX, dirY, excess } = state.chain;
  const { start } = strand;
  let px = x[start];
  let py = y[start];
  for (let k = 0, links = strand.size - 1; k < links; k++) {
    const qx = x[start + k + 1];
    const qy = y[start + k + 1];
    const dx = qx - px;
    const dy = qy - py;
    const length = Math.sqrt(dx * dx + dy * dy);
    const inverse = 1 / (length > 1e-12 ? length : 1e-12);
    dirX[k] = dx * inverse;
    dirY[k] = dy * inverse;
    excess[k] = length - rest[start + k];
    px = qx;
    py = qy;
  }
}

/** Point matrices of held nodes; all others start as plain. */
function describeHeld(state: SolverState, strand: Strand): void {
  const { nodes, bodies, chain, held } = state;
  chain.isSpecial.fill(0, 0, strand.size);
  for (let q = 0; q < held.length; q++) {
    const i = held[q]!;
    if (i < strand.start || i >= strand.end) continue;
    const k = i - strand.start;
    const b = nodes.holder[i];
    const armX = nodes.x[i] - bodies.x[b] - bodies.dx[b];
    const armY = nodes.y[i] - bodies.y[b] - bodies.dy[b];
    const inertia = bodies.inverseInertia[b];
    chain.isSpecial[k] = 1;
    chain.xx[k] = bodies.inverseMass[b] + inertia * armY * armY;
    chain.xy[k] = chain.yx[k] = -inertia * armX * armY;
    chain.yy[k] = bodies.inverseMass[b] + inertia * armX * armX;
    chain.offsetX[k] = 0;
    chain.offsetY[k] = 0;
  }
}

function clearContacts(state: SolverState, strand: Strand): void {
  for (let k = 0; k < strand.size; k++) if (state.nodes.holder[strand.start + k] < 0) state.chain.isSpecial[k] = 0;
}

/** Fills the tridiagonal system. */
function assemble(state: SolverState, strand: Strand): void {
  const { inverseMass } = state.nodes;
  const { dirX, dirY, excess, lower, diagonal, upper, multiplier, isSpecial, xx, xy, yx, yy, offsetX, offsetY } = state.chain;
  const { start, compliance } = strand;
  const links = strand.size - 1;
  for (let k = 0; k < links; k++) {
    diagonal[k] = compliance;
    multiplier[k] = -excess[k];
  }
  for (let k = 0; k <= links; k++) {
    if (isSpecial[k] === 0) {
      const w = inverseMass[start + k];
      if (k > 0) diagonal[k - 1] += w;
      if (k < links) diagonal[k] += w;
      if (k > 0 && k < links) lower[k - 1] = upper[k - 1] = -w * (dirX[k - 1] * dirX[k] + dirY[k - 1] * dirY[k]);
      continue;
    }
    const cx = offsetX[k];
    const cy = offsetY[k];
    let leftX = 0;
    let leftY = 0;
    if (k > 0) {
      const ax = dirX[k - 1];
      const ay = dirY[k - 1];
      leftX = xx[k] * ax + xy[k] * ay;
      leftY = yx[k] * ax + yy[k] * ay;
      diagonal[k - 1] += ax * leftX + ay * leftY;
      multiplier[k - 1] -= ax * cx + ay * cy;
    }
    if (k < links) {
      const bx = dirX[k];
      const by = dirY[k];
      const rightX = xx[k] * bx + xy[k] * by;
      const rightY = yx[k] * bx + yy[k] * by;
      diagonal[k] += bx * rightX + by * rightY;
      multiplier[k] += bx * cx + by * cy;
      if (k > 0) {
        upper[k - 1] = -(dirX[k - 1] * rightX + dirY[k - 1] * rightY);
        lower[k - 1] = -(bx * leftX + by * leftY);
      }
    }
  }
  if (state.fronts.length > 0) imposeYields(state.chain, links, state.h);
}

/** A yielding link carries exactly its yield tension. */
function imposeYields(chain: ChainScratch, links: number, h: number): void {
  for (let k = 0; k < links; k++) {
    if (chain.yieldTension[k] < 0) continue;
    chain.diagonal[k] = 1;
    if (k > 0) chain.lower[k - 1] = 0;
    chain.upper[k] = 0;
    chain.multiplier[k] = -chain.yieldTension[k] * h * h;
  }
}

/** Thomas elimination: lower[k − 1] is the entry left of the diagonal in row k, upper[k] that right of it. */
function eliminate(chain: ChainScratch, links: number): void {
  const { lower, diagonal, upper, multiplier, pivot } = chain;
  let inverse = 1 / diagonal[0];
  let value = multiplier[0];
  pivot[0] = inverse;
  for (let k = 1; k < links; k++) {
    const factor = lower[k - 1] * inverse;
    inverse = 1 / (diagonal[k] - factor * upper[k - 1]);
    value = multiplier[k] - factor * value;
    multiplier[k] = value;
    pivot[k] = inverse;
  }
  value = multiplier[links - 1] * pivot[links - 1];
  multiplier[links - 1] = value;
  for (let k = links - 2; k >= 0; k--) {
    value = (multiplier[k] - upper[k] * value) * pivot[k];
    multiplier[k] = value;
  }
}
