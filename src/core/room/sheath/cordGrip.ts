import type { World } from '../../physics/world.ts';
import { pointAt } from './alongCord.ts';

/** A hold of the cord that can slide along it: between nodes, by moving where in the hand the held node is. Plain data. */
export interface CordGrip {
  /** Held node, counted over all strands. */
  node: number;
  /** Distance from the first node of the cord to the middle of the hold (m). */
  s: number;
  /** What the cord still is beside the middle of the hold when it was taken, in the holder's frame (m); it comes in. */
  offX: number;
  offY: number;
}

/** Where in the holder's frame the cord is held (m). */
export type Anchor = readonly [number, number];

/** How fast a cord that was taken beside the fingertips comes between them (m per step of 1/120 s). */
const IN_M = 0.004;

/** Takes hold at `s` metres along the strand; a place between nodes is held by the nearer one. */
export function takeCord(world: World, strand: number, linkM: number, body: number, anchor: Anchor, s: number): CordGrip {
  const node = nodeAt(world, strand, linkM, s);
  const { x, y } = pointAt(world, strand, linkM, s);
  const [lx, ly] = inFrame(world, body, x - world.bodyX[body]!, y - world.bodyY[body]!);
  world.gripNode(body, node, Infinity);
  return { node, s, offX: lx - anchor[0], offY: ly - anchor[1] };
}

/** Lets the hold slide to `s`, and brings the cord to the anchor; call once per step. False when the hold is gone. */
export function slideTo(world: World, strand: number, linkM: number, body: number, anchor: Anchor, grip: CordGrip, s: number): boolean {
  if (world.holderOf(grip.node) !== body) return false;
  const node = nodeAt(world, strand, linkM, s);
  if (node !== grip.node && world.holderOf(node) < 0) {
    world.releaseNode(grip.node);
    world.gripNode(body, node, Infinity);
    grip.node = node;
  }
  grip.s = s;
  const far = Math.sqrt(grip.offX * grip.offX + grip.offY * grip.offY);
  const share = far > IN_M ? 1 - IN_M / far : 0;
  grip.offX *= share;
  grip.offY *= share;
  const { ux, uy } = pointAt(world, strand, linkM, s);
  const back = s - (grip.node - world.strandStart(strand)) * linkM;
  const [lx, ly] = inFrame(world, body, -ux * back, -uy * back);
  world.moveHold(grip.node, anchor[0] + grip.offX + lx, anchor[1] + grip.offY + ly);
  return true;
}

function nodeAt(world: World, strand: number, linkM: number, s: number): number {
  return world.strandStart(strand) + Math.min(world.strandSize(strand) - 2, Math.max(1, Math.round(s / linkM)));
}

function inFrame(world: World, body: number, dx: number, dy: number): readonly [number, number] {
  const c = world.bodyC[body]!;
  const s = world.bodyS[body]!;
  return [c * dx + s * dy, c * dy - s * dx];
}
