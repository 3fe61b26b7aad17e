import type { SolverState } from './solverState.ts';
import type { Strand } from './strands.ts';

/** States of a node that touches something fixed. */
const FREE = 0;
const STICKS = 1;
const SLIDES = 2;
/** Overlap and backward slip (m) below which a state is left as it is, so that rounding does not make it flip. */
const TOUCH_M = 1e-8;
const SLIP_M = 1e-9;

/**
 * Guesses the states of touching nodes: those of the last sub-step, and for new contacts what the first contact pass says.
 * Returns whether the states matter; a slack strand is served as well by the separate contact passes.
 */
export function beginContactStates(state: SolverState, strand: Strand): boolean {
  const { nodes, fixed, settings, chain, h } = state;
  chain.touching = 0;
  if (fixed.count === 0 || (strand.tension * h * h) / strand.nodeMass <= settings.tautFrom) return false;
  const { contactState, slideSign, holder, x, y, prevX, prevY } = nodes;
  const { ofNode, nx, ny, gap, load, shear, friction, surfaceX, surfaceY } = fixed;
  const { touch, changed, close, slip, pressed } = chain;
  const { start, end } = strand;
  let touching = 0;
  let engaged = 0;
  for (let i = start; i < end; i++) {
    const c = ofNode[i];
    if (c < 0 || holder[i] >= 0) {
      contactState[i] = FREE;
      continue;
    }
    const k = i - start;
    touch[touching++] = i;
    const ux = x[i] - prevX[i] - surfaceX[c];
    const uy = y[i] - prevY[i] - surfaceY[c];
    const closing = -(gap[c] + nx[c] * ux + ny[c] * uy);
    close[k] = closing;
    slip[k] = nx[c] * uy - ny[c] * ux;
    pressed[k] = load[c] + closing;
    if (contactState[i] === FREE) {
      if (load[c] <= 0) continue;
      // A frictionless contact must never be tried as sticking: it would flip for ever.
      const sticks = friction[c] > 0 && Math.abs(shear[c]) < friction[c] * load[c] * 0.999999;
      contactState[i] = sticks ? STICKS : SLIDES;
      slideSign[i] = shear[c] > 0 ? 1 : -1;
    }
    changed[engaged++] = i;
  }
  chain.touching = touching;
  describeChanged(state, strand, engaged);
  return engaged > 0;
}

/** Writes the answers of the first `count` listed nodes, given their states: none when one sticks, w t (t − σ µ n)ᵀ when it slides. */
function describeChanged(state: SolverState, strand: Strand, count: number): void {
  const { nodes, fixed, chain } = state;
  const { contactState, slideSign, inverseMass } = nodes;
  const { ofNode, nx: normalX, ny: normalY, shear, friction } = fixed;
  const { changed, close, slip, pressed, dirX, dirY, before, after, lower, upper, shiftBefore, shiftAfter, offsetX, offsetY } = chain;
  const { start } = strand;
  const links = strand.size - 1;
  for (let q = 0; q < count; q++) {
    const i = changed[q];
    const k = i - start;
    const kind = contactState[i];
    const w = inverseMass[i];
    const ax = k > 0 ? dirX[k - 1] : 0;
    const ay = k > 0 ? dirY[k - 1] : 0;
    const bx = k < links ? dirX[k] : 0;
    const by = k < links ? dirY[k] : 0;
    if (kind === FREE) {
      shiftBefore[k] = shiftAfter[k] = 0;
      before[k] = k > 0 ? w : 0;
      after[k] = k < links ? w : 0;
      lower[k] = upper[k] = -w * (ax * bx + ay * by);
      continue;
    }
    const c = ofNode[i];
    const nx = normalX[c];
    const ny = normalY[c];
    let along = -slip[k];
    if (kind === STICKS) before[k] = after[k] = lower[k] = upper[k] = 0;
    else {
      const rub = slideSign[i] * friction[c];
      along = rub * pressed[k] - shear[c];
      // Along the tangent t = (−ny, nx), as a rubbing surface lets go; the symmetric form instead where the diagonal would not stay positive.
      const alongBefore = ax * -ny + ay * nx;
      const alongAfter = bx * -ny + by * nx;
      let vx = -ny - rub * nx;
      let vy = nx + rub * -ny;
      if (alongBefore * (ax * vx + ay * vy) < 0.1 * alongBefore * alongBefore || alongAfter * (bx * vx + by * vy) < 0.1 * alongAfter * alongAfter) {
        vx = -ny;
        vy = nx;
      }
      const xx = w * -ny * vx;
      const xy = w * -ny * vy;
      const yx = w * nx * vx;
      const yy = w * nx * vy;
      const leftX = xx * ax + xy * ay;
      const leftY = yx * ax + yy * ay;
      const rightX = xx * bx + xy * by;
      const rightY = yx * bx + yy * by;
      before[k] = ax * leftX + ay * leftY;
      after[k] = bx * rightX + by * rightY;
      upper[k] = -(ax * rightX + ay * rightY);
      lower[k] = -(bx * leftX + by * leftY);
    }
    const x = nx * close[k] - ny * along;
    const y = ny * close[k] + nx * along;
    offsetX[k] = x;
    offsetY[k] = y;
    shiftBefore[k] = -(ax * x + ay * y);
    shiftAfter[k] = bx * x + by * y;
  }
}

