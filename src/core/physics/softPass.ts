import type { BodyStore } from './bodies.ts';
import type { FixedContacts } from './fixedContacts.ts';
import type { SoftContacts } from './softContacts.ts';
import type { NodeStore } from './strands.ts';

/** One projected Gauss-Seidel pass over the soft contacts: load ≥ 0 and |shear| ≤ µ · load, accumulated over the passes. */
export function solveSoft(soft: SoftContacts, nodes: NodeStore, bodies: BodyStore, fixed: FixedContacts): void {
  const { x, y, prevX, prevY, inverseMass, holder } = nodes;
  const { dx, dy, turn } = bodies;
  const { nodeA, nodeB, nodeC, shareA, shareB, shareC, body, armX, armY, nx, ny, gap, friction, load, shear, massN, massT, easeA, easeB } = soft;
  for (let k = 0, n = soft.count; k < n; k++) {
    const a = nodeA[k];
    const b = nodeB[k];
    const c = nodeC[k];
    const held = body[k];
    const ax = nx[k];
    const ay = ny[k];
    let ux = shareA[k] * (x[a] - prevX[a]);
    let uy = shareA[k] * (y[a] - prevY[a]);
    if (b >= 0) {
      ux += shareB[k] * (x[b] - prevX[b]);
      uy += shareB[k] * (y[b] - prevY[b]);
      if (c >= 0) {
        ux += shareC[k] * (x[c] - prevX[c]);
        uy += shareC[k] * (y[c] - prevY[c]);
      }
    }
    if (held >= 0) {
      ux -= dx[held] - turn[held] * armY[k];
      uy -= dy[held] + turn[held] * armX[k];
    }
    let push = -(gap[k] + ax * ux + ay * uy) * massN[k];
    let total = load[k] + push;
    if (total < 0) {
      push = -load[k];
      total = 0;
    }
    if (total === 0 && push === 0) continue; // apart, as it was: no load, no friction
    load[k] = total;
    const limit = friction[k] * total;
    const wanted = shear[k] - (ax * uy - ay * ux) * massT[k];
    const kept = wanted > limit ? limit : wanted < -limit ? -limit : wanted;
    const rub = kept - shear[k];
    shear[k] = kept;
    if (push === 0 && rub === 0) continue;
    const qx = ax * push - ay * rub;
    const qy = ay * push + ax * rub;
    if (holder[a] < 0) {
      const f = shareA[k] * inverseMass[a];
      if (easeA[k] === 1) {
        x[a] += f * qx;
        y[a] += f * qy;
      } else pressOn(nodes, fixed, a, f, ax, ay, push, rub, easeA[k]);
    }
    if (b >= 0 && holder[b] < 0) {
      const f = shareB[k] * inverseMass[b];
      if (easeB[k] === 1) {
        x[b] += f * qx;
        y[b] += f * qy;
      } else pressOn(nodes, fixed, b, f, ax, ay, push, rub, easeB[k]);
    }
    if (c >= 0 && holder[c] < 0) {
      const f = shareC[k] * inverseMass[c];
      x[c] += f * qx;
      y[c] += f * qy;
    }
    if (held >= 0) moveBody(bodies, held, armX[k], armY[k], -qx, -qy);
  }
}

/** Moves a node that lies on something fixed: it hands most of the normal part on to that contact. */
function pressOn(nodes: NodeStore, fixed: FixedContacts, i: number, f: number, nx: number, ny: number, push: number, rub: number, ease: number): void {
  const moved = ease * push;
  nodes.x[i] += f * (nx * moved - ny * rub);
  nodes.y[i] += f * (ny * moved + nx * rub);
  const contact = fixed.ofNode[i];
  if (contact < 0) return;
  const load = fixed.load[contact] - f * (push - moved) * (nx * fixed.nx[contact] + ny * fixed.ny[contact]);
  fixed.load[contact] = load > 0 ? load : 0;
}

/** Applies an impulse (kg·m) at an arm to the displacement of a body. */
export function moveBody(bodies: BodyStore, b: number, armX: number, armY: number, qx: number, qy: number): void {
  bodies.dx[b] += bodies.inverseMass[b] * qx;
  bodies.dy[b] += bodies.inverseMass[b] * qy;
  bodies.turn[b] += bodies.inverseInertia[b] * (armX * qy - armY * qx);
}
