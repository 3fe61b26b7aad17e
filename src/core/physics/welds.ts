import type { SolverState } from './solverState.ts';

const HOLD_TIME = 0.005;

/** Body b held rigidly by body a, at a pose in a's frame. */
export interface Weld {
  readonly id: number;
  readonly a: number;
  readonly b: number;
  x: number;
  y: number;
  c: number;
  s: number;
  readonly maxForceN: number;
  /** Smoothed force that the hold carries (N). */
  force: number;
}

/** Corrects the displacements of both bodies: first the turn, then the place of b's centre. */
export function solveWeld(state: SolverState, weld: Weld): void {
  const { bodies, h } = state;
  const { a, b } = weld;
  const { x, y, c, s, dx, dy, turn, inverseMass, inverseInertia } = bodies;
  const wantedC = c[a] * weld.c - s[a] * weld.s;
  const wantedS = s[a] * weld.c + c[a] * weld.s;
  const twist = inverseInertia[a] + inverseInertia[b];
  if (twist > 0) {
    const off = c[b] * wantedS - s[b] * wantedC - (turn[b] - turn[a]);
    turn[b] += (off * inverseInertia[b]) / twist;
    turn[a] -= (off * inverseInertia[a]) / twist;
  }
  const armX = c[a] * weld.x - s[a] * weld.y;
  const armY = s[a] * weld.x + c[a] * weld.y;
  const offX = x[a] + dx[a] + armX - turn[a] * armY - x[b] - dx[b];
  const offY = y[a] + dy[a] + armY + turn[a] * armX - y[b] - dy[b];
  const both = inverseMass[a] + inverseMass[b];
  if (both === 0) return;
  const xx = both + inverseInertia[a] * armY * armY;
  const xy = -inverseInertia[a] * armX * armY;
  const yy = both + inverseInertia[a] * armX * armX;
  const det = xx * yy - xy * xy;
  const qx = (yy * offX - xy * offY) / det;
  const qy = (xx * offY - xy * offX) / det;
  dx[b] += inverseMass[b] * qx;
  dy[b] += inverseMass[b] * qy;
  dx[a] -= inverseMass[a] * qx;
  dy[a] -= inverseMass[a] * qy;
  turn[a] -= inverseInertia[a] * (armX * qy - armY * qx);
  weld.force += (Math.sqrt(qx * qx + qy * qy) / (h * h) - weld.force) * Math.min(1, h / HOLD_TIME);
}

/** Lets go of the welds that carry more than their limit, and reports them. */
export function slipWelds(state: SolverState): void {
  const tooMuch = state.welds.filter((weld) => weld.force > weld.maxForceN);
  if (tooMuch.length === 0) return;
  for (const weld of tooMuch) state.slipped.push({ kind: 'weld', joint: weld.id, a: weld.a, b: weld.b, forceN: weld.force });
  state.welds = state.welds.filter((weld) => !tooMuch.includes(weld));
  state.stale = true;
}
