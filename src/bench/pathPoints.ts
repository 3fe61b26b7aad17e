import { cos, sin } from '../core/base/portableMath.ts';

export type Point = readonly [number, number];

/** Points at chord distance `spacing` along a polyline, at most `most` of them. Portable arithmetic only. */
export function march(path: readonly Point[], spacing: number, most = Infinity): Point[] {
  const points: Point[] = [path[0]!];
  let leg = 0;
  let from = 0;
  while (points.length < most && leg < path.length - 1) {
    const [ax, ay] = path[leg]!;
    const [bx, by] = path[leg + 1]!;
    const last = points[points.length - 1]!;
    const dx = bx - ax;
    const dy = by - ay;
    const fx = ax - last[0];
    const fy = ay - last[1];
    const square = dx * dx + dy * dy;
    const half = fx * dx + fy * dy;
    const root = half * half - square * (fx * fx + fy * fy - spacing * spacing);
    const t = root < 0 ? 2 : (-half + Math.sqrt(root)) / square;
    if (t > from && t <= 1) {
      points.push([ax + t * dx, ay + t * dy]);
      from = t;
    } else {
      leg++;
      from = 0;
    }
  }
  return points;
}

/** Points on an arc around (cx, cy), both ends included; angles in radians. */
export function arc(cx: number, cy: number, radius: number, from: number, to: number, pieces: number): Point[] {
  return Array.from({ length: pieces + 1 }, (_, k) => {
    const angle = from + ((to - from) * k) / pieces;
    return [cx + radius * cos(angle), cy + radius * sin(angle)] as const;
  });
}
