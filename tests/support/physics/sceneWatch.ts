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
    if (!drape.every(Number.isFinite) || !cord.every(Number.isFinite)) {
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

  /** The figures for a report, lengths in mm and stretch in %. */
  summary(): Record<string, number> {
    const { notFinite, railSteps, crossingEvents, crossingSteps, longestCrossing, bodyInStatic, lost } = this;
    const rounded = (value: number): number => Math.round(value * 100) / 100;
    return {
      notFinite, railSteps, crossingEvents, crossingSteps, longestCrossing, bodyInStatic, lost,
      staticMm: rounded(this.deepestInStatic * 1e3), handMm: rounded(this.deepestInHand * 1e3),
      drapeStretch: rounded(this.drapeStretch * 100), cordStretch: rounded(this.cordStretch * 100),
    };
  }

  /** Node positions of a strand: x, y, x, y … */
  private chain(strand: number): Float64Array {
    const { engine } = this.scene;
    const count = engine.nodeCount(strand);
    const chain = new Float64Array(2 * count);
    for (let i = 0; i < count; i++) {
      chain[2 * i] = engine.nodeX(strand, i);
      chain[2 * i + 1] = engine.nodeY(strand, i);
    }
    return chain;
  }

  private lookAtDepths(chain: Float64Array, radius: number, strand: number): void {
    const { engine, statics, hands } = this.scene;
    for (let i = 0; i < chain.length; i += 2) {
      for (const shape of statics) this.deepestInStatic = Math.max(this.deepestInStatic, radius - distanceTo(shape, chain[i]!, chain[i + 1]!));
    }
    hands.forEach((hand, k) => {
      const script = this.script.hands[k]!;
      if (script.holds && script.object === (strand === this.scene.cord ? 1 : 2)) return;
      const pose = engine.bodyPose(hand);
      for (let i = 0; i < chain.length; i += 2) {
        this.deepestInHand = Math.max(this.deepestInHand, HAND_RADIUS + radius - Math.hypot(chain[i]! - pose.x, chain[i + 1]! - pose.y));
      }
    });
  }

  private lookAtCrossings(drape: Float64Array, cord: Float64Array): void {
    const postLeft = Float64Array.of(-RAIL_X, -0.2, -RAIL_X, RAIL_TOP);
    const postRight = Float64Array.of(RAIL_X, -0.2, RAIL_X, RAIL_TOP);
    if ([drape, cord].some((chain) => chainsCross(chain, postLeft) || chainsCross(chain, postRight))) this.railSteps++;
    if (!chainsCross(cord, drape)) {
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
    for (const hand of hands) {
      const { x, y } = engine.bodyPose(hand);
      for (const shape of statics) this.deepestInStatic = Math.max(this.deepestInStatic, HAND_RADIUS - distanceTo(shape, x, y));
    }
    for (const body of [probe, ...packets, ...hands]) {
      const { x, y } = engine.bodyPose(body);
      if (!(Math.abs(x) < 1.8 && y > -0.8 && y < 5)) this.lost++;
      if (statics.some((shape) => distanceTo(shape, x, y) < -0.002)) this.bodyInStatic++;
    }
  }
}

function chainsCross(a: Float64Array, b: Float64Array): boolean {
  for (let i = 0; i + 3 < a.length; i += 2) {
    for (let j = 0; j + 3 < b.length; j += 2) {
      if (Math.abs(a[i]! - b[j]!) > 0.1 && b.length > 4) continue;
      if (segmentsCross(a[i]!, a[i + 1]!, a[i + 2]!, a[i + 3]!, b[j]!, b[j + 1]!, b[j + 2]!, b[j + 3]!)) return true;
    }
  }
  return false;
}

function lengthOf(chain: Float64Array): number {
  let sum = 0;
  for (let i = 2; i < chain.length; i += 2) sum += Math.hypot(chain[i]! - chain[i - 2]!, chain[i + 1]! - chain[i - 1]!);
  return sum;
}

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
