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
  const ax = p[0]!;
  const ay = p[1]!;
  const bx = p[2]!;
  const by = p[3]!;
  const cx = q[0]!;
  const cy = q[1]!;
  const dx = q[2]!;
  const dy = q[3]!;
  const c = turn(ax, ay, bx, by, cx, cy);
  const d = turn(ax, ay, bx, by, dx, dy);
  if ((c < 0 && d > 0) || (c > 0 && d < 0)) {
    const a = turn(cx, cy, dx, dy, ax, ay);
    const b = turn(cx, cy, dx, dy, bx, by);
    if ((a < 0 && b > 0) || (a > 0 && b < 0)) {
      const u = c / (c - d);
      out.distance = 0;
      out.px = out.qx = cx + u * (dx - cx);
      out.py = out.qy = cy + u * (dy - cy);
      return;
    }
  }
  out.distance = Infinity;
  if (fromPoint(ax, ay, cx, cy, dx, dy, out)) swap(out);
  if (fromPoint(bx, by, cx, cy, dx, dy, out)) swap(out);
  fromPoint(cx, cy, ax, ay, bx, by, out);
  fromPoint(dx, dy, ax, ay, bx, by, out);
  out.distance = Math.sqrt(out.distance);
}

/**
 * Nearest point of the segment from (ax, ay) to (bx, by) to the point (x, y), entered as p with the point as q when nearer than
 * what `out` holds; its `distance` is a square until the search is over. True when entered.
 */
function fromPoint(x: number, y: number, ax: number, ay: number, bx: number, by: number, out: NearestPoints): boolean {
  const ex = bx - ax;
  const ey = by - ay;
  const squared = ex * ex + ey * ey;
  let u = squared > 0 ? ((x - ax) * ex + (y - ay) * ey) / squared : 0;
  u = u < 0 ? 0 : u > 1 ? 1 : u;
  const nx = ax + u * ex;
  const ny = ay + u * ey;
  const d = (x - nx) * (x - nx) + (y - ny) * (y - ny);
  if (d >= out.distance) return false;
  out.distance = d;
  out.px = nx;
  out.py = ny;
  out.qx = x;
  out.qy = y;
  return true;
}

function swap(out: NearestPoints): void {
  const { px, py } = out;
  out.px = out.qx;
  out.py = out.qy;
  out.qx = px;
  out.qy = py;
}

/** Twice the signed area of the triangle of three points. */
const turn = (ax: number, ay: number, bx: number, by: number, cx: number, cy: number): number =>
  (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
