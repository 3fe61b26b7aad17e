import type { SolverState } from './solverState.ts';

/** Finds contacts between bodies and starts them from the loads of the last sub-step. */
export function detectRigidContacts(state: SolverState): void {
  const { candidates, shapes, bodies, manifold, rigid, settings } = state;
  for (let p = 0; p < candidates.bodyPairCount; p++) {
    const a = candidates.pairA[p];
    const b = candidates.pairB[p];
    const bodyA = shapes.body[a];
    const bodyB = shapes.body[b];
    if (boxesApart(shapes.box, a, b, settings.slack)) continue;
    manifold.find(a, b, settings.slack);
    const friction = Math.min(bodies.friction[bodyA], bodies.friction[bodyB]);
    for (let q = 0; q < manifold.count; q++) {
      const key = (a * shapes.count + b) * 64 + manifold.feature[q];
      const k = rigid.open(bodyA, bodyB, a, b, key);
      rigid.nx[k] = manifold.nx[q];
      rigid.ny[k] = manifold.ny[q];
      rigid.armAX[k] = manifold.ax[q];
      rigid.armAY[k] = manifold.ay[q];
      rigid.armBX[k] = manifold.bx[q];
      rigid.armBY[k] = manifold.by[q];
      rigid.gap[k] = manifold.sep[q];
      rigid.friction[k] = friction;
      rigid.close(state);
    }
  }
  rigid.warmStart(bodies);
}

function boxesApart(box: Float64Array, a: number, b: number, slack: number): boolean {
  if (box[4 * a] - slack > box[4 * b + 2] || box[4 * b] - slack > box[4 * a + 2]) return true;
  return box[4 * a + 1] - slack > box[4 * b + 3] || box[4 * b + 1] - slack > box[4 * a + 3];
}
