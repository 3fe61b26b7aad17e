import { length } from '../../base/portableMath.ts';
import type { World } from '../../physics/world.ts';
import type { Point } from '../layout.ts';

/** How fast held cloth comes to where it is held (m per step of 1/120 s). */
const FOLLOW_M = 0.03;

/** Drives a pinned node of cloth toward a point (m), no faster than held cloth follows. Before the world moves. */
export function leadPin(world: World, node: number, [x, y]: Point): void {
  const dx = x - world.x[node]!;
  const dy = y - world.y[node]!;
  const d = length(dx, dy);
  const share = d > FOLLOW_M ? FOLLOW_M / d : 1;
  if (d > 0) world.drivePin(node, world.x[node]! + dx * share, world.y[node]! + dy * share);
}
