import type { SolverState } from './solverState.ts';
import type { Strand } from './strands.ts';

/** States of a node that touches something fixed. */
const FREE = 0;
const STICKS = 1;
const SLIDES = 2;

/**
 * Guesses the states of touching nodes: those of the last sub-step, and for new contacts what the first contact pass says.
 * Returns whether the states matter; a slack strand is served as well by the separate contact passes.
 */
export function beginContactStates(state: SolverState, strand: Strand): boolean {
  const { nodes, fixed, settings, h } = state;
  const { contactState, slideSign } = nodes;
  if (fixed.count === 0 || (strand.tension * h * h) / strand.nodeMass <= settings.tautFrom) return false;
  let touches = false;
  for (let i = strand.start; i < strand.end; i++) {
    const c = fixed.ofNode[i];
    if (c < 0) {
      contactState[i] = FREE;
      continue;
    }
    if (contactState[i] === FREE) {
      if (fixed.load[c] <= 0) continue;
      const shear = fixed.shear[c];
      // A frictionless contact must never be tried as sticking: it would flip for ever.
      if (fixed.friction[c] > 0 && Math.abs(shear) < fixed.friction[c] * fixed.load[c] * 0.999999) contactState[i] = STICKS;
      else {
        contactState[i] = SLIDES;
        slideSign[i] = shear > 0 ? 1 : -1;
      }
    }
    touches = true;
  }
  return touches;
}

/** Writes the answer of each touching node, given its state: none when it sticks, w t (t − σ µ n)ᵀ when it slides. */
export function describeContacts(state: SolverState, strand: Strand): void {
  const { nodes, fixed, chain } = state;
  for (let k = 0; k < strand.size; k++) {
    const i = strand.start + k;
    if (nodes.holder[i] >= 0) continue;
    const s = nodes.contactState[i];
    const c = fixed.ofNode[i];
    if (s === FREE || c < 0) {
      chain.isSpecial[k] = 0;
      continue;
    }
    chain.isSpecial[k] = 1;
    const nx = fixed.nx[c];
    const ny = fixed.ny[c];
    const ux = nodes.x[i] - nodes.prevX[i] - fixed.surfaceX[c];
    const uy = nodes.y[i] - nodes.prevY[i] - fixed.surfaceY[c];
    const close = -(fixed.gap[c] + nx * ux + ny * uy);
    if (s === STICKS) {
      const back = -(nx * uy - ny * ux);
      chain.offsetX[k] = nx * close - ny * back;
      chain.offsetY[k] = ny * close + nx * back;
      chain.xx[k] = chain.xy[k] = chain.yx[k] = chain.yy[k] = 0;
      continue;
    }
    const rub = nodes.slideSign[i] * fixed.friction[c];
    const along = rub * (fixed.load[c] + close) - fixed.shear[c];
    chain.offsetX[k] = nx * close - ny * along;
    chain.offsetY[k] = ny * close + nx * along;
    describeSliding(state, strand, k, -ny, nx, rub);
  }
}

function describeSliding(state: SolverState, strand: Strand, k: number, tx: number, ty: number, rub: number): void {
  const { chain, nodes } = state;
  const { dirX, dirY } = chain;
  let vx = tx - rub * ty; // n = (ty, −tx)
  let vy = ty + rub * tx;
  // Keep the diagonal positive, else fall back to the symmetric form.
  if (k > 0 && !keepsSign(dirX[k - 1], dirY[k - 1], tx, ty, vx, vy)) {
    vx = tx;
    vy = ty;
  }
  if (k < strand.size - 1 && !keepsSign(dirX[k], dirY[k], tx, ty, vx, vy)) {
    vx = tx;
    vy = ty;
  }
  const w = nodes.inverseMass[strand.start + k];
  chain.xx[k] = w * tx * vx;
  chain.xy[k] = w * tx * vy;
  chain.yx[k] = w * ty * vx;
  chain.yy[k] = w * ty * vy;
}

function keepsSign(dirX: number, dirY: number, tx: number, ty: number, vx: number, vy: number): boolean {
  const along = dirX * tx + dirY * ty;
  return along * (dirX * vx + dirY * vy) >= 0.1 * along * along;
}

/** Checks the states against the solution and changes those that disagree; returns how many did. */
export function reviseContactStates(state: SolverState, strand: Strand): number {
  const { nodes, fixed, chain } = state;
  const { contactState, slideSign, inverseMass, holder } = nodes;
  const { dirX, dirY, multiplier } = chain;
  const links = strand.size - 1;
  let changes = 0;
  for (let k = 0; k <= links; k++) {
    const i = strand.start + k;
    const s = contactState[i];
    if (holder[i] >= 0) continue;
    const c = fixed.ofNode[i];
    if (c < 0) continue;
    const nx = fixed.nx[c];
    const ny = fixed.ny[c];
    const qx = (k > 0 ? multiplier[k - 1] * dirX[k - 1] : 0) - (k < links ? multiplier[k] * dirX[k] : 0);
    const qy = (k > 0 ? multiplier[k - 1] * dirY[k - 1] : 0) - (k < links ? multiplier[k] * dirY[k] : 0);
    const w = inverseMass[i];
    const ux = nodes.x[i] - nodes.prevX[i] - fixed.surfaceX[c];
    const uy = nodes.y[i] - nodes.prevY[i] - fixed.surfaceY[c];
    const slip = nx * uy - ny * ux;
    const pull = w * (nx * qy - ny * qx);
    const load = fixed.load[c] - (fixed.gap[c] + nx * ux + ny * uy) - w * (nx * qx + ny * qy);
    const limit = fixed.friction[c] * load;
    if (s === FREE) {
      if (load <= 0) continue; // stays clear of the surface
      contactState[i] = fixed.friction[c] > 0 ? STICKS : SLIDES;
      slideSign[i] = slip > 0 ? -1 : 1;
      changes++;
    } else if (load < 0) {
      contactState[i] = FREE;
      changes++;
    } else if (s === STICKS) {
      const shear = fixed.shear[c] - slip - pull;
      if (shear <= limit && shear >= -limit) continue;
      contactState[i] = SLIDES;
      slideSign[i] = shear > 0 ? 1 : -1;
      changes++;
    } else if (fixed.friction[c] > 0) {
      const rest = slideSign[i] * limit - fixed.shear[c] + pull;
      if ((slip + rest) * slideSign[i] <= 0) continue; // slides against its friction, as it must
      contactState[i] = STICKS;
      changes++;
    }
  }
  return changes;
}
