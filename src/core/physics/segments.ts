/** Whether the open segments a–b and c–d cross properly (touching ends do not count). */
export function segmentsCross(ax: number, ay: number, bx: number, by: number, cx: number, cy: number, dx: number, dy: number): boolean {
  const ex = bx - ax;
  const ey = by - ay;
  const c = ex * (cy - ay) - ey * (cx - ax);
  const d = ex * (dy - ay) - ey * (dx - ax);
  if (c * d >= 0) return false;
  const fx = dx - cx;
  const fy = dy - cy;
  const a = fx * (ay - cy) - fy * (ax - cx);
  const b = fx * (by - cy) - fy * (bx - cx);
  return a * b < 0;
}

/** The same for the links that begin at point `p` of one row of points and at `q` of another. */
export function linksCross(x: Float64Array, y: Float64Array, p: number, otherX: Float64Array, otherY: Float64Array, q: number): boolean {
  const ax = x[p];
  const ay = y[p];
  const cx = otherX[q];
  const cy = otherY[q];
  const dx = otherX[q + 1];
  const dy = otherY[q + 1];
  const ex = x[p + 1] - ax;
  const ey = y[p + 1] - ay;
  const c = ex * (cy - ay) - ey * (cx - ax);
  const d = ex * (dy - ay) - ey * (dx - ax);
  if (c * d >= 0) return false;
  const fx = dx - cx;
  const fy = dy - cy;
  const a = fx * (ay - cy) - fy * (ax - cx);
  const b = fx * (y[p + 1] - cy) - fy * (x[p + 1] - cx);
  return a * b < 0;
}
