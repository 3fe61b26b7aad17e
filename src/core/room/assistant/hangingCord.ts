import { exp, length, log } from '../../base/portableMath.ts';

/** A place (m). */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/** Ends that are nearer side by side than this share of the length count as that far apart: the cord hangs as a loop. */
const LOOP = 0.001;
const HALVINGS = 50;
/** Beyond this half width in parameters the ends are nearer than `LOOP`. */
const WIDEST = 12;

const sinh = (z: number): number => (exp(z) - exp(-z)) / 2;
const asinh = (z: number): number => (z < 0 ? -1 : 1) * log(Math.abs(z) + Math.sqrt(z * z + 1));

/**
 * Where a flexible cord of `lengthM` metres that hangs free between two places is, `s` metres from the first (m). The catenary: with the
 * lowest point at x = 0, y = a cosh(x / a) and the length from there a sinh(x / a), where a solves sinh(u) / u = √(L² − v²) / h for ends
 * h apart, v of them in height, and u = h / 2a (textbook statics; Leibniz, Huygens and John Bernoulli 1691). Straight where it is too short to hang.
 */
export function hangingAt(from: Place, to: Place, lengthM: number, s: number): Place {
  const v = to.y - from.y;
  if (lengthM <= length(to.x - from.x, v) * (1 + 1e-6)) {
    const t = s / lengthM;
    return { x: from.x + (to.x - from.x) * t, y: from.y + v * t };
  }
  const h = Math.max(Math.abs(to.x - from.x), LOOP * lengthM);
  const u = halfWidth(Math.sqrt(lengthM * lengthM - v * v) / h);
  const a = h / (2 * u);
  const first = log((lengthM + v) / (lengthM - v)) / 2 - u;
  const rise = sinh(first) + s / a;
  const across = a * (asinh(rise) - first);
  return { x: from.x + (to.x < from.x ? -across : across), y: from.y + a * (Math.sqrt(1 + rise * rise) - Math.sqrt(1 + sinh(first) * sinh(first))) };
}

/** The u for which sinh(u) / u is that much, by halving. */
function halfWidth(ratio: number): number {
  let low = 0;
  let high = WIDEST;
  for (let k = 0; k < HALVINGS; k++) {
    const u = (low + high) / 2;
    if (sinh(u) < ratio * u) low = u;
    else high = u;
  }
  return (low + high) / 2;
}
