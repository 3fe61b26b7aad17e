/**
 * Elementary functions built only from + − × ÷, sqrt and floor, which IEEE 754 defines to the last bit.
 * JavaScript engines disagree in the last bit of Math.sin and its kin, so the simulation core uses these instead.
 * Accuracy of sin and cos: 1e-15 absolute near zero, 1e-12 at |x| = 1e4 (Taylor series after reduction by multiples of π/2).
 */
export const PI = 3.141592653589793;
const HALF_PI = PI / 2;

/** Sine of x (radians). */
export function sin(x: number): number {
  const k = Math.floor(x / HALF_PI + 0.5);
  const r = x - k * HALF_PI;
  const quadrant = ((k % 4) + 4) % 4;
  if (quadrant === 0) return sineSeries(r);
  if (quadrant === 1) return cosineSeries(r);
  return quadrant === 2 ? -sineSeries(r) : -cosineSeries(r);
}

/** Cosine of x (radians). */
export const cos = (x: number): number => sin(x + HALF_PI);

/** Arc tangent of x, in (−π/2, π/2). */
export function atan(x: number): number {
  if (x < 0) return -atan(-x);
  if (x > 1) return HALF_PI - atan(1 / x);
  const half = x / (1 + Math.sqrt(1 + x * x));
  const quarter = half / (1 + Math.sqrt(1 + half * half));
  const z = quarter * quarter;
  let sum = 0;
  for (let k = 15; k >= 0; k--) sum = 1 / (2 * k + 1) - z * sum;
  return 4 * quarter * sum;
}

/** Angle of the point (x, y) in (−π, π]; 0 for the origin. */
export function atan2(y: number, x: number): number {
  if (x > 0) return atan(y / x);
  if (x < 0) return y >= 0 ? atan(y / x) + PI : atan(y / x) - PI;
  return y > 0 ? HALF_PI : y < 0 ? -HALF_PI : 0;
}

/** Arc cosine of x, clamped to [−1, 1]. */
export function acos(x: number): number {
  const c = x > 1 ? 1 : x < -1 ? -1 : x;
  return atan2(Math.sqrt((1 - c) * (1 + c)), c);
}

/** Length of (x, y). */
export const length = (x: number, y: number): number => Math.sqrt(x * x + y * y);

/** e to the power x, for |x| ≤ 700. */
export function exp(x: number): number {
  const k = Math.floor(x / 0.6931471805599453 + 0.5);
  const r = x - k * 0.6931471805599453;
  let term = 1;
  let sum = 1;
  for (let n = 1; n < 22; n++) {
    term *= r / n;
    sum += term;
  }
  let scale = 1;
  for (let n = 0; n < (k < 0 ? -k : k); n++) scale *= k < 0 ? 0.5 : 2;
  return sum * scale;
}

/** Natural logarithm of x, for normal x > 0; relative error about 1e-15 (series of artanh after taking out powers of two). */
export function log(x: number): number {
  let [m, k] = [x, 0];
  for (; m > 1.4142135623730951; k++) m /= 2;
  for (; m < 0.7071067811865476; k--) m *= 2;
  const z = (m - 1) / (m + 1);
  let sum = 0;
  for (let n = 12; n >= 0; n--) sum = 1 / (2 * n + 1) + z * z * sum;
  return 2 * z * sum + k * 0.6931471805599453;
}

const sineSeries = (x: number): number => {
  const z = x * x;
  return x * (1 + z * (-1 / 6 + z * (1 / 120 + z * (-1 / 5040 + z * (1 / 362880 + z * (-1 / 39916800 + z * (1 / 6227020800 - z / 1307674368000)))))));
};

const cosineSeries = (x: number): number => {
  const z = x * x;
  return 1 + z * (-0.5 + z * (1 / 24 + z * (-1 / 720 + z * (1 / 40320 + z * (-1 / 3628800 + z * (1 / 479001600 + z * (-1 / 87178291200 + z / 20922789888000)))))));
};
