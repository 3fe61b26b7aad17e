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
    store: ContactStores, h: number,
    a: number, b: number, c: number, shareA: number, shareB: number, shareC: number,
    body: number, shape: number, px: number, py: number, nx: number, ny: number, sep: number, friction: number,
  ): void {
    const k = this.count;
    if (k === this.capacity) return;
    const { nodes, bodies } = store;
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
    this.armX[k] = body >= 0 ? px - bodies.x[body] - bodies.dx[body] : 0;
    this.armY[k] = body >= 0 ? py - bodies.y[body] - bodies.dy[body] : 0;
    this.nx[k] = nx;
    this.ny[k] = ny;
    this.friction[k] = friction;
    this.load[k] = 0;
    this.shear[k] = 0;
    this.easeA[k] = easeOf(store, a, body, nx, ny);
    this.easeB[k] = easeOf(store, b, body, nx, ny);
    const mobility = this.weigh(store, k);
    if (mobility <= 0) return;
    const gap = sep - nx * this.slipX(nodes, bodies, k) - ny * this.slipY(nodes, bodies, k);
    this.gap[k] = gap > 0 ? gap : 0;
    if (gap < 0) this.undoOverlap(store, k, gap, mobility, h);
    this.count = k + 1;
  }

  /** Effective masses of contact k; returns the mobility along the normal (1/kg), 0 if nothing can move. */
  private weigh({ nodes, bodies }: ContactStores, k: number): number {
    const wA = mobilityOf(nodes, this.nodeA[k]) * this.shareA[k] * this.shareA[k];
    const wB = mobilityOf(nodes, this.nodeB[k]) * this.shareB[k] * this.shareB[k];
    const wC = mobilityOf(nodes, this.nodeC[k]) * this.shareC[k] * this.shareC[k];
    let normal = wA * this.easeA[k] + wB * this.easeB[k] + wC;
    let tangent = wA + wB + wC;
    const body = this.body[k];
    if (body >= 0) {
      const crossN = this.armX[k] * this.ny[k] - this.armY[k] * this.nx[k];
      const crossT = this.armX[k] * this.nx[k] + this.armY[k] * this.ny[k];
      normal += bodies.inverseMass[body] + bodies.inverseInertia[body] * crossN * crossN;
      tangent += bodies.inverseMass[body] + bodies.inverseInertia[body] * crossT * crossT;
    }
    this.massN[k] = normal > 0 ? 1 / normal : 0;
    this.massT[k] = tangent > 0 ? 1 / tangent : 0;
    return normal;
  }

  /** Displacement (m) of contact k's point relative to its body in this sub-step, x part. */
  private slipX(nodes: NodeStore, bodies: BodyStore, k: number): number {
    const { x, prevX } = nodes;
    const b = this.nodeB[k];
    const c = this.nodeC[k];
    const body = this.body[k];
    let slip = this.shareA[k] * (x[this.nodeA[k]] - prevX[this.nodeA[k]]);
    if (b >= 0) slip += this.shareB[k] * (x[b] - prevX[b]);
    if (c >= 0) slip += this.shareC[k] * (x[c] - prevX[c]);
    return body >= 0 ? slip - bodies.dx[body] + bodies.turn[body] * this.armY[k] : slip;
  }

  private slipY(nodes: NodeStore, bodies: BodyStore, k: number): number {
    const { y, prevY } = nodes;
    const b = this.nodeB[k];
    const c = this.nodeC[k];
    const body = this.body[k];
    let slip = this.shareA[k] * (y[this.nodeA[k]] - prevY[this.nodeA[k]]);
    if (b >= 0) slip += this.shareB[k] * (y[b] - prevY[b]);
    if (c >= 0) slip += this.shareC[k] * (y[c] - prevY[c]);
    return body >= 0 ? slip - bodies.dy[body] - bodies.turn[body] * this.armX[k] : slip;
  }

  /** Undoes an overlap that was there before the sub-step, at limited speed, without giving velocity. */
  private undoOverlap({ nodes, bodies, settings }: ContactStores, k: number, gap: number, mobility: number, h: number): void {
    const body = this.body[k];
    const isPair = this.nodeC[k] >= 0;
    const isFixed = !isPair && (body < 0 || bodies.inverseMass[body] === 0);
    const speed = isFixed ? settings.recoveryFixed : settings.recovery + (isPair ? settings.recoveryDeep * Math.min(1, -200 * gap) : 0);
    const shift = Math.min(-gap, speed * h) / mobility;
    const shiftX = shift * this.nx[k];
    const shiftY = shift * this.ny[k];
    shiftNode(nodes, this.nodeA[k], this.shareA[k] * this.easeA[k], shiftX, shiftY);
    shiftNode(nodes, this.nodeB[k], this.shareB[k] * this.easeB[k], shiftX, shiftY);
    shiftNode(nodes, this.nodeC[k], this.shareC[k], shiftX, shiftY);
    if (body < 0) return;
    bodies.x[body] -= bodies.inverseMass[body] * shiftX;
    bodies.y[body] -= bodies.inverseMass[body] * shiftY;
  }
}

/** What a contact reads and moves. */
interface ContactStores {
  readonly nodes: NodeStore;
  readonly bodies: BodyStore;
  readonly fixed: FixedContacts;
  readonly settings: Settings;
}

const mobilityOf = (nodes: NodeStore, i: number): number => (i >= 0 && nodes.holder[i] < 0 ? nodes.inverseMass[i] : 0);

/** Share of its mobility that a node keeps along the normal: little if a moving body presses it on to something fixed. */
function easeOf({ bodies, fixed, settings }: ContactStores, i: number, body: number, nx: number, ny: number): number {
  if (i < 0 || body < 0 || bodies.inverseMass[body] === 0 || fixed.supported[i] === 0) return 1;
  return nx * fixed.supportX[i] + ny * fixed.supportY[i] < -0.3 ? settings.supported : 1;
}

function shiftNode(nodes: NodeStore, i: number, share: number, shiftX: number, shiftY: number): void {
  const w = mobilityOf(nodes, i) * share;
  if (w === 0) return;
  nodes.x[i] += w * shiftX;
  nodes.y[i] += w * shiftY;
  nodes.prevX[i] += w * shiftX;
  nodes.prevY[i] += w * shiftY;
}
