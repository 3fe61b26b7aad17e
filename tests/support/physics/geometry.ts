import type { Point } from '../../../src/bench/pathPoints.ts';
import type { ShapeSpec } from '../../../src/core/physics/index.ts';

/** Box of half width and half height (m) around the origin. */
export const box = (halfWidth: number, halfHeight: number, radius = 0): ShapeSpec => ({
  verts: [[-halfWidth, -halfHeight], [halfWidth, -halfHeight], [halfWidth, halfHeight], [-halfWidth, halfHeight]],
  radius,
});

export const circle = (radius: number): ShapeSpec => ({ verts: [[0, 0]], radius });

export const capsule = (from: Point, to: Point, radius: number): ShapeSpec => ({ verts: [from, to], radius });

export const polygon = (verts: readonly Point[]): ShapeSpec => ({ verts, radius: 0 });

/** Value at which `isAbove` turns true, by halving [low, high] `rounds` times. */
export function bisect(low: number, high: number, rounds: number, isAbove: (value: number) => boolean): number {
  let a = low;
  let b = high;
  for (let k = 0; k < rounds; k++) {
    const middle = (a + b) / 2;
    if (isAbove(middle)) b = middle;
    else a = middle;
  }
  return (a + b) / 2;
}
