import type { BodyStore } from './bodies.ts';
import type { Settings } from './settings.ts';
import { moveBody } from './softPass.ts';

const CAPACITY = 512;

/**
 * Contacts between bodies, two points per touching pair at most; the normal points from a to b. Loads are in kg·m.
 * A key names the touching features, so that loads (warm start) and the sideways residue of sticking contacts (which is
 * pulled back, so that nothing creeps) carry over to the next sub-step.
 */
export class RigidContacts {
  count = 0;
  readonly a = new Int32Array(CAPACITY);
  readonly b = new Int32Array(CAPACITY);
  readonly key = new Int32Array(CAPACITY);
  readonly nx = new Float64Array(CAPACITY);
  readonly ny = new Float64Array(CAPACITY);
  readonly armAX = new Float64Array(CAPACITY);
  readonly armAY = new Float64Array(CAPACITY);
  readonly armBX = new Float64Array(CAPACITY);
  readonly armBY = new Float64Array(CAPACITY);
  readonly gap = new Float64Array(CAPACITY);
  readonly friction = new Float64Array(CAPACITY);
  readonly load = new Float64Array(CAPACITY);
  readonly shear = new Float64Array(CAPACITY);
  readonly massN = new Float64Array(CAPACITY);
  readonly massT = new Float64Array(CAPACITY);
  readonly residue = new Float64Array(CAPACITY);
  readonly shapeA = new Int32Array(CAPACITY);
  readonly shapeB = new Int32Array(CAPACITY);
  oldCount = 0;
  readonly oldKey = new Int32Array(CAPACITY);
  readonly oldLoad = new Float64Array(CAPACITY);
  readonly oldShear = new Float64Array(CAPACITY);
  readonly oldResidue = new Float64Array(CAPACITY);

  /**
   * Begins a contact. The caller fills in, at the index returned, normal, friction, as arms the surface points of a and b in the
   * world and as gap the separation, then calls `close`.
   */
  open(a: number, b: number, shapeA: number, shapeB: number, key: number): number {
    const k = this.count;
    this.a[k] = a;
    this.b[k] = b;
    this.shapeA[k] = shapeA;
    this.shapeB[k] = shapeB;
    this.key[k] = key;
    return k;
  }

  /** Completes the contact that was begun; overlap is undone at limited speed. */
  close({ bodies, settings, h }: ContactStores): void {
    const k = this.count;
    if (k === CAPACITY) return;
    const { x, y, dx, dy, turn, inverseMass, inverseInertia } = bodies;
    const a = this.a[k];
    const b = this.b[k];
    const nx = this.nx[k];
    const ny = this.ny[k];
    const armAX = this.armAX[k] - x[a] - dx[a];
    const armAY = this.armAY[k] - y[a] - dy[a];
    const armBX = this.armBX[k] - x[b] - dx[b];
    const armBY = this.armBY[k] - y[b] - dy[b];
    const crossA = armAX * ny - armAY * nx;
    const crossB = armBX * ny - armBY * nx;
    const alongA = armAX * nx + armAY * ny;
    const alongB = armBX * nx + armBY * ny;
    const both = inverseMass[a] + inverseMass[b];
    if (both <= 0) return;
    const ux = dx[b] - turn[b] * armBY - dx[a] + turn[a] * armAY;
    const uy = dy[b] + turn[b] * armBX - dy[a] - turn[a] * armAX;
    const gap = this.gap[k] - nx * ux - ny * uy;
    const deep = -gap - settings.rigidRest;
    if (deep > 0) {
      const recover = settings.recovery * h;
      const shift = (deep < recover ? deep : recover) / both;
      x[a] -= inverseMass[a] * shift * nx;
      y[a] -= inverseMass[a] * shift * ny;
      x[b] += inverseMass[b] * shift * nx;
      y[b] += inverseMass[b] * shift * ny;
    }
    this.count = k + 1;
    this.armAX[k] = armAX;
    this.armAY[k] = armAY;
    this.armBX[k] = armBX;
    this.armBY[k] = armBY;
    this.gap[k] = gap > 0 ? gap : 0;
    this.massN[k] = 1 / (both + inverseInertia[a] * crossA * crossA + inverseInertia[b] * crossB * crossB);
    this.massT[k] = 1 / (both + inverseInertia[a] * alongA * alongA + inverseInertia[b] * alongB * alongB);
    this.load[k] = 0;
    this.shear[k] = 0;
    this.residue[k] = 0;
  }

