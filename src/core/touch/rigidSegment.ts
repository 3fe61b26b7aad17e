import { assert } from '../base/assert.ts';
import type { MovingSegment } from './movingSegment.ts';

/** Where a rigid body stands: (x, y) in metres, (c, s) the cosine and sine of its angle. */
export interface BodyPose {
  readonly x: number;
  readonly y: number;
  readonly c: number;
  readonly s: number;
}

/**
 * A capsule fixed to a rigid body that goes from one pose to another in a step: its origin in a straight line, its angle on the
 * Cayley path tan(angle / 2) = a · time, which needs no sine and is exact at both ends. It turns by less than half a turn.
 * The angular speed on that path is 2a / (1 + a² time²), at most 2|a|, so `speedAlong` never falls short.
 */
export class RigidSegment implements MovingSegment {
  private readonly halfTurn: number;
  private readonly arm: number;

  /** `local` is [ax, ay, bx, by] in the body's own frame, metres. */
  constructor(
    private readonly from: BodyPose,
    private readonly to: BodyPose,
    private readonly local: readonly [number, number, number, number],
    readonly radius: number,
  ) {
    const cosine = from.c * to.c + from.s * to.s;
    assert(cosine > -0.99, 'a body turns by less than half a turn in one step');
    this.halfTurn = (to.s * from.c - to.c * from.s) / (1 + cosine);
    const [ax, ay, bx, by] = local;
    this.arm = Math.sqrt(Math.max(ax * ax + ay * ay, bx * bx + by * by));
  }

  at(time: number, out: Float64Array): void {
    const { from, to, local } = this;
    const a = this.halfTurn * time;
    const q = 1 / (1 + a * a);
    const c = ((1 - a * a) * from.c - 2 * a * from.s) * q;
    const s = ((1 - a * a) * from.s + 2 * a * from.c) * q;
    const x = from.x + time * (to.x - from.x);
    const y = from.y + time * (to.y - from.y);
    out[0] = x + c * local[0] - s * local[1];
    out[1] = y + s * local[0] + c * local[1];
    out[2] = x + c * local[2] - s * local[3];
    out[3] = y + s * local[2] + c * local[3];
  }

  speedAlong(nx: number, ny: number): number {
    return (this.to.x - this.from.x) * nx + (this.to.y - this.from.y) * ny + 2 * Math.abs(this.halfTurn) * this.arm;
  }
}
