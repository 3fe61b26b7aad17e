import { atan2, length, PI } from '../../base/portableMath.ts';
import type { World } from '../../physics/world.ts';

/** A point of a strand, and the direction of the strand there, away from its first node. */
export interface StrandPoint {
  readonly x: number;
  readonly y: number;
  readonly ux: number;
  readonly uy: number;
}

/** Point at `s` metres from the first node, measured in rest lengths of `linkM`. */
export function pointAt(world: World, strand: number, linkM: number, s: number): StrandPoint {
  const start = world.strandStart(strand);
  const k = Math.min(world.strandSize(strand) - 2, Math.max(0, Math.floor(s / linkM)));
  const t = s / linkM - k;
  const i = start + k;
  const dx = world.x[i + 1]! - world.x[i]!;
  const dy = world.y[i + 1]! - world.y[i]!;
  const l = Math.max(length(dx, dy), 1e-9);
  return { x: world.x[i]! + dx * t, y: world.y[i]! + dy * t, ux: dx / l, uy: dy / l };
}

/** Angle by which a strand turns in all over its first `s` metres (radians, turns to either side added up). */
export function turningOver(world: World, strand: number, linkM: number, s: number): number {
  const start = world.strandStart(strand);
  const last = start + Math.min(world.strandSize(strand) - 1, Math.floor(s / linkM));
  let turning = 0;
  let before = 0;
  for (let i = start; i < last; i++) {
    const angle = atan2(world.y[i + 1]! - world.y[i]!, world.x[i + 1]! - world.x[i]!);
    if (i > start) {
      const turn = Math.abs(angle - before);
      turning += turn > PI ? 2 * PI - turn : turn;
    }
    before = angle;
  }
  return turning;
}

/** Distance along the strand of the place nearest to (x, y), and how far off it is (m). */
export function nearestAlong(world: World, strand: number, linkM: number, x: number, y: number): { readonly s: number; readonly gap: number } {
  const start = world.strandStart(strand);
  let s = 0;
  let gap = Infinity;
  for (let k = 0, links = world.strandSize(strand) - 1; k < links; k++) {
    const ax = world.x[start + k]!;
    const ay = world.y[start + k]!;
    const dx = world.x[start + k + 1]! - ax;
    const dy = world.y[start + k + 1]! - ay;
    const t = Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / Math.max(dx * dx + dy * dy, 1e-12)));
    const d = length(ax + dx * t - x, ay + dy * t - y);
    if (d < gap) {
      gap = d;
      s = (k + t) * linkM;
    }
  }
  return { s, gap };
}
