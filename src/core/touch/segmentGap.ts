/** Nearest points of two segments: (px, py) on the first, (qx, qy) on the second, `distance` between them, all in metres. */
export interface NearestPoints {
  distance: number;
  px: number;
  py: number;
  qx: number;
  qy: number;
}

export const noNearestPoints = (): NearestPoints => ({ distance: 0, px: 0, py: 0, qx: 0, qy: 0 });

/**
 * Finds the nearest points of two segments, each given as [ax, ay, bx, by] in metres, and writes them to `out`.
 * Segments that cross have distance 0 (their crossing point is both nearest points); otherwise one of the four ends is nearest
 * to the other segment. A segment whose ends are equal is a point.
 */
export function nearestPoints(p: Float64Array, q: Float64Array, out: NearestPoints): void {
  if (cross(p, q, out)) return;
  out.distance = Infinity;
  fromPoint(p[0]!, p[1]!, q, out, false);
  fromPoint(p[2]!, p[3]!, q, out, false);
  fromPoint(q[0]!, q[1]!, p, out, true);
  fromPoint(q[2]!, q[3]!, p, out, true);
  out.distance = Math.sqrt(out.distance);
}

/** Keeps the nearest pair so far; `out.distance` holds its square until the search is over. */
function fromPoint(x: number, y: number, s: Float64Array, out: NearestPoints, swapped: boolean): void {
  const ex = s[2]! - s[0]!;
  const ey = s[3]! - s[1]!;
  const squared = ex * ex + ey * ey;
  let u = squared > 0 ? ((x - s[0]!) * ex + (y - s[1]!) * ey) / squared : 0;
  u = u < 0 ? 0 : u > 1 ? 1 : u;
  const nx = s[0]! + u * ex;
  const ny = s[1]! + u * ey;
  const d = (x - nx) * (x - nx) + (y - ny) * (y - ny);
  if (d >= out.distance) return;
  out.distance = d;
  out.px = swapped ? nx : x;
  out.py = swapped ? ny : y;
  out.qx = swapped ? x : nx;
  out.qy = swapped ? y : ny;
}

/** Twice the signed area of the triangle of three points. */
const turn = (ax: number, ay: number, bx: number, by: number, cx: number, cy: number): number =>
  (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);

function cross(p: Float64Array, q: Float64Array, out: NearestPoints): boolean {
  const a = turn(p[0]!, p[1]!, p[2]!, p[3]!, q[0]!, q[1]!);
  const b = turn(p[0]!, p[1]!, p[2]!, p[3]!, q[2]!, q[3]!);
  if (!((a < 0 && b > 0) || (a > 0 && b < 0))) return false;
  const c = turn(q[0]!, q[1]!, q[2]!, q[3]!, p[0]!, p[1]!);
  const d = turn(q[0]!, q[1]!, q[2]!, q[3]!, p[2]!, p[3]!);
  if (!((c < 0 && d > 0) || (c > 0 && d < 0))) return false;
  const u = a / (a - b);
  out.distance = 0;
  out.px = out.qx = q[0]! + u * (q[2]! - q[0]!);
  out.py = out.qy = q[1]! + u * (q[3]! - q[1]!);
  return true;
}
