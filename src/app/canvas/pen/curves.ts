import { CLOSE, CUBIC, LINE, MOVE, type PathData } from './pathData.ts';

export type Point = readonly [x: number, y: number];
/** Point of a centre line with the half width there. */
export type WidePoint = readonly [x: number, y: number, radius: number];

/** Smooth curve through the points; where `path` is given, the curve goes on from its end. */
export function smooth(points: readonly Point[], closed = false, path: PathData = { ops: [], xy: [] }): PathData {
  const n = points.length;
  const at = (k: number): Point => (closed ? points[(k + n) % n]! : points[Math.max(0, Math.min(n - 1, k))]!);
  path.ops.push(path.ops.length === 0 ? MOVE : LINE);
  path.xy.push(points[0]![0], points[0]![1]);
  for (let i = 0; i < (closed ? n : n - 1); i++) {
    const [before, from, to, after] = [at(i - 1), at(i), at(i + 1), at(i + 2)];
    path.ops.push(CUBIC);
    path.xy.push(
      from[0] + (to[0] - before[0]) / 6, from[1] + (to[1] - before[1]) / 6,
      to[0] - (after[0] - from[0]) / 6, to[1] - (after[1] - from[1]) / 6, to[0], to[1],
    );
  }
  if (closed) path.ops.push(CLOSE);
  return path;
}

/** Turns below this are drawn as straight lines, as sine of the angle between neighbouring stretches (4 degrees). */
const STRAIGHT = 0.07;

/** Smooth line through points that stand close together, with as few curves as the eye needs. */
export function thrifty(points: readonly Point[]): PathData {
  const n = points.length;
  const bends = points.map(([x, y], i) => {
    if (i === 0 || i === n - 1) return false;
    const [ax, ay, bx, by] = [x - points[i - 1]![0], y - points[i - 1]![1], points[i + 1]![0] - x, points[i + 1]![1] - y];
    const [cross, dot] = [ax * by - ay * bx, ax * bx + ay * by];
    return dot < 0 || Math.abs(cross) > STRAIGHT * Math.hypot(ax, ay) * Math.hypot(bx, by);
  });
  const path: PathData = { ops: [MOVE], xy: [...points[0]!] };
  for (let i = 0; i + 1 < n; i++) {
    const [from, to] = [points[i]!, points[i + 1]!];
    if (!bends[i] && !bends[i + 1]) { path.ops.push(LINE); path.xy.push(...to); continue; }
    const [before, after] = [points[i - 1] ?? from, points[i + 2] ?? to];
    path.ops.push(CUBIC);
    path.xy.push(
      from[0] + (to[0] - before[0]) / 6, from[1] + (to[1] - before[1]) / 6,
      to[0] - (after[0] - from[0]) / 6, to[1] - (after[1] - from[1]) / 6, to[0], to[1],
    );
  }
  return path;
}

export function polyline(points: readonly Point[]): PathData {
  return { ops: points.map((_, i) => (i === 0 ? MOVE : LINE)), xy: points.flat() };
}

export function polygon(points: readonly Point[]): PathData {
  const path = polyline(points);
  path.ops.push(CLOSE);
  return path;
}

/** Area between two smooth lines that run the same way. */
export function ribbon(one: readonly Point[], other: readonly Point[]): PathData {
  const [there, back] = [thrifty(one), thrifty([...other].reverse())];
  back.ops[0] = LINE;
  return { ops: [...there.ops, ...back.ops, CLOSE], xy: [...there.xy, ...back.xy] };
}

/** Points of a smooth curve through wide points, `pieces` per stretch. */
export function refine(points: readonly WidePoint[], pieces: number): WidePoint[] {
  const n = points.length;
  const beyond = (end: WidePoint, next: WidePoint): WidePoint => [2 * end[0] - next[0], 2 * end[1] - next[1], 2 * end[2] - next[2]];
  const out: WidePoint[] = [];
  for (let i = 0; i < n - 1; i++) {
    const [b, c] = [points[i]!, points[i + 1]!];
    const a = points[i - 1] ?? beyond(b, c);
    const d = points[i + 2] ?? beyond(c, b);
    for (let k = 0; k < pieces; k++) {
      const t = k / pieces;
      const mix = (j: 0 | 1 | 2): number =>
        0.5 * (2 * b[j] + (c[j] - a[j]) * t + (2 * a[j] - 5 * b[j] + 4 * c[j] - d[j]) * t * t + (3 * b[j] - a[j] - 3 * c[j] + d[j]) * t ** 3);
      out.push([mix(0), mix(1), mix(2)]);
    }
  }
  out.push(points[n - 1]!);
  return out;
}

/** Outline of a limb along a centre line with half widths; round ends, or a flat end where `flatEnd` is set. */
export function limb(centre: readonly WidePoint[], pieces = 4, flatEnd = false): PathData {
  const line = refine(centre, pieces);
  const left: Point[] = [];
  const right: Point[] = [];
  line.forEach(([x, y, r], i) => {
    const a = line[Math.max(0, i - 1)]!;
    const b = line[Math.min(line.length - 1, i + 1)]!;
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
    const nx = -(b[1] - a[1]) / length;
    const ny = (b[0] - a[0]) / length;
    left.push([x + nx * r, y + ny * r]);
    right.push([x - nx * r, y - ny * r]);
  });
  right.reverse();
  const start = cap(line[0]!, line[1]!);
  if (!flatEnd) return smooth([...left, ...cap(line.at(-1)!, line.at(-2)!), ...right, ...start], true);
  const path = smooth([...right, ...start, left[0]!], false, smooth(left));
  path.ops.push(CLOSE);
  return path;
}

function cap(end: WidePoint, before: WidePoint): Point[] {
  const angle = Math.atan2(end[1] - before[1], end[0] - before[0]);
  return [0.3, 0, -0.3].map((t) => [end[0] + end[2] * Math.cos(angle + t * Math.PI), end[1] + end[2] * Math.sin(angle + t * Math.PI)]);
}

const KAPPA = 0.5523;
export function ellipsePath(x: number, y: number, rx: number, ry = rx): PathData {
  const kx = rx * KAPPA;
  const ky = ry * KAPPA;
  return {
    ops: [MOVE, CUBIC, CUBIC, CUBIC, CUBIC, CLOSE],
    xy: [x + rx, y, x + rx, y + ky, x + kx, y + ry, x, y + ry, x - kx, y + ry, x - rx, y + ky, x - rx, y,
      x - rx, y - ky, x - kx, y - ry, x, y - ry, x + kx, y - ry, x + rx, y - ky, x + rx, y],
  };
}

/** Rectangle between two corners, its corners rounded by `radius`. */
export function boxPath(x0: number, y0: number, x1: number, y1: number, radius = 0): PathData {
  if (radius === 0) return polygon([[x0, y0], [x1, y0], [x1, y1], [x0, y1]]);
  const r = Math.min(radius, (x1 - x0) / 2, (y1 - y0) / 2);
  const k = r * (1 - KAPPA);
  return {
    ops: [MOVE, LINE, CUBIC, LINE, CUBIC, LINE, CUBIC, LINE, CUBIC, CLOSE],
    xy: [x0 + r, y0, x1 - r, y0, x1 - k, y0, x1, y0 + k, x1, y0 + r, x1, y1 - r, x1, y1 - k, x1 - k, y1, x1 - r, y1,
      x0 + r, y1, x0 + k, y1, x0, y1 - k, x0, y1 - r, x0, y0 + r, x0, y0 + k, x0 + k, y0, x0 + r, y0],
  };
}