  /** Starts the contacts from what those with the same key carried in the last sub-step. */
  warmStart(bodies: BodyStore): void {
    for (let k = 0; k < this.count; k++) {
      const old = this.findOld(this.key[k]);
      if (old < 0) continue;
      const load = (this.load[k] = this.oldLoad[old]);
      const shear = (this.shear[k] = this.oldShear[old]);
      this.residue[k] = this.oldResidue[old];
      this.push(bodies, k, load, shear);
    }
  }

  private findOld(key: number): number {
    for (let q = 0; q < this.oldCount; q++) if (this.oldKey[q] === key) return q;
    return -1;
  }

  private push(bodies: BodyStore, k: number, load: number, shear: number): void {
    const qx = this.nx[k] * load - this.ny[k] * shear;
    const qy = this.ny[k] * load + this.nx[k] * shear;
    moveBody(bodies, this.b[k], this.armBX[k], this.armBY[k], qx, qy);
    moveBody(bodies, this.a[k], this.armAX[k], this.armAY[k], -qx, -qy);
  }

  /** Projected Gauss-Seidel, `rounds` times; stops early once nothing changes. */
  solve(bodies: BodyStore, rounds: number): void {
    const { a: bodyA, b: bodyB, armAX, armAY, armBX, armBY, nx, ny, gap, friction, load, shear, massN, massT, residue, count } = this;
    const { dx, dy, turn, inverseMass, inverseInertia } = bodies;
    let changed = count > 0;
    for (let round = 0; round < rounds && changed; round++) {
      changed = false;
      for (let k = 0; k < count; k++) {
        const a = bodyA[k];
        const b = bodyB[k];
        const ux = dx[b] - turn[b] * armBY[k] - dx[a] + turn[a] * armAY[k];
        const uy = dy[b] + turn[b] * armBX[k] - dy[a] - turn[a] * armAX[k];
        let push = -(gap[k] + nx[k] * ux + ny[k] * uy) * massN[k];
        let total = load[k] + push;
        if (total < 0) {
          push = -load[k];
          total = 0;
        }
        load[k] = total;
        const limit = friction[k] * total;
        const wanted = shear[k] - (residue[k] + nx[k] * uy - ny[k] * ux) * massT[k];
        const kept = wanted > limit ? limit : wanted < -limit ? -limit : wanted;
        const rub = kept - shear[k];
        shear[k] = kept;
        if (push === 0 && rub === 0) continue;
        changed = true;
        const qx = nx[k] * push - ny[k] * rub;
        const qy = ny[k] * push + nx[k] * rub;
        dx[b] += inverseMass[b] * qx;
        dy[b] += inverseMass[b] * qy;
        turn[b] += inverseInertia[b] * (armBX[k] * qy - armBY[k] * qx);
        dx[a] += inverseMass[a] * -qx;
        dy[a] += inverseMass[a] * -qy;
        turn[a] += inverseInertia[a] * (armAX[k] * -qy - armAY[k] * -qx);
      }
    }
  }

  /** Keeps what the next sub-step needs. */
  remember(bodies: BodyStore): void {
    const { dx, dy, turn } = bodies;
    for (let k = 0; k < this.count; k++) {
      const a = this.a[k];
      const b = this.b[k];
      const ux = dx[b] - turn[b] * this.armBY[k] - dx[a] + turn[a] * this.armAY[k];
      const uy = dy[b] + turn[b] * this.armBX[k] - dy[a] - turn[a] * this.armAX[k];
      const sticks = Math.abs(this.shear[k]) < this.friction[k] * this.load[k];
      this.oldKey[k] = this.key[k];
      this.oldLoad[k] = this.load[k];
      this.oldShear[k] = this.shear[k];
      this.oldResidue[k] = sticks ? this.residue[k] + (this.nx[k] * uy - this.ny[k] * ux) : 0;
    }
    this.oldCount = this.count;
  }
}

/** What a contact reads and moves. */
interface ContactStores {
  readonly bodies: BodyStore;
  readonly settings: Settings;
  readonly h: number;
}
