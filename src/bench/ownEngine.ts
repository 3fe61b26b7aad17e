import { World, type ShapeSpec, type WorldOptions } from '../core/physics/index.ts';
import type { SceneBody, SceneEngine, SceneStrand } from './sceneEngine.ts';

const GRIP_LIMIT_N = 10;

/** The bench scene on this project's own world. */
export class OwnEngine implements SceneEngine {
  readonly world: World;
  private readonly strands: SceneStrand[] = [];
  private readonly joints = new Map<number, number>();

  constructor(options: WorldOptions = {}) {
    this.world = new World(options);
  }

  addStatic(shape: ShapeSpec, x: number, y: number, friction: number): number {
    return this.world.addBody({ kind: 'static', x, y, shapes: [shape], friction });
  }

  addBody(body: SceneBody): number {
    const { shape, x, y, massKg, friction } = body;
    return this.world.addBody({ kind: 'dynamic', x, y, massKg, friction, shapes: [shape], gravityScale: body.floats ? 0 : 1, lockRotation: body.lockRotation ?? false });
  }

  addStrand(strand: SceneStrand): number {
    this.strands.push(strand);
    return this.world.addStrand(strand);
  }

  finalize(): void {
    this.world.finalize();
    this.strands.forEach((strand, k) => {
      const start = this.world.strandStart(k);
      if (strand.startPinned) this.world.pinNode(start);
      if (strand.endBody) this.world.attachNode(start + this.world.strandSize(k) - 1, strand.endBody.body, strand.endBody.x, strand.endBody.y);
    });
  }

  step(): void {
    this.world.step();
  }

  nodeCount(strand: number): number {
    return this.world.strandSize(strand);
  }

  nodeX(strand: number, index: number): number {
    return this.world.x[this.world.strandStart(strand) + index]!;
  }

  nodeY(strand: number, index: number): number {
    return this.world.y[this.world.strandStart(strand) + index]!;
  }

  bodyPose(b: number): { x: number; y: number; c: number; s: number; vx: number; vy: number } {
    const { bodyX, bodyY, bodyC, bodyS, bodyVx, bodyVy } = this.world;
    return { x: bodyX[b]!, y: bodyY[b]!, c: bodyC[b]!, s: bodyS[b]!, vx: bodyVx[b]!, vy: bodyVy[b]! };
  }

  setBodyForce(body: number, fx: number, fy: number): void {
    this.world.setBodyForce(body, fx, fy);
  }

  gripNode(hand: number, strand: number, index: number): boolean {
    const node = this.world.strandStart(strand) + index;
    if (this.world.holderOf(node) >= 0) return false;
    this.world.gripNode(hand, node, GRIP_LIMIT_N);
    return true;
  }

  releaseNode(hand: number, strand: number, index: number): void {
    const node = this.world.strandStart(strand) + index;
    if (this.world.holderOf(node) === hand) this.world.releaseNode(node);
  }

  gripBody(hand: number, body: number): void {
    this.joints.set(hand, this.world.weld(hand, body, { maxForceN: GRIP_LIMIT_N }));
  }

  releaseBody(hand: number): void {
    const joint = this.joints.get(hand);
    if (joint !== undefined) this.world.unweld(joint);
    this.joints.delete(hand);
  }
}
