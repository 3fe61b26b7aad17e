import type { SolverState } from './solverState.ts';
import { moveBody } from './softPass.ts';
import type { Strand } from './strands.ts';

const HOLD_TIME = 0.005;

/** Applies the solution of the chain: moves free nodes, pushes holding bodies, and books the loads of touching nodes. */
export function applyChain(state: SolverState, strand: Strand, touches: boolean): void {
  const { nodes, chain, fixed, h } = state;
  const { x, y, inverseMass, holder, contactState, slideSign } = nodes;
  const { dirX, dirY, multiplier, offsetX, offsetY, close, slip, pressed } = chain;
  const { ofNode, nx: normalX, ny: normalY, load, shear, friction } = fixed;
  const { start } = strand;
  const links = strand.size - 1;
  let beforeX = 0;
  let beforeY = 0;
  let most = 0;
  let last = 0;
  for (let k = 0; k <= links; k++) {
    const i = start + k;
    let qx = beforeX;
    let qy = beforeY;
    if (k < links) {
      const value = multiplier[k];
      beforeX = value * dirX[k];
      beforeY = value * dirY[k];
      qx -= beforeX;
      qy -= beforeY;
      // Of two neighbours the slacker one counts: jolts of single links are not what makes a strand taut.
      const slacker = value > last ? value : last;
      if (slacker < most) most = slacker;
      last = value;
    }
    const w = inverseMass[i];
    if (holder[i] >= 0) pullHolder(state, i, qx, qy);
    else if (touches && contactState[i] !== 0) {
      const c = ofNode[i];
      const nx = normalX[c];
      const ny = normalY[c];
      const left = pressed[k] - w * (nx * qx + ny * qy);
      const kept = left > 0 ? left : 0;
      const turned = w * (nx * qy - ny * qx);
      load[c] = kept;
      if (contactState[i] === 1) {
        shear[c] -= slip[k] + turned;
        x[i] += offsetX[k];
        y[i] += offsetY[k];
      } else {
        const rub = slideSign[i] * friction[c] * kept;
        const along = rub - shear[c] + turned;
        shear[c] = rub;
        x[i] += nx * close[k] - ny * along;
        y[i] += ny * close[k] + nx * along;
      }
    } else {
      x[i] += w * qx;
      y[i] += w * qy;
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
