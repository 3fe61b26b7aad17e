import { CORD_LENGTH, CORD_RADIUS, DRAPE_LENGTH, DRAPE_RADIUS, HAND_RADIUS, RAIL_TOP, RAIL_X, type BedScene } from '../../../src/bench/bedScene.ts';
import type { HandScript } from '../../../src/bench/handScript.ts';
import { segmentsCross } from '../../../src/core/physics/segments.ts';
import type { ShapeSpec } from '../../../src/core/physics/index.ts';

/** What may go wrong in the bed scene, summed over the steps looked at. Lengths in m, spans in steps. */
export class SceneWatch {
  notFinite = 0;
  railSteps = 0;
  crossingEvents = 0;
  crossingSteps = 0;
  longestCrossing = 0;
  deepestInStatic = 0;
  deepestInHand = 0;
  drapeStretch = 0;
  cordStretch = 0;
  bodyInStatic = 0;
  lost = 0;
  private run = 0;

  constructor(private readonly scene: BedScene, private readonly script: HandScript) {}

  look(): void {
    const drape = this.chain(this.scene.drape);
    const cord = this.chain(this.scene.cord);
    if (![...drape.flat(), ...cord.flat()].every(Number.isFinite)) {
      this.notFinite++;
      return;
    }
    this.lookAtDepths(drape, DRAPE_RADIUS, this.scene.drape);
    this.lookAtDepths(cord, CORD_RADIUS, this.scene.cord);
    this.lookAtCrossings(drape, cord);
    this.drapeStretch = Math.max(this.drapeStretch, lengthOf(drape) / DRAPE_LENGTH - 1);
    this.cordStretch = Math.max(this.cordStretch, lengthOf(cord) / CORD_LENGTH - 1);
    this.lookAtBodies();
  }

  private chain(strand: number): [number, number][] {
    const { engine } = this.scene;
    return Array.from({ length: engine.nodeCount(strand) }, (_, i) => [engine.nodeX(strand, i), engine.nodeY(strand, i)]);
  }

  private lookAtDepths(chain: [number, number][], radius: number, strand: number): void {
    const { engine, statics, hands } = this.scene;
    chain.forEach(([x, y]) => {
      for (const shape of statics) this.deepestInStatic = Math.max(this.deepestInStatic, radius - distanceTo(shape, x, y));
    });
    hands.forEach((hand, k) => {
      const script = this.script.hands[k]!;
      if (script.holds && script.object === (strand === this.scene.cord ? 1 : 2)) return;
      const pose = engine.bodyPose(hand);
      for (const [x, y] of chain) this.deepestInHand = Math.max(this.deepestInHand, HAND_RADIUS + radius - Math.hypot(x - pose.x, y - pose.y));
    });
  }

  private lookAtCrossings(drape: [number, number][], cord: [number, number][]): void {
    let throughRail = false;
    for (const chain of [drape, cord]) {
      for (let i = 0; i + 1 < chain.length; i++) {
        for (const x of [-RAIL_X, RAIL_X]) throughRail ||= segmentsCross(...chain[i]!, ...chain[i + 1]!, x, -0.2, x, RAIL_TOP);
      }
    }
    if (throughRail) this.railSteps++;
    let crossed = false;
    for (let i = 0; i + 1 < cord.length; i++) {
      for (let j = 0; j + 1 < drape.length; j++) crossed ||= segmentsCross(...cord[i]!, ...cord[i + 1]!, ...drape[j]!, ...drape[j + 1]!);
    }
    if (!crossed) {
      this.run = 0;
      return;
    }
    if (this.run === 0) this.crossingEvents++;
    this.run++;
    this.crossingSteps++;
    this.longestCrossing = Math.max(this.longestCrossing, this.run);
  }

  private lookAtBodies(): void {
    const { engine, probe, packets, hands, statics } = this.scene;
    for (const body of [probe, ...packets, ...hands]) {
      const { x, y } = engine.bodyPose(body);
      if (!(Math.abs(x) < 1.8 && y > -0.8 && y < 5)) this.lost++;
      if (statics.some((shape) => distanceTo(shape, x, y) < -0.002)) this.bodyInStatic++;
    }
  }
}

const lengthOf = (chain: [number, number][]): number => chain.slice(1).reduce((sum, [x, y], i) => sum + Math.hypot(x - chain[i]![0], y - chain[i]![1]), 0);

/** Distance of a point from a rounded convex shape at the origin (m), negative inside. */
export function distanceTo(shape: ShapeSpec, x: number, y: number): number {
  const { verts, radius } = shape;
  if (verts.length === 1) return Math.hypot(x - verts[0]![0], y - verts[0]![1]) - radius;
  let outside = Infinity;
  let depth = -Infinity;
  verts.forEach((a, k) => {
    const b = verts[(k + 1) % verts.length]!;
    const ex = b[0] - a[0];
    const ey = b[1] - a[1];
    const t = Math.max(0, Math.min(1, ((x - a[0]) * ex + (y - a[1]) * ey) / (ex * ex + ey * ey)));
    outside = Math.min(outside, Math.hypot(x - a[0] - t * ex, y - a[1] - t * ey));
    depth = Math.max(depth, ((x - a[0]) * ey - (y - a[1]) * ex) / Math.hypot(ex, ey));
  });
  return (verts.length > 2 && depth < 0 ? depth : outside) - radius;
}
