import { segmentsCross } from './segments.ts';
import type { SolverState } from './solverState.ts';

const ROUNDS = 6;

/**
 * At the end of a sub-step no two strands may have begun to cross. Where they have, the nodes around the place go back to where
 * they were before the sub-step, and with them the bodies that hold them; a crossing begins with a node passing through a link,
 * so looking at the contacts suffices. If that makes others cross, these go back too, more of them each time.
 */
export function holdBackCrossings(state: SolverState): void {
  const { soft } = state;
  for (let round = 0; round < ROUNDS; round++) {
    let found = false;
    for (let k = 0; k < soft.count; k++) {
      if (soft.point[k] >= 0 && isPressedThrough(state, k) && crosses(state, soft.point[k], soft.link[k])) {
        found = true;
        goBack(state, soft.point[k] - 1 - round, soft.point[k] + 1 + round, soft.point[k]);
        goBack(state, soft.link[k] - 1 - round, soft.link[k] + 2 + round, soft.link[k]);
      }
    }
    if (!found) return;
  }
}

/** Whether the node has come so near to the link's line, or beyond it, that a crossing is possible. */
function isPressedThrough(state: SolverState, k: number): boolean {
  const { soft, nodes, strands } = state;
  const i = soft.point[k];
  const j = soft.link[k];
  const a = nodes.strand[i];
  const b = nodes.strand[j];
  if (a === b) return false;
  const sign = soft.shape[k] < 0 && soft.body[k] >= 0 && soft.nodeA[k] === j ? -1 : 1; // held nodes act for their body, with the normal turned
  const t = soft.body[k] < 0 ? -soft.shareC[k] : soft.nodeA[k] === j ? soft.shareB[k] : 0.5;
  const px = nodes.x[j] + t * (nodes.x[j + 1] - nodes.x[j]);
  const py = nodes.y[j] + t * (nodes.y[j + 1] - nodes.y[j]);
  const height = sign * (soft.nx[k] * (nodes.x[i] - px) + soft.ny[k] * (nodes.y[i] - py));
  return height < 0.6 * (strands[a]!.radius + strands[b]!.radius);
}

/** Whether a link at node i crosses one of the links around j now, but did not before the sub-step. */
function crosses(state: SolverState, i: number, j: number): boolean {
  const { nodes, strands, startX, startY } = state;
  const { x, y } = nodes;
  const a = strands[nodes.strand[i]]!;
  const b = strands[nodes.strand[j]]!;
  for (let p = Math.max(a.start, i - 1); p <= Math.min(a.end - 2, i); p++) {
    for (let q = Math.max(b.start, j - 1); q <= Math.min(b.end - 2, j + 1); q++) {
      if (!segmentsCross(x[p], y[p], x[p + 1], y[p + 1], x[q], y[q], x[q + 1], y[q + 1])) continue;
      if (!segmentsCross(startX[p], startY[p], startX[p + 1], startY[p + 1], startX[q], startY[q], startX[q + 1], startY[q + 1])) return true;
    }
  }
  return false;
}

/** Puts the nodes from..to of the strand of `member` back to the beginning of the sub-step, at rest. */
function goBack(state: SolverState, from: number, to: number, member: number): void {
  const { nodes, strands, startX, startY } = state;
  const strand = strands[nodes.strand[member]]!;
  for (let i = Math.max(strand.start, from); i <= Math.min(strand.end - 1, to); i++) {
    if (nodes.pinMoves[i] === 1) continue;
    nodes.x[i] = nodes.prevX[i] = startX[i];
    nodes.y[i] = nodes.prevY[i] = startY[i];
    const body = nodes.holder[i];
    if (body >= 0 && state.bodies.isDynamic(body)) state.bodies.dx[body] = state.bodies.dy[body] = state.bodies.turn[body] = 0;
  }
}
