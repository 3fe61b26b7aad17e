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
