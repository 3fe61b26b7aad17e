import { describeFree, describeMatrix, describeOffset } from './chainNodes.ts';
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
  const { contactState, holder } = nodes;
  chain.touching = 0;
  if (fixed.count === 0 || (strand.tension * h * h) / strand.nodeMass <= settings.tautFrom) return false;
  let touches = false;
  for (let i = strand.start; i < strand.end; i++) {
    const c = fixed.ofNode[i];
    if (c < 0 || holder[i] >= 0) {
      contactState[i] = FREE;
      continue;
    }
    chain.touch[chain.touching++] = i;
    measureTouch(state, i, i - strand.start, c);
    if (contactState[i] === FREE && fixed.load[c] > 0) guessState(state, i, c);
    if (contactState[i] === FREE) continue;
    touches = true;
    describeTouching(state, strand, i);
  }
  return touches;
}

function measureTouch(state: SolverState, i: number, k: number, c: number): void {
  const { nodes, fixed, chain } = state;
  const ux = nodes.x[i] - nodes.prevX[i] - fixed.surfaceX[c];
  const uy = nodes.y[i] - nodes.prevY[i] - fixed.surfaceY[c];
  chain.close[k] = -(fixed.gap[c] + fixed.nx[c] * ux + fixed.ny[c] * uy);
  chain.slip[k] = fixed.nx[c] * uy - fixed.ny[c] * ux;
}

function guessState(state: SolverState, i: number, c: number): void {
  const { fixed, nodes } = state;
  const shear = fixed.shear[c];
  // A frictionless contact must never be tried as sticking: it would flip for ever.
  const sticks = fixed.friction[c] > 0 && Math.abs(shear) < fixed.friction[c] * fixed.load[c] * 0.999999;
  nodes.contactState[i] = sticks ? STICKS : SLIDES;
  nodes.slideSign[i] = shear > 0 ? 1 : -1;
}

/** Writes the answer of a touching node, given its state: none when it sticks, w t (t − σ µ n)ᵀ when it slides. */
function describeTouching(state: SolverState, strand: Strand, i: number): void {
  const { nodes, fixed, chain } = state;
  const links = strand.size - 1;
  const k = i - strand.start;
  const kind = nodes.contactState[i];
  if (kind === FREE) {
    describeFree(chain, k, links, nodes.inverseMass[i]);
    return;
  }
  const c = fixed.ofNode[i];
  const nx = fixed.nx[c];
  const ny = fixed.ny[c];
  const close = chain.close[k];
  if (kind === STICKS) {
    const back = -chain.slip[k];
    describeMatrix(chain, k, links, 0, 0, 0, 0);
    describeOffset(chain, k, links, nx * close - ny * back, ny * close + nx * back);
    return;
  }
  const rub = nodes.slideSign[i] * fixed.friction[c];
  const along = rub * (fixed.load[c] + close) - fixed.shear[c];
  describeSliding(state, k, links, nodes.inverseMass[i], -ny, nx, rub);
  describeOffset(chain, k, links, nx * close - ny * along, ny * close + nx * along);
}

function describeSliding(state: SolverState, k: number, links: number, w: number, tx: number, ty: number, rub: number): void {
  const { chain } = state;
  const { dirX, dirY } = chain;
  let vx = tx - rub * ty; // n = (ty, −tx)
  let vy = ty + rub * tx;
  // Keep the diagonal positive, else fall back to the symmetric form.
  const keepsBefore = k === 0 || keepsSign(dirX[k - 1], dirY[k - 1], tx, ty, vx, vy);
  if (!keepsBefore || (k < links && !keepsSign(dirX[k], dirY[k], tx, ty, vx, vy))) {
    vx = tx;
    vy = ty;
  }
  describeMatrix(chain, k, links, w * tx * vx, w * tx * vy, w * ty * vx, w * ty * vy);
}

function keepsSign(dirX: number, dirY: number, tx: number, ty: number, vx: number, vy: number): boolean {
  const along = dirX * tx + dirY * ty;
  return along * (dirX * vx + dirY * vy) >= 0.1 * along * along;
}

/**
 * Checks the states against the solution and changes those that disagree, to firmer ones only if `mayTighten`.
 * Returns the first changed node, counted from the strand's start, or −1.
 */
export function reviseContactStates(state: SolverState, strand: Strand, mayTighten: boolean): number {
  const { chain } = state;
  let first = -1;
  for (let q = 0; q < chain.touching; q++) {
    const i = chain.touch[q];
    if (!reviseNode(state, strand, i, mayTighten)) continue;
    describeTouching(state, strand, i);
    if (first < 0) first = i - strand.start;
  }
  return first;
}

function reviseNode(state: SolverState, strand: Strand, i: number, mayTighten: boolean): boolean {
  const { nodes, fixed, chain } = state;
  const { dirX, dirY, multiplier } = chain;
  const links = strand.size - 1;
  const k = i - strand.start;
  const kind = nodes.contactState[i];
  if (kind === FREE && !mayTighten) return false;
  const c = fixed.ofNode[i];
  const nx = fixed.nx[c];
  const ny = fixed.ny[c];
  const qx = (k > 0 ? multiplier[k - 1] * dirX[k - 1] : 0) - (k < links ? multiplier[k] * dirX[k] : 0);
  const qy = (k > 0 ? multiplier[k - 1] * dirY[k - 1] : 0) - (k < links ? multiplier[k] * dirY[k] : 0);
  const w = nodes.inverseMass[i];
  const load = fixed.load[c] + chain.close[k] - w * (nx * qx + ny * qy);
  if (kind === FREE) {
    if (load <= TOUCH_M) return false; // stays clear of the surface
    nodes.contactState[i] = fixed.friction[c] > 0 ? STICKS : SLIDES;
    nodes.slideSign[i] = chain.slip[k] > 0 ? -1 : 1;
    return true;
  }
  if (load < 0) {
    nodes.contactState[i] = FREE;
    return true;
  }
  const slip = chain.slip[k];
  const pull = w * (nx * qy - ny * qx);
  const limit = fixed.friction[c] * load;
  if (kind === STICKS) {
    const shear = fixed.shear[c] - slip - pull;
    if (shear <= limit && shear >= -limit) return false;
    nodes.contactState[i] = SLIDES;
    nodes.slideSign[i] = shear > 0 ? 1 : -1;
    return true;
  }
  if (!mayTighten || fixed.friction[c] === 0) return false;
  const rest = nodes.slideSign[i] * limit - fixed.shear[c] + pull;
  if ((slip + rest) * nodes.slideSign[i] <= SLIP_M) return false; // slides against its friction, as it must
  nodes.contactState[i] = STICKS;
  return true;
}
