import type { BodyStore } from './bodies.ts';
import type { FixedContacts } from './fixedContacts.ts';
import type { Settings } from './settings.ts';
import type { NodeStore } from './strands.ts';

/** Stretch (m) of a link beyond which no overlap is undone at its cost, and overlaps (m) too slight to draw a link out. */
const TOLERABLE_M = 0.001;
const SLIGHT_M = 1e-5;

/**
 * Contacts in which strands take part and that may move both sides: node with moving body, link with any body, node with link.
 * The contact point is Σ share·node over up to three nodes, minus a point of a body if there is one.
 * Loads are in kg·m: force = load / h².
 */
export class SoftContacts {
  count = 0;
  /** Distance (m) that no node has been shifted farther in this sub-step to undo overlaps. */
  shoved = 0;
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
  /** Mobility along the normal (1/kg). */
  readonly mobility: Float64Array;
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
    this.mobility = numbers();
    this.easeA = numbers();
    this.easeB = numbers();
  }

  clear(): void {
    this.count = 0;
    this.shoved = 0;
  }

  /**
   * Begins a contact of the point Σ share·node with `body` (or −1); unused nodes are −1. The caller fills in, at the index returned,
   * the shares, the normal away from the body, the friction, as arm the place in the world and as gap the separation, then calls
   * `close`. Numbers go through the columns because as arguments each would be put on the heap.
   */
  open(a: number, b: number, c: number, body: number, shape: number): number {
    const k = this.count;
    this.nodeA[k] = a;
    this.nodeB[k] = b;
    this.nodeC[k] = c;
    this.body[k] = body;
    this.shape[k] = shape;
    this.point[k] = -1;
    this.link[k] = -1;
    return k;
  }

  /** Completes the contact that was begun; it is dropped if nothing can move, or there is no room. */
  close(store: ContactStores): void {
    const k = this.count;
    if (k === this.capacity) return;
    const { nodes, bodies } = store;
    const { x, y, prevX, prevY, holder, inverseMass } = nodes;
    const a = this.nodeA[k];
    const b = this.nodeB[k];
    const c = this.nodeC[k];
    const body = this.body[k];
    const nx = this.nx[k];
    const ny = this.ny[k];
    const shareA = this.shareA[k];
    this.easeA[k] = this.easeB[k] = 1;
    if (body >= 0 && bodies.inverseMass[body] !== 0) this.ease(store, k);
    const wA = holder[a] < 0 ? inverseMass[a] * shareA * shareA : 0;
    let normal = wA * this.easeA[k];
    let tangent = wA;
    let ux = shareA * (x[a] - prevX[a]);
    let uy = shareA * (y[a] - prevY[a]);
    if (b >= 0) {
      const share = this.shareB[k];
      const w = holder[b] < 0 ? inverseMass[b] * share * share : 0;
      normal += w * this.easeB[k];
      tangent += w;
      ux += share * (x[b] - prevX[b]);
      uy += share * (y[b] - prevY[b]);
    }
    if (c >= 0) {
      const share = this.shareC[k];
      const w = holder[c] < 0 ? inverseMass[c] * share * share : 0;
      normal += w;
      tangent += w;
      ux += share * (x[c] - prevX[c]);
      uy += share * (y[c] - prevY[c]);
    }
    if (body >= 0) {
      const { dx, dy, turn } = bodies;
      const armX = this.armX[k] - bodies.x[body] - dx[body];
      const armY = this.armY[k] - bodies.y[body] - dy[body];
      const w = bodies.inverseMass[body];
      const inertia = bodies.inverseInertia[body];
      const crossN = armX * ny - armY * nx;
      const crossT = armX * nx + armY * ny;
      normal += w + inertia * crossN * crossN;
      tangent += w + inertia * crossT * crossT;
      ux = ux - dx[body] + turn[body] * armY;
      uy = uy - dy[body] - turn[body] * armX;
      this.armX[k] = armX;
      this.armY[k] = armY;
    } else this.armX[k] = this.armY[k] = 0;
    if (normal <= 0) return;
    const gap = this.gap[k] - nx * ux - ny * uy;
    this.count = k + 1;
    this.load[k] = 0;
    this.shear[k] = 0;
    this.mobility[k] = normal;
    this.massN[k] = 1 / normal;
    this.massT[k] = tangent > 0 ? 1 / tangent : 0;
    this.gap[k] = gap;
    if (gap >= 0) return;
    this.undoOverlap(store, k);
    this.gap[k] = 0;
  }

  /** Nodes keep little of their mobility along the normal if a moving body presses them on to something fixed. */
  private ease({ fixed, settings }: ContactStores, k: number): void {
    const { supported, supportX, supportY } = fixed;
    const nx = this.nx[k];
    const ny = this.ny[k];
    const a = this.nodeA[k];
    const b = this.nodeB[k];
    if (supported[a] !== 0 && nx * supportX[a] + ny * supportY[a] < -0.3) this.easeA[k] = settings.supported;
    if (b >= 0 && supported[b] !== 0 && nx * supportX[b] + ny * supportY[b] < -0.3) this.easeB[k] = settings.supported;
  }

  /** Undoes an overlap that was there before the sub-step, at limited speed, without giving velocity. */
  private undoOverlap({ nodes, bodies, settings, h }: ContactStores, k: number): void {
    const overlap = -this.gap[k];
    const body = this.body[k];
    const isPair = this.nodeC[k] >= 0;
    const isFixed = !isPair && (body < 0 || bodies.inverseMass[body] === 0);
    const deep = 200 * overlap;
    const speed = isFixed ? settings.recoveryFixed : settings.recovery + (isPair ? settings.recoveryDeep * (deep < 1 ? deep : 1) : 0);
    const reach = speed * h;
    const nx = this.nx[k];
    const ny = this.ny[k];
    const wanted = overlap < reach ? overlap : reach;
    let shift = wanted / this.mobility[k];
    const { x, y, prevX, prevY, holder, inverseMass } = nodes;
    if (!isFixed && overlap > SLIGHT_M) shift = this.sparingLinks(nodes, k, shift);
    const shiftX = shift * nx;
    const shiftY = shift * ny;
    let farthest = 0;
    for (let part = 0; part < 3; part++) {
      const i = part === 0 ? this.nodeA[k] : part === 1 ? this.nodeB[k] : this.nodeC[k];
      if (i < 0 || holder[i] >= 0) continue;
      const w = inverseMass[i] * this.partOf(k, part);
      if (w === 0) continue;
      x[i] += w * shiftX;
      y[i] += w * shiftY;
      prevX[i] += w * shiftX;
      prevY[i] += w * shiftY;
      const way = w < 0 ? -w * shift : w * shift;
      if (way > farthest) farthest = way;
    }
    this.shoved += farthest;
    if (body < 0 || bodies.inverseMass[body] === 0) return;
    // What the nodes must not give, the body gives, but for what it has given to other contacts already.
    const given = nx * (bodies.startX[body] - bodies.x[body]) + ny * (bodies.startY[body] - bodies.y[body]);
    const lacking = wanted - shift * this.mobility[k] - (given > 0 ? given : 0);
    const way = bodies.inverseMass[body] * shift + (lacking > 0 ? lacking : 0);
    bodies.x[body] -= way * nx;
    bodies.y[body] -= way * ny;
  }

  /** The part of `shift` by which the nodes of a contact may move along its normal without drawing a link out farther than tolerable. */
  private sparingLinks(nodes: NodeStore, k: number, shift: number): number {
    const { prevX, prevY, rest, strand, holder, inverseMass, count } = nodes;
    let most = shift;
    for (let part = 0; part < 3; part++) {
      const i = part === 0 ? this.nodeA[k] : part === 1 ? this.nodeB[k] : this.nodeC[k];
      if (i < 0 || holder[i] >= 0) continue;
      const w = inverseMass[i] * this.partOf(k, part);
      const moveX = w * this.nx[k];
      const moveY = w * this.ny[k];
      for (let j = i - 1; j <= i + 1; j += 2) {
        if (j < 0 || j >= count || strand[j] !== strand[i]) continue;
        const dx = prevX[i] - prevX[j];
        const dy = prevY[i] - prevY[j];
        const length = Math.sqrt(dx * dx + dy * dy);
        const growth = (dx * moveX + dy * moveY) / length;
        if (growth <= 0) continue;
        const room = rest[j < i ? j : i] + TOLERABLE_M - length;
        if (growth * most > room) most = room > 0 ? room / growth : 0;
      }
    }
    return most;
  }

  /** Share of a node in the contact, times its ease. */
  private partOf(k: number, part: number): number {
    return part === 0 ? this.shareA[k] * this.easeA[k] : part === 1 ? this.shareB[k] * this.easeB[k] : this.shareC[k];
  }
}

/** What a contact reads and moves. */
interface ContactStores {
  readonly nodes: NodeStore;
  readonly bodies: BodyStore;
  readonly fixed: FixedContacts;
  readonly settings: Settings;
  readonly h: number;
}
