import type { BodyStore } from './bodies.ts';
import type { FixedContacts } from './fixedContacts.ts';
import type { Settings } from './settings.ts';
import type { NodeStore } from './strands.ts';

/**
 * Contacts in which strands take part and that may move both sides: node with moving body, link with any body, node with link.
 * The contact point is Σ share·node over up to three nodes, minus a point of a body if there is one.
 * Loads are in kg·m: force = load / h².
 */
export class SoftContacts {
  count = 0;
  readonly capacity: number;
  readonly nodeA: Int32Array;
  readonly nodeB: Int32Array;
  readonly nodeC: Int32Array;
  readonly shareA: Float64Array;
  readonly shareB: Float64Array;
  readonly shareC: Float64Array;
  readonly body: Int32Array;
  readonly shape: Int32Array;
  /** Node and link that meet, in contacts between strands; −1 otherwise. */
  readonly point: Int32Array;
  readonly link: Int32Array;
  /** Arm from the body's centre to the contact (m). */
  readonly armX: Float64Array;
  readonly armY: Float64Array;
  readonly nx: Float64Array;
  readonly ny: Float64Array;
  readonly gap: Float64Array;
  readonly friction: Float64Array;
  readonly load: Float64Array;
  readonly shear: Float64Array;
  /** Effective masses along the normal and the tangent (kg). */
  readonly massN: Float64Array;
  readonly massT: Float64Array;
  /** Mobility factors of the first two nodes along the normal (see `Settings.supported`). */
  readonly easeA: Float64Array;
  readonly easeB: Float64Array;

  constructor(nodeCount: number) {
    const n = (this.capacity = 16 * nodeCount + 256);
    const numbers = (): Float64Array => new Float64Array(n);
    const ids = (): Int32Array => new Int32Array(n);
    this.nodeA = ids();
    this.nodeB = ids();
    this.nodeC = ids();
    this.shareA = numbers();
    this.shareB = numbers();
    this.shareC = numbers();
    this.body = ids();
    this.shape = ids();
    this.point = ids();
    this.link = ids();
    this.armX = numbers();
    this.armY = numbers();
    this.nx = numbers();
    this.ny = numbers();
    this.gap = numbers();
    this.friction = numbers();
    this.load = numbers();
    this.shear = numbers();
    this.massN = numbers();
    this.massT = numbers();
    this.easeA = numbers();
    this.easeB = numbers();
  }

  /** Adds a contact of the point Σ share·node with `body` (or −1) at (px, py); the normal points away from the body. Unused nodes are −1. */
  add(
    store: { nodes: NodeStore; bodies: BodyStore; fixed: FixedContacts; settings: Settings }, h: number,
    a: number, b: number, c: number, shareA: number, shareB: number, shareC: number,
    body: number, shape: number, px: number, py: number, nx: number, ny: number, sep: number, friction: number,
  ): void {
    const k = this.count;
    if (k === this.capacity) return;
    const { nodes, bodies, fixed, settings } = store;
    const { x, y, prevX, prevY, inverseMass, holder } = nodes;
    let wA = holder[a] < 0 ? inverseMass[a] : 0;
    let wB = b >= 0 && holder[b] < 0 ? inverseMass[b] : 0;
    const wC = c >= 0 && holder[c] < 0 ? inverseMass[c] : 0;
    let mobilityT = shareA * shareA * wA + shareB * shareB * wB + shareC * shareC * wC;
    let easeA = 1;
    let easeB = 1;
    if (body >= 0 && bodies.inverseMass[body] > 0) {
      if (fixed.supported[a] && nx * fixed.supportX[a] + ny * fixed.supportY[a] < -0.3) wA *= easeA = settings.supported;
      if (b >= 0 && fixed.supported[b] && nx * fixed.supportX[b] + ny * fixed.supportY[b] < -0.3) wB *= easeB = settings.supported;
    }
    let mobilityN = shareA * shareA * wA + shareB * shareB * wB + shareC * shareC * wC;
    let ux = shareA * (x[a] - prevX[a]);
    let uy = shareA * (y[a] - prevY[a]);
    if (b >= 0) {
      ux += shareB * (x[b] - prevX[b]);
      uy += shareB * (y[b] - prevY[b]);
    }
    if (c >= 0) {
      ux += shareC * (x[c] - prevX[c]);
      uy += shareC * (y[c] - prevY[c]);
    }
    let armX = 0;
    let armY = 0;
    if (body >= 0) {
      armX = px - bodies.x[body] - bodies.dx[body];
      armY = py - bodies.y[body] - bodies.dy[body];
      const crossN = armX * ny - armY * nx;
      const crossT = armX * nx + armY * ny;
      mobilityN += bodies.inverseMass[body] + bodies.inverseInertia[body] * crossN * crossN;
      mobilityT += bodies.inverseMass[body] + bodies.inverseInertia[body] * crossT * crossT;
      ux -= bodies.dx[body] - bodies.turn[body] * armY;
      uy -= bodies.dy[body] + bodies.turn[body] * armX;
    }
    if (mobilityN <= 0) return;
    const gap = sep - nx * ux - ny * uy;
    if (gap < 0) {
      const isFixed = c < 0 && (body < 0 || bodies.inverseMass[body] === 0);
      const speed = isFixed ? settings.recoveryFixed : settings.recovery + (c >= 0 ? settings.recoveryDeep * Math.min(1, -200 * gap) : 0);
      const shift = Math.min(-gap, speed * h) / mobilityN;
      shiftNode(nodes, a, shareA * wA * shift * nx, shareA * wA * shift * ny);
      if (b >= 0) shiftNode(nodes, b, shareB * wB * shift * nx, shareB * wB * shift * ny);
      if (c >= 0) shiftNode(nodes, c, shareC * wC * shift * nx, shareC * wC * shift * ny);
      if (body >= 0) {
        bodies.x[body] -= bodies.inverseMass[body] * shift * nx;
        bodies.y[body] -= bodies.inverseMass[body] * shift * ny;
      }
    }
    this.count = k + 1;
    this.nodeA[k] = a;
    this.nodeB[k] = b;
    this.nodeC[k] = c;
    this.shareA[k] = shareA;
    this.shareB[k] = shareB;
    this.shareC[k] = shareC;
    this.body[k] = body;
    this.shape[k] = shape;
    this.point[k] = -1;
    this.link[k] = -1;
    this.armX[k] = armX;
    this.armY[k] = armY;
    this.nx[k] = nx;
    this.ny[k] = ny;
    this.gap[k] = gap > 0 ? gap : 0;
    this.friction[k] = friction;
    this.load[k] = 0;
    this.shear[k] = 0;
    this.massN[k] = 1 / mobilityN;
    this.massT[k] = mobilityT > 0 ? 1 / mobilityT : 0;
    this.easeA[k] = easeA;
    this.easeB[k] = easeB;
  }
}

function shiftNode(nodes: NodeStore, i: number, dx: number, dy: number): void {
  nodes.x[i] += dx;
  nodes.y[i] += dy;
  nodes.prevX[i] += dx;
  nodes.prevY[i] += dy;
}
