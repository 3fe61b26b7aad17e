import { length } from '../../base/portableMath.ts';
import type { World } from '../../physics/world.ts';
import { pointAt } from './alongCord.ts';

/** A hold of the cord that can slide along it: between nodes from node to node, each of which is taken where it is. Plain data. */
export interface CordGrip {
  /** Held node, counted over all strands. */
  node: number;
  /** Distance from the first node of the cord to the middle of the hold (m); the held node is the nearest. */
  s: number;
  /** Where the held node is beside the fingertips, in the holder's frame (m). */
  offX: number;
  offY: number;
}

/** Where in the holder's frame the cord is held (m). */
export type Anchor = readonly [number, number];

/** How fast the held node comes between the fingers, and besides what the hold slides to its place in line (m per step of 1/120 s). */
const IN_M = 0.004;
const INLINE_M = 0.001;

/** Takes hold at `s` metres along the strand. */
export function takeCord(world: World, strand: number, linkM: number, body: number, anchor: Anchor, s: number): CordGrip {
  const grip = { node: -1, s, offX: 0, offY: 0 };
  takeNode(world, body, anchor, grip, nodeAt(world, strand, linkM, s));
  return grip;
}

/**
 * Lets the hold slide to `s`: the nearest node is between the fingers. For a hand over which the cord turns back. Call once per step;
 * false when the hold is gone.
 */
export function slideTo(world: World, strand: number, linkM: number, body: number, anchor: Anchor, grip: CordGrip, s: number): boolean {
  return slide(world, strand, linkM, body, anchor, grip, s) && comeTo(world, anchor, grip, 0, 0, IN_M);
}

/**
 * The same for a hand that draws in line with the cord: the very point of the cord at `s` is between the fingers, and the held node as
 * far beside them as it is along the cord.
 */
export function glideTo(world: World, strand: number, linkM: number, body: number, anchor: Anchor, grip: CordGrip, s: number): boolean {
  const most = Math.abs(s - grip.s) + INLINE_M;
  if (!slide(world, strand, linkM, body, anchor, grip, s)) return false;
  const { ux, uy } = pointAt(world, strand, linkM, s);
  const beside = (grip.node - world.strandStart(strand)) * linkM - s;
  const [c, sine] = [world.bodyC[body]!, world.bodyS[body]!];
  return comeTo(world, anchor, grip, (c * ux + sine * uy) * beside, (c * uy - sine * ux) * beside, most);
}

function slide(world: World, strand: number, linkM: number, body: number, anchor: Anchor, grip: CordGrip, s: number): boolean {
  if (world.holderOf(grip.node) !== body) return false;
  const node = nodeAt(world, strand, linkM, s);
  if (node !== grip.node && world.holderOf(node) < 0) {
    world.releaseNode(grip.node);
    takeNode(world, body, anchor, grip, node);
  }
  grip.s = s;
  return true;
}

/** Brings the held node to (x, y) beside the anchor, no faster than that (m per step). */
function comeTo(world: World, anchor: Anchor, grip: CordGrip, x: number, y: number, most: number): true {
  const far = length(x - grip.offX, y - grip.offY);
  const share = far > most ? most / far : 1;
  grip.offX += (x - grip.offX) * share;
  grip.offY += (y - grip.offY) * share;
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
