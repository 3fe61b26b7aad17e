/** Affine map (x, y) → (a x + c y + e, b x + d y + f). */
export type Affine = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

/** The map that does `inner` first and `outer` after it. */
export function compose(outer: Affine, inner: Affine): Affine {
  const [a, b, c, d, e, f] = outer;
  const [g, h, i, j, k, l] = inner;
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f];
}

export const scaling = (x: number, y = x): Affine => [x, 0, 0, y, 0, 0];
export const shift = (x: number, y: number): Affine => [1, 0, 0, 1, x, y];

/** Rotation by `degrees`, counter-clockwise where y goes up. */
export function turning(degrees: number): Affine {
  const angle = (degrees * Math.PI) / 180;
  return [Math.cos(angle), Math.sin(angle), -Math.sin(angle), Math.cos(angle), 0, 0];
}

export const applyTo = (m: Affine, x: number, y: number): [number, number] => [m[0] * x + m[2] * y + m[4], m[1] * x + m[3] * y + m[5]];

/** Length factor of a map that keeps angles. */
export const lengthFactor = (m: Affine): number => Math.hypot(m[0], m[1]);
