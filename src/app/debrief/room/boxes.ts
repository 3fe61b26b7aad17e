/** A point on the screen, in CSS pixels, y down. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Part of the screen, in CSS pixels. */
export interface Box {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

export const overlap = (a: Box, b: Box, gap = 0): boolean => a.x0 < b.x1 + gap && b.x0 < a.x1 + gap && a.y0 < b.y1 + gap && b.y0 < a.y1 + gap;

/** The box around points, wider by `margin` on each side. */
export const boxAround = (points: readonly Spot[], margin = 0): Box => ({
  x0: Math.min(...points.map(({ x }) => x)) - margin,
  y0: Math.min(...points.map(({ y }) => y)) - margin,
  x1: Math.max(...points.map(({ x }) => x)) + margin,
  y1: Math.max(...points.map(({ y }) => y)) + margin,
});

/** The point of a box that is nearest to a spot. */
export const nearestIn = (box: Box, { x, y }: Spot): Spot => ({ x: Math.min(Math.max(x, box.x0), box.x1), y: Math.min(Math.max(y, box.y0), box.y1) });

const side = (a: Spot, b: Spot, c: Spot): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

/** Whether two straight lines between spots cross. */
export const cross = (a: Spot, b: Spot, c: Spot, d: Spot): boolean => side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;

/** Whether a straight line between two spots passes through a box. */
export function passes(a: Spot, b: Spot, box: Box): boolean {
  const inside = ({ x, y }: Spot): boolean => x > box.x0 && x < box.x1 && y > box.y0 && y < box.y1;
  if (inside(a) || inside(b)) return true;
  const corners = { p: { x: box.x0, y: box.y0 }, q: { x: box.x1, y: box.y1 }, r: { x: box.x0, y: box.y1 }, s: { x: box.x1, y: box.y0 } };
  return cross(a, b, corners.p, corners.q) || cross(a, b, corners.r, corners.s);
}
