import type { Point } from '../../../src/bench/pathPoints.ts';

const turn = (a: Point, b: Point, p: Point): number => (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]);

/** Distance of a point from a segment (m): its foot on the line, kept between the ends. */
function fromSegment(p: Point, a: Point, b: Point): number {
  const ex = b[0] - a[0];
  const ey = b[1] - a[1];
  const t = Math.max(0, Math.min(1, ((p[0] - a[0]) * ex + (p[1] - a[1]) * ey) / (ex * ex + ey * ey || 1)));
  return Math.hypot(p[0] - a[0] - t * ex, p[1] - a[1] - t * ey);
}

const edgesOf = (verts: readonly Point[]): (readonly [Point, Point])[] => verts.map((a, k) => [a, verts[(k + 1) % verts.length]!] as const);

/**
 * Distance of two convex cores (m; 1 vertex a point, 2 a segment, 3 or more a polygon, counter-clockwise), or −1 where they overlap.
 * Every corner against every edge, both ways: of convex figures that lie apart one nearest point is a corner.
 */
export function coreDistance(one: readonly Point[], other: readonly Point[]): number {
  let least = Infinity;
  for (const [a, b] of edgesOf(one)) {
    for (const [c, d] of edgesOf(other)) {
      if (turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0) return -1;
      least = Math.min(least, fromSegment(a, c, d), fromSegment(c, a, b));
    }
  }
  const holds = (verts: readonly Point[], p: Point): boolean => verts.length > 2 && edgesOf(verts).every(([a, b]) => turn(a, b, p) > 0);
  return holds(one, other[0]!) || holds(other, one[0]!) ? -1 : least;
}

/** Points of a body's frame, in the world. */
export const posed = (verts: readonly Point[], x: number, y: number, c: number, s: number): Point[] => verts.map(([u, v]): Point => [x + c * u - s * v, y + s * u + c * v]);
