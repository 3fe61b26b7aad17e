import { rebuildFronts, type GlueSpec, type PeelFront } from './peelFront.ts';
import { placeHeldNodes } from './predict.ts';
import { wakeBody, wakeStrand } from './sleep.ts';
import type { SolverState } from './solverState.ts';

/** Fixes a node to a body at (lx, ly) of its frame; it lets go above `maxForceN`. */
export function holdNode(state: SolverState, node: number, body: number, lx: number, ly: number, maxForceN: number): void {
  const { nodes } = state;
  if (nodes.holder[node] >= 0) letGo(state, node);
  nodes.holder[node] = body;
  nodes.localX[node] = lx;
  nodes.localY[node] = ly;
  nodes.holdLimit[node] = maxForceN;
  nodes.holdForce[node] = 0;
  state.held.push(node);
  placeHeldNodes(state);
  touchHold(state, node, body);
}

/** Fixes a node to a body where it is. */
export function holdNodeHere(state: SolverState, node: number, body: number, maxForceN: number): void {
  const { bodies, nodes } = state;
  const dx = nodes.x[node] - bodies.x[body];
  const dy = nodes.y[node] - bodies.y[body];
  const c = bodies.c[body];
  const s = bodies.s[body];
  holdNode(state, node, body, c * dx + s * dy, c * dy - s * dx, maxForceN);
}

/** Frees a node from whatever body it is fixed to. */
export function letGo(state: SolverState, node: number): void {
  const { nodes } = state;
  const body = nodes.holder[node];
  if (body < 0) return;
  nodes.holder[node] = -1;
  nodes.contactState[node] = 0;
  state.held = state.held.filter((one) => one !== node);
  if (state.glue.delete(node)) rebuildFronts(state);
  touchHold(state, node, body);
}

function touchHold(state: SolverState, node: number, body: number): void {
  state.stale = true;
  wakeBody(state, body);
  wakeStrand(state, state.nodes.strand[node]);
}

/** Sticks a node where it is to the skin of a body. */
export function glueNode(state: SolverState, node: number, body: number, spec: GlueSpec): void {
  holdNodeHere(state, node, body, Infinity);
  state.glue.set(node, spec);
  rebuildFronts(state);
}

/** Lets go of grips that carry more than their limit, and reports them. */
export function slipGrips(state: SolverState): void {
  const { nodes } = state;
  for (const node of state.held.filter((one) => nodes.holdForce[one] > nodes.holdLimit[one])) {
    state.slipped.push({ kind: 'node', node, body: nodes.holder[node], forceN: nodes.holdForce[node] });
    letGo(state, node);
  }
}

/** Frees the glued nodes that a peel front has passed, and hands the front on to the next. */
export function advanceFronts(state: SolverState): void {
  for (const front of state.fronts.filter((one) => one.isDone)) {
    if (!state.glue.has(front.node)) continue;
    state.peeled.push({ node: front.node, body: front.body });
    passNode(state, front);
  }
}

/** The freed node goes into the middle of the straight stretch that has come off, with the mean motion of its ends. */
function passNode(state: SolverState, front: PeelFront): void {
  const { nodes, strands } = state;
  const { node, step } = front;
  const { linkM } = strands[nodes.strand[node]]!;
  const next = node - step;
  letGo(state, node);
  if (front.receded < linkM || !state.glue.has(next)) {
    nodes.stop(node);
    return;
  }
  const over = front.receded - linkM;
  const successor = state.fronts.find((one) => one.node === next && one.step === step)!;
  successor.receded = over;
  nodes.rest[step > 0 ? next : node] = linkM + over;
  nodes.localX[next] -= over * successor.alongX;
  nodes.localY[next] -= over * successor.alongY;
  const t = (linkM + over) / (2 * linkM + over);
  nodes.x[node] += t * (nodes.x[node + step] - nodes.x[node]);
  nodes.y[node] += t * (nodes.y[node + step] - nodes.y[node]);
  nodes.prevX[node] += t * (nodes.prevX[node + step] - nodes.prevX[node]);
  nodes.prevY[node] += t * (nodes.prevY[node + step] - nodes.prevY[node]);
}
