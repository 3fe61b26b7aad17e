import { World } from '../../../src/core/physics/index.ts';
import { box } from './geometry.ts';

const LINK = 0.01;
const GLUED = 40;
const NODES = 61;

/** A sheet of 0.6 m, 0.4 m of it glued to a flat skin, the rest pulled straight off at `angle` (rad; 0 along the skin away from the glue). */
export class PeelExperiment {
  readonly world = new World({ gravity: 0, sleep: false });
  readonly skin: number;
  private readonly last = NODES - 1;
  private readonly dirX: number;
  private readonly dirY: number;

  constructor(strengthN: number, angle: number, drivenSkin = false) {
    this.dirX = Math.cos(angle);
    this.dirY = Math.sin(angle);
    const { world } = this;
    this.skin = world.addBody({ kind: drivenSkin ? 'driven' : 'static', x: 0, y: -0.1, shapes: [box(1, 0.1)], friction: 0 });
    const points = Array.from({ length: NODES }, (_, i): [number, number] => {
      const free = Math.max(0, i - (GLUED - 1)) * LINK;
      return [-0.3 + Math.min(i, GLUED - 1) * LINK + free * this.dirX, 0.0015 + free * this.dirY];
    });
    world.addStrand({ points, massPerM: 0.06, radius: 0.0015, stiffnessN: 5e3, bendingNm2: 2e-6, friction: 0, airDragPerS: 3, selfCollide: false });
    world.finalize();
    for (let node = 0; node < GLUED; node++) world.glueNode(node, this.skin, strengthN);
  }

  get gluedCount(): number {
    return Array.from({ length: NODES }, (_, node) => this.world.isGlued(node)).filter(Boolean).length;
  }

  load(forceN: number): void {
    this.world.setNodeForce(this.last, forceN * this.dirX, forceN * this.dirY);
    this.world.step();
  }

  /** Force (N) at which the first node comes off while the load rises by `ratePerS` (N/s) from `fromN`. */
  firstPeel(fromN: number, ratePerS: number, mostN: number): number {
    for (let k = 0; k < 120; k++) this.load((fromN * k) / 120);
    let force = fromN;
    for (; force < mostN; force += ratePerS / 120) {
      this.load(force);
      if (this.world.peeled.length > 0) return force;
    }
    return Infinity;
  }

  /**
   * Draws the end so that the front must recede at `speed` m/s while the angle stays: with the front going back along the skin and
   * the free length growing as fast, the end moves at speed · (cos θ − 1, sin θ). Tensions at the end (N), one per step.
   */
  draw(speed: number, seconds: number): number[] {
    const { world, last } = this;
    const x = world.x[last]!;
    const y = world.y[last]!;
    world.pinNode(last);
    const loads: number[] = [];
    for (let k = 1; k <= seconds * 120; k++) {
      const way = (speed * k) / 120;
      world.drivePin(last, x + way * (this.dirX - 1), y + way * this.dirY);
      world.step();
      loads.push(world.endTensions(0).last);
    }
    return loads;
  }
}
