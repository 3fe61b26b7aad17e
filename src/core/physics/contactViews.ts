import type { SolverState } from './solverState.ts';
import type { ContactView } from './types.ts';

/** Calls `visit` for each contact of the last sub-step that carries load, in a fixed order. */
export function visitContacts(state: SolverState, visit: (contact: ContactView) => void): void {
  if (state.h === 0) return;
  visitFixed(state, visit);
  visitSoft(state, visit);
  visitRigid(state, visit);
}

function visitFixed(state: SolverState, visit: (contact: ContactView) => void): void {
  const { fixed, nodes, shapes, strands, h } = state;
  for (let k = 0; k < fixed.count; k++) {
    if (fixed.load[k] <= 0) continue;
    const node = fixed.node[k];
    const shape = fixed.shape[k];
    const r = strands[nodes.strand[node]]!.radiusOnStatic;
    visit({
      kind: 'node-body', node, body: shapes.body[shape], shape, otherNode: -1, otherBody: -1, otherShape: -1,
      x: nodes.x[node] - r * fixed.nx[k], y: nodes.y[node] - r * fixed.ny[k], normalX: fixed.nx[k], normalY: fixed.ny[k],
      normalForceN: fixed.load[k] / (nodes.freeInverseMass[node] * h * h),
    });
  }
}

function visitSoft(state: SolverState, visit: (contact: ContactView) => void): void {
  const { soft, nodes, strands, bodies, h } = state;
  for (let k = 0; k < soft.count; k++) {
    if (soft.load[k] <= 0) continue;
    const node = soft.nodeA[k];
    const isPair = soft.nodeC[k] >= 0;
    const body = soft.body[k];
    const nx = soft.nx[k];
    const ny = soft.ny[k];
    const r = strands[nodes.strand[node]]!.radius;
    visit({
      kind: isPair || soft.shape[k] < 0 ? 'strand-strand' : soft.nodeB[k] >= 0 ? 'link-body' : 'node-body',
      node, body, shape: soft.shape[k], otherNode: isPair ? soft.nodeB[k] : -1, otherBody: -1, otherShape: -1,
      x: body >= 0 ? bodies.x[body] + soft.armX[k] : nodes.x[node] - r * nx, y: body >= 0 ? bodies.y[body] + soft.armY[k] : nodes.y[node] - r * ny,
      normalX: nx, normalY: ny, normalForceN: soft.load[k] / (h * h),
    });
  }
}

function visitRigid(state: SolverState, visit: (contact: ContactView) => void): void {
  const { rigid, bodies, h } = state;
  for (let k = 0; k < rigid.count; k++) {
    if (rigid.load[k] <= 0) continue;
    const a = rigid.a[k];
    const b = rigid.b[k];
    visit({
      kind: 'body-body', node: -1, body: b, shape: rigid.shapeB[k], otherNode: -1, otherBody: a, otherShape: rigid.shapeA[k],
      x: bodies.x[b] + rigid.armBX[k], y: bodies.y[b] + rigid.armBY[k], normalX: rigid.nx[k], normalY: rigid.ny[k],
      normalForceN: rigid.load[k] / (h * h),
    });
  }
}

/** Sum of the normal forces (N) between two bodies in the last sub-step. */
export function forceBetween(state: SolverState, a: number, b: number): number {
  const { rigid, h } = state;
  let sum = 0;
  for (let k = 0; k < rigid.count; k++) {
    if ((rigid.a[k] === a && rigid.b[k] === b) || (rigid.a[k] === b && rigid.b[k] === a)) sum += rigid.load[k];
  }
  return sum / (h * h);
}