/**
 * Checks the states against the solution and changes those that disagree, to firmer ones only if `mayTighten`. Only nodes at links
 * that were solved anew can disagree. Returns how many changed; they are listed in order.
 */
export function reviseContactStates(state: SolverState, strand: Strand, mayTighten: boolean): number {
  const { nodes, fixed, chain } = state;
  const { contactState, slideSign, inverseMass } = nodes;
  const { ofNode, nx: normalX, ny: normalY, shear, friction } = fixed;
  const { touch, changed, slip, pressed, dirX, dirY, multiplier, touching } = chain;
  const { start } = strand;
  const from = start + chain.solvedFrom;
  const to = start + chain.solvedTo;
  const links = strand.size - 1;
  let count = 0;
  for (let q = 0; q < touching; q++) {
    const i = touch[q];
    if (i < from) continue;
    if (i > to) break;
    const kind = contactState[i];
    if (kind === FREE && !mayTighten) continue;
    const k = i - start;
    const c = ofNode[i];
    const nx = normalX[c];
    const ny = normalY[c];
    const before = k > 0 ? multiplier[k - 1] : 0;
    const after = k < links ? multiplier[k] : 0;
    const qx = (k > 0 ? before * dirX[k - 1] : 0) - after * dirX[k];
    const qy = (k > 0 ? before * dirY[k - 1] : 0) - after * dirY[k];
    const w = inverseMass[i];
    const load = pressed[k] - w * (nx * qx + ny * qy);
    if (kind === FREE) {
      if (load <= TOUCH_M) continue; // stays clear of the surface
      contactState[i] = friction[c] > 0 ? STICKS : SLIDES;
      slideSign[i] = slip[k] > 0 ? -1 : 1;
    } else if (load < 0) contactState[i] = FREE;
    else {
      const limit = friction[c] * load;
      const pull = w * (nx * qy - ny * qx);
      if (kind === STICKS) {
        const held = shear[c] - slip[k] - pull;
        if (held <= limit && held >= -limit) continue;
        contactState[i] = SLIDES;
        slideSign[i] = held > 0 ? 1 : -1;
      } else {
        if (!mayTighten || friction[c] === 0) continue;
        const sign = slideSign[i];
        const rest = sign * limit - shear[c] + pull;
        if ((slip[k] + rest) * sign <= SLIP_M) continue; // slides against its friction, as it must
        contactState[i] = STICKS;
      }
    }
    changed[count++] = i;
  }
  describeChanged(state, strand, count);
  return count;
}
