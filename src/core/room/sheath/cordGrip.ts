import { length } from '../../base/portableMath.ts';
import type { World } from '../../physics/world.ts';

/** A hold of the cord that can slide along it from node to node: each is taken where it is and comes between the fingers. Plain data. */
export interface CordGrip {
  /** Held node, counted over all strands. */
  node: number;
  /** Distance from the first node of the cord to the middle of the hold (m); the held node is the nearest. */
  s: number;
  /** What the held node still is beside the fingertips, in the holder's frame (m); it comes in. */
  offX: number;
  offY: number;
}

/** Where in the holder's frame the cord is held (m). */
export type Anchor = readonly [number, number];

/** How fast a cord that was taken beside the fingertips comes between them (m per step of 1/120 s). */
const IN_M = 0.004;

/** Takes hold at `s` metres along the strand. */
export function takeCord(world: World, strand: number, linkM: number, body: number, anchor: Anchor, s: number): CordGrip {
  const grip = { node: -1, s, offX: 0, offY: 0 };
  takeNode(world, body, anchor, grip, nodeAt(world, strand, linkM, s));
  return grip;
}

/** Lets the hold slide to `s`, and brings the cord to the anchor; call once per step. False when the hold is gone. */
export function slideTo(world: World, strand: number, linkM: number, body: number, anchor: Anchor, grip: CordGrip, s: number): boolean {
  if (world.holderOf(grip.node) !== body) return false;
  const node = nodeAt(world, strand, linkM, s);
  if (node !== grip.node && world.holderOf(node) < 0) {
    world.releaseNode(grip.node);
    takeNode(world, body, anchor, grip, node);
  }
  grip.s = s;
  const far = length(grip.offX, grip.offY);
  const share = far > IN_M ? 1 - IN_M / far : 0;
  grip.offX *= share;
  grip.offY *= share;
  world.moveHold(grip.node, anchor[0] + grip.offX, anchor[1] + grip.offY);
  return true;
}

function takeNode(world: World, body: number, anchor: Anchor, grip: CordGrip, node: number): void {
  const dx = world.x[node]! - world.bodyX[body]!;
  const dy = world.y[node]! - world.bodyY[body]!;
  const c = world.bodyC[body]!;
  const s = world.bodyS[body]!;
  world.gripNode(body, node, Infinity);
  grip.node = node;
  grip.offX = c * dx + s * dy - anchor[0];
  grip.offY = c * dy - s * dx - anchor[1];
}

function nodeAt(world: World, strand: number, linkM: number, s: number): number {
  return world.strandStart(strand) + Math.min(world.strandSize(strand) - 2, Math.max(1, Math.round(s / linkM)));
}
