import { linksCross } from './segments.ts';
import type { SolverState } from './solverState.ts';

const ROUNDS = 6;
/** Nodes and links nearer than this to the place in question are judged anew. */
const NEAR = 3;

/**
 * At the end of a sub-step no two strands, and no strand and the axis of a post, may have begun to cross. Where they have, the nodes around the place go back to where
 * they were before the sub-step, and with them the bodies that hold them; a crossing begins with a node passing through a link,
 * so looking at the contacts suffices, those that carry nothing as well: a node that is squeezed through is met from the other side. If that makes others cross, these go back too, more of them each time.
 */
export function holdBackCrossings(state: SolverState): void {
  const { soft, nodes } = state;
  const { point, link } = soft;
  const { strand } = nodes;
  for (let round = 0; round < ROUNDS; round++) {
    let found = holdBackAtPosts(state, round);
    for (let k = 0, n = soft.count; k < n; k++) {
      const i = point[k];
      if (i < 0) continue;
      const j = link[k];
      if (strand[i] === strand[j] || !crosses(state, i, j)) continue;
      found = true;
      goBack(state, i - 1 - round, i + 1 + round, i);
      goBack(state, j - 1 - round, j + 2 + round, j);
      judgeSidesAnew(state, i, j);
    }
    if (!found) return;
  }
  for (const one of state.strands) goBack(state, one.start, one.end - 1, one.start);
}

/** The same for links that begin to cross the axis of a fixed capsule, such as a rail. */
function holdBackAtPosts(state: SolverState, round: number): boolean {
  const { fixed, soft, shapes } = state;
  const { isPost } = shapes;
  let found = false;
  for (let k = 0, n = fixed.count; k < n; k++) {
    const shape = fixed.shape[k];
    if (isPost[shape] === 1 && passesPost(state, fixed.node[k], shape, round)) found = true;
  }
  for (let k = 0, n = soft.count; k < n; k++) {
    const shape = soft.shape[k];
    if (shape < 0 || isPost[shape] === 0) continue;
    if (passesPost(state, soft.nodeA[k], shape, round)) found = true;
    if (soft.nodeB[k] >= 0 && passesPost(state, soft.nodeB[k], shape, round)) found = true;
  }
  return found;
}

function passesPost(state: SolverState, i: number, shape: number, round: number): boolean {
  const { nodes, strands, shapes, startX, startY } = state;
  const { x, y } = nodes;
  const { vx, vy } = shapes;
  const strand = strands[nodes.strand[i]]!;
  const v = shapes.first[shape];
  const from = i > strand.start ? i - 1 : i;
  const to = i < strand.end - 1 ? i : i - 1;
  for (let p = from; p <= to; p++) {
    if (!linksCross(x, y, p, vx, vy, v) || linksCross(startX, startY, p, vx, vy, v)) continue;
    goBack(state, p - round, p + 1 + round, p);
    return true;
  }
  return false;
}

/** Since nothing crossed before, the side on which a node lay then is the right one, whatever its pair remembers. */
function judgeSidesAnew(state: SolverState, i: number, j: number): void {
  const { pairs, startX: x, startY: y } = state;
  for (let k = 0; k < pairs.count; k++) {
    const node = pairs.node[k];
    const link = pairs.link[k];
    const isNear = (Math.abs(node - i) < NEAR && Math.abs(link - j) < NEAR) || (Math.abs(node - j) < NEAR && Math.abs(link - i) < NEAR);
    if (!isNear || pairs.side[k] === 2 || pairs.side[k] === -2) continue;
    const ex = x[link + 1] - x[link];
    const ey = y[link + 1] - y[link];
    pairs.side[k] = ex * (y[node] - y[link]) - ey * (x[node] - x[link]) >= 0 ? 1 : -1;
    pairs.due[k] = 0;
  }
}

/** Whether a link at node i crosses one of the links around j now, but did not before the sub-step. */
function crosses(state: SolverState, i: number, j: number): boolean {
  const { nodes, strands, startX, startY } = state;
  const { x, y } = nodes;
  const a = strands[nodes.strand[i]]!;
  const b = strands[nodes.strand[j]]!;
  for (let p = Math.max(a.start, i - 1); p <= Math.min(a.end - 2, i); p++) {
    for (let q = Math.max(b.start, j - 1); q <= Math.min(b.end - 2, j + 1); q++) {
      if (linksCross(x, y, p, x, y, q) && !linksCross(startX, startY, p, startX, startY, q)) return true;
    }
  }
  return false;
}

/** Puts the nodes from..to of the strand of `member` back to the beginning of the sub-step, at rest. */
function goBack(state: SolverState, from: number, to: number, member: number): void {
  const { nodes, bodies, strands, startX, startY } = state;
  const strand = strands[nodes.strand[member]]!;
  for (let i = Math.max(strand.start, from); i <= Math.min(strand.end - 1, to); i++) {
    if (nodes.pinMoves[i] === 1) continue;
    nodes.x[i] = nodes.prevX[i] = startX[i];
    nodes.y[i] = nodes.prevY[i] = startY[i];
    const body = nodes.holder[i];
    if (body < 0 || !bodies.isDynamic(body)) continue;
    bodies.x[body] = bodies.startX[body];
    bodies.y[body] = bodies.startY[body];
    bodies.dx[body] = bodies.dy[body] = bodies.turn[body] = 0;
  }
}
