import type { SolverState } from './solverState.ts';

/**
 * What a held node touches, or a link close to it, the body that holds it touches: files a rigid contact between that body and `body`, of
 * which `shape` is touched (−1 for a node that it holds in turn). Normal towards the node, separation (as gap), friction and place of contact
 * (as arm) stand in the next free columns of the soft contacts, which stay unused; `key` names what meets. Welded bodies do not touch.
 */
export function fileHeldContact(state: SolverState, node: number, body: number, shape: number, key: number): void {
  const { nodes, rigid, soft, welds } = state;
  const holder = nodes.holder[node];
  if (holder === body) return;
  for (const weld of welds) if ((weld.a === holder && weld.b === body) || (weld.a === body && weld.b === holder)) return;
  const n = soft.count;
  const k = rigid.open(holder, body, -1, shape, key);
  rigid.nx[k] = -soft.nx[n];
  rigid.ny[k] = -soft.ny[n];
  rigid.armAX[k] = rigid.armBX[k] = soft.armX[n];
  rigid.armAY[k] = rigid.armBY[k] = soft.armY[n];
  rigid.gap[k] = soft.gap[n];
  rigid.friction[k] = soft.friction[n];
  rigid.close(state);
}

// Keys of these contacts, all below 0, where those between two shapes are not: node and shape, link beside a node and vertex, two nodes.

export const keyOfNode = ({ shapes }: SolverState, node: number, shape: number): number => -1 - node * shapes.count - shape;

/** `side` is 0 for the link that begins at the node, 1 for the one that ends there. */
export const keyOfLink = ({ nodes, shapes }: SolverState, node: number, side: number, vertex: number): number =>
  -1 - nodes.count * shapes.count - (2 * node + side) * shapes.vx.length - vertex;

export const keyOfNodes = ({ nodes, shapes }: SolverState, one: number, other: number): number =>
  -1 - nodes.count * (shapes.count + 2 * shapes.vx.length + one) - other;
