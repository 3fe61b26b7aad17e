import type { SolverState } from './solverState.ts';

/** Finds contacts between bodies and starts them from the loads of the last sub-step. */
export function detectRigidContacts(state: SolverState): void {
  const { candidates, shapes, bodies, manifold, rigid, settings, h } = state;
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
      rigid.add(
        bodies, bodyA, bodyB, a, b, key, manifold.nx[q], manifold.ny[q], manifold.ax[q], manifold.ay[q], manifold.bx[q], manifold.by[q],
        manifold.sep[q], friction, settings.recovery * h, settings.rigidRest,
      );
    }
  }
  rigid.warmStart(bodies);
}

function boxesApart(box: Float64Array, a: number, b: number, slack: number): boolean {
  if (box[4 * a] - slack > box[4 * b + 2] || box[4 * b] - slack > box[4 * a + 2]) return true;
  return box[4 * a + 1] - slack > box[4 * b + 3] || box[4 * b + 1] - slack > box[4 * a + 3];
}
