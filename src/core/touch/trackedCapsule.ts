/**
 * One capsule of a surface in one step: ends a and b at its beginning (ax, ay, bx, by) and at its end (Ax, Ay, Bx, By), radius r,
 * all in metres. `surface` is a whole number ≥ 0 that stands for the surface; several capsules may carry the same one, all in the
 * same group. A polygon is given as its edges with r = 0.
 */
export interface TrackedCapsule {
  surface: number;
  group: number;
  ax: number;
  ay: number;
  bx: number;
  by: number;
  Ax: number;
  Ay: number;
  Bx: number;
  By: number;
  r: number;
}
