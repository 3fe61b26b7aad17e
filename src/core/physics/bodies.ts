import { assert } from '../base/assert.ts';
import { massProperties } from './massProperties.ts';
import type { BodySpec } from './types.ts';

const STATIC = 0;
const DRIVEN = 1;
const DYNAMIC = 2;

/** All rigid bodies as columns. A pose is (x, y, c, s) with c² + s² = 1; never an angle. */
export class BodyStore {
  readonly count: number;
  readonly kind: Int8Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly c: Float64Array;
  readonly s: Float64Array;
  readonly vx: Float64Array;
  readonly vy: Float64Array;
  readonly omega: Float64Array;
  /** Where the body was at the beginning of the sub-step, before overlaps were undone. */
  readonly startX: Float64Array;
  readonly startY: Float64Array;
  /** Displacement and turn within the present sub-step (m, rad). */
  readonly dx: Float64Array;
  readonly dy: Float64Array;
  readonly turn: Float64Array;
  readonly inverseMass: Float64Array;
  readonly inverseInertia: Float64Array;
  readonly gravityScale: Float64Array;
  readonly friction: Float64Array;
  readonly forceX: Float64Array;
  readonly forceY: Float64Array;
  readonly torque: Float64Array;
  /** Pose that a driven body reaches at the end of the step. */
  readonly targetX: Float64Array;
  readonly targetY: Float64Array;
  readonly targetC: Float64Array;
  readonly targetS: Float64Array;
  readonly enabled: Uint8Array;
  readonly collides: Int32Array;
  readonly collidesWith: Int32Array;
  readonly awake: Uint8Array;
  readonly calm: Float64Array;
  readonly island: Int32Array;
  /** Distance (m) that no point of the body exceeds, from where it was when the shape lists were built; and that pose. */
  readonly travel: Float64Array;
  readonly listedX: Float64Array;
  readonly listedY: Float64Array;
  readonly listedC: Float64Array;
  readonly listedS: Float64Array;
  /** Farthest point of the shapes from the origin (m). */
  readonly reach: Float64Array;

  constructor(specs: readonly BodySpec[]) {
    const n = (this.count = specs.length);
    const column = (pick?: (spec: BodySpec) => number): Float64Array => (pick ? Float64Array.from(specs, pick) : new Float64Array(n));
    const mass = specs.map((spec) => massProperties(spec.shapes, spec.kind === 'dynamic' ? (spec.massKg ?? 0) : 0, spec.lockRotation ?? false));
    this.kind = Int8Array.from(specs, (spec) => (spec.kind === 'static' ? STATIC : spec.kind === 'driven' ? DRIVEN : DYNAMIC));
    this.x = column((spec) => spec.x);
    this.y = column((spec) => spec.y);
    this.c = column((spec) => spec.c ?? 1);
    this.s = column((spec) => spec.s ?? 0);
    this.vx = column();
    this.vy = column();
    this.omega = column();
    this.startX = this.x.slice();
    this.startY = this.y.slice();
    this.dx = column();
    this.dy = column();
    this.turn = column();
    this.inverseMass = Float64Array.from(mass, (one) => one.inverseMass);
    this.inverseInertia = Float64Array.from(mass, (one) => one.inverseInertia);
    this.gravityScale = column((spec) => spec.gravityScale ?? 1);
    this.friction = column((spec) => spec.friction);
    this.forceX = column();
    this.forceY = column();
    this.torque = column();
    this.targetX = this.x.slice();
    this.targetY = this.y.slice();
    this.targetC = this.c.slice();
    this.targetS = this.s.slice();
    this.enabled = new Uint8Array(n).fill(1);
    this.collides = Int32Array.from(specs, (spec) => spec.collides ?? 1);
    this.collidesWith = Int32Array.from(specs, (spec) => spec.collidesWith ?? -1);
    this.awake = Uint8Array.from(specs, (spec) => (spec.kind === 'dynamic' ? 1 : 0));
    this.calm = column();
    this.island = new Int32Array(n).fill(-1);
    this.travel = column();
    this.listedX = this.x.slice();
    this.listedY = this.y.slice();
    this.listedC = this.c.slice();
    this.listedS = this.s.slice();
    this.reach = column(reachOf);
    specs.forEach((spec, k) => assert(spec.kind !== 'dynamic' || mass[k]!.inverseMass > 0, `dynamic body ${k} needs massKg above 0`));
  }

  isDynamic(body: number): boolean {
    return this.kind[body] === DYNAMIC;
  }

  isDriven(body: number): boolean {
    return this.kind[body] === DRIVEN;
  }

  /** Turns body-frame coordinates of a point into world coordinates, x part. */
  worldX(body: number, lx: number, ly: number): number {
    return this.x[body] + this.c[body] * lx - this.s[body] * ly;
  }

  worldY(body: number, lx: number, ly: number): number {
    return this.y[body] + this.s[body] * lx + this.c[body] * ly;
  }

  setPose(body: number, x: number, y: number, c: number, s: number): void {
    const length = Math.sqrt(c * c + s * s);
    assert(length > 0.5 && length < 2, `orientation (${c}, ${s}) is not a unit pair`);
    this.x[body] = x;
    this.y[body] = y;
    this.c[body] = c / length;
    this.s[body] = s / length;
  }

  /** Measures `travel` at the predicted pose. */
  measureTravel(b: number): void {
    const dx = this.x[b] + this.dx[b] - this.listedX[b];
    const dy = this.y[b] + this.dy[b] - this.listedY[b];
    const dc = this.c[b] - this.listedC[b] - this.turn[b] * this.s[b];
    const ds = this.s[b] - this.listedS[b] + this.turn[b] * this.c[b];
    this.travel[b] = Math.sqrt(dx * dx + dy * dy) + this.reach[b] * Math.sqrt(dc * dc + ds * ds);
  }

  /** Takes the predicted pose as the one that the lists are built for. */
  list(b: number): void {
    this.listedX[b] = this.x[b] + this.dx[b];
    this.listedY[b] = this.y[b] + this.dy[b];
    this.listedC[b] = this.c[b] - this.turn[b] * this.s[b];
    this.listedS[b] = this.s[b] + this.turn[b] * this.c[b];
    this.travel[b] = 0;
  }

  stop(body: number): void {
    this.vx[body] = this.vy[body] = this.omega[body] = 0;
    this.dx[body] = this.dy[body] = this.turn[body] = 0;
  }
}

function reachOf(spec: BodySpec): number {
  let far = 0;
  for (const shape of spec.shapes) for (const [x, y] of shape.verts) far = Math.max(far, Math.sqrt(x * x + y * y) + shape.radius);
  return far;
}
