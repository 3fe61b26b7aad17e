import type { SolverState } from './solverState.ts';
import { moveBody } from './softPass.ts';
import type { Strand } from './strands.ts';

const HOLD_TIME = 0.005;

/** Applies the solution of the chain: moves free nodes, pushes holding bodies, and books the loads of touching nodes. */
export function applyChain(state: SolverState, strand: Strand, touches: boolean): void {
  const { nodes, chain, h } = state;
  const { x, y, inverseMass, holder, contactState } = nodes;
  const { dirX, dirY, multiplier } = chain;
  const links = strand.size - 1;
  let beforeX = 0;
  let beforeY = 0;
  let most = 0;
  let last = 0;
  for (let k = 0; k <= links; k++) {
    const i = strand.start + k;
    let qx = beforeX;
    let qy = beforeY;
    if (k < links) {
      beforeX = multiplier[k] * dirX[k];
      beforeY = multiplier[k] * dirY[k];
      qx -= beforeX;
      qy -= beforeY;
      // Of two neighbours the slacker one counts: jolts of single links are not what makes a strand taut.
      const slacker = multiplier[k] > last ? multiplier[k] : last;
      if (slacker < most) most = slacker;
      last = multiplier[k];
    }
    if (holder[i] >= 0) pullHolder(state, i, qx, qy);
    else if (touches && contactState[i] !== 0) applyToTouching(state, i, k, qx, qy);
    else {
      x[i] += inverseMass[i] * qx;
      y[i] += inverseMass[i] * qy;
    }
  }
  const hh = h * h;
  strand.tension += 0.25 * (-most / hh - strand.tension);
  strand.tensionAtStart = -multiplier[0] / hh;
  strand.tensionAtEnd = -multiplier[links - 1] / hh;
}

function pullHolder(state: SolverState, i: number, qx: number, qy: number): void {
  const { nodes, bodies, h } = state;
  const b = nodes.holder[i];
  moveBody(bodies, b, nodes.x[i] - bodies.x[b] - bodies.dx[b], nodes.y[i] - bodies.y[b] - bodies.dy[b], qx, qy);
  const force = Math.sqrt(qx * qx + qy * qy) / (h * h);
  nodes.holdForce[i] += (force - nodes.holdForce[i]) * Math.min(1, h / HOLD_TIME);
}

function applyToTouching(state: SolverState, i: number, k: number, qx: number, qy: number): void {
  const { nodes, chain, fixed } = state;
  const { x, y, prevX, prevY } = nodes;
  const c = fixed.ofNode[i];
  const nx = fixed.nx[c];
  const ny = fixed.ny[c];
  const w = nodes.inverseMass[i];
  const ux = x[i] - prevX[i] - fixed.surfaceX[c];
  const uy = y[i] - prevY[i] - fixed.surfaceY[c];
  const close = -(fixed.gap[c] + nx * ux + ny * uy);
  const load = Math.max(0, fixed.load[c] + close - w * (nx * qx + ny * qy));
  if (nodes.contactState[i] === 1) {
    fixed.shear[c] -= nx * uy - ny * ux + w * (nx * qy - ny * qx);
    x[i] += chain.offsetX[k];
    y[i] += chain.offsetY[k];
  } else {
    const shear = nodes.slideSign[i] * fixed.friction[c] * load;
    const along = shear - fixed.shear[c] + w * (nx * qy - ny * qx);
    fixed.shear[c] = shear;
    x[i] += nx * close - ny * along;
    y[i] += ny * close + nx * along;
  }
  fixed.load[c] = load;
}
