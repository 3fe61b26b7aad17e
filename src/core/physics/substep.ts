import { refreshCandidates } from './candidates.ts';
import { solveChain } from './chain.ts';
import { undoCrossings } from './crossings.ts';
import { advanceFronts, slipGrips } from './holds.ts';
import { detectLinkContacts } from './linkDetection.ts';
import { detectNodeContacts } from './nodeDetection.ts';
import { holdBackCrossings } from './crossingGuard.ts';
import { placeHeldNodes, predict } from './predict.ts';
import { detectRigidContacts } from './rigidDetection.ts';
import { detectSideContacts } from './sideDetection.ts';
import { fallAsleep, settle, wakeOnContact, wakeOnDrive, wakeOnForce } from './sleep.ts';
import { solveSoft } from './softPass.ts';
import type { SolverState } from './solverState.ts';
import { chooseSubsteps } from './substepCount.ts';
import { slipWelds, solveWeld } from './welds.ts';

/** One step of 1/120 s. If everything sleeps and nothing is driven, nothing is computed and nothing changes. */
export function stepWorld(state: SolverState): void {
  state.slipped = [];
  state.peeled = [];
  wakeOnForce(state);
  wakeOnDrive(state);
  settle(state);
  state.stepCount++;
  if (!isAnythingAwake(state)) return;
  chooseSubsteps(state);
  for (let left = state.substeps; left > 0; left--) substep(state, left);
  state.nodes.pinMoves.fill(0);
  slipGrips(state);
  slipWelds(state);
  undoCrossings(state);
  fallAsleep(state);
}

function isAnythingAwake(state: SolverState): boolean {
  const { bodies, strands } = state;
  for (let b = 0; b < bodies.count; b++) if (bodies.awake[b] === 1) return true;
  return strands.some((strand) => strand.awake);
}

function substep(state: SolverState, left: number): void {
  const { nodes, bodies, fixed, soft, rigid, settings, strands } = state;
  state.startX.set(nodes.x);
  state.startY.set(nodes.y);
  bodies.startX.set(bodies.x);
  bodies.startY.set(bodies.y);
  predict(state, left);
  refreshCandidates(state);
  fixed.clear();
  soft.clear();
  rigid.count = 0;
  detectSideContacts(state);
  detectLinkContacts(state);
  detectNodeContacts(state);
  detectRigidContacts(state);
  solveSoft(soft, nodes, bodies, fixed);
  rigid.solve(bodies, 1);
  fixed.solve(nodes);
  placeHeldNodes(state);
  for (const strand of strands) if (strand.awake) solveChain(state, strand);
  for (const weld of state.welds) solveWeld(state, weld);
  placeHeldNodes(state);
  // Two passes after the chain: a node that sticks ends exactly where it started.
  solveSoft(soft, nodes, bodies, fixed);
  fixed.solve(nodes);
  solveSoft(soft, nodes, bodies, fixed);
  rigid.solve(bodies, settings.rigidRounds);
  fixed.solve(nodes);
  placeHeldNodes(state);
  if (soft.count + fixed.count > 0) holdBackCrossings(state);
  finish(state, left);
}

/** Takes over displacements into poses and velocities. The turn is the Cayley map: c and s stay a unit pair without any angle. */
function finish(state: SolverState, left: number): void {
  const { bodies, rigid, h } = state;
  const { x, y, c, s, vx, vy, omega, dx, dy, turn } = bodies;
  rigid.remember(bodies);
  for (let b = 0; b < bodies.count; b++) {
    if (bodies.awake[b] === 0) continue;
    if (left === 1 && bodies.isDriven(b)) {
      arrive(state, b);
      continue;
    }
    x[b] += dx[b];
    y[b] += dy[b];
    const half = turn[b] / 2;
    if (half !== 0) {
      const cosine = 1 - half * half;
      const newC = cosine * c[b] - 2 * half * s[b];
      const newS = cosine * s[b] + 2 * half * c[b];
      const length = Math.sqrt(newC * newC + newS * newS);
      c[b] = newC / length;
      s[b] = newS / length;
    }
    vx[b] = dx[b] / h;
    vy[b] = dy[b] / h;
    omega[b] = turn[b] / h;
  }
  placeHeldExactly(state);
  if (state.fronts.length > 0) advanceFronts(state);
  if (state.someAsleep) wakeOnContact(state);
}

/** A driven body ends the step exactly where it was sent. */
function arrive(state: SolverState, b: number): void {
  const { bodies, shapes, h } = state;
  bodies.vx[b] = bodies.dx[b] / h;
  bodies.vy[b] = bodies.dy[b] / h;
  bodies.omega[b] = bodies.turn[b] / h;
  bodies.dx[b] = bodies.dy[b] = bodies.turn[b] = 0;
  bodies.setPose(b, bodies.targetX[b], bodies.targetY[b], bodies.targetC[b], bodies.targetS[b]);
  shapes.poseBody(bodies, b);
}

function placeHeldExactly(state: SolverState): void {
  const { nodes, bodies, held } = state;
  for (let k = 0; k < held.length; k++) {
    const i = held[k]!;
    const b = nodes.holder[i];
    nodes.x[i] = bodies.worldX(b, nodes.localX[i], nodes.localY[i]);
    nodes.y[i] = bodies.worldY(b, nodes.localX[i], nodes.localY[i]);
  }
}
