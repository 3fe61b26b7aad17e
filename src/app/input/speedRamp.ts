/** Speeds of a hand led by keys or a stick, in metres per second: slow at first for fine work, then as fast as careful work goes. */
const SLOWEST_MPS = 0.05;
const FASTEST_MPS = 0.55;
const RAMP_S = 0.7;
const FINE_MPS = 0.03;

/** Speed after a direction has been held for `heldS` seconds; `fine` keeps it slow. */
export function keySpeed(heldS: number, fine: boolean): number {
  if (fine) return FINE_MPS;
  const share = Math.min(1, heldS / RAMP_S);
  return SLOWEST_MPS + (FASTEST_MPS - SLOWEST_MPS) * share * share;
}

/** Speed for a stick pushed by `tilt` (−1 to 1): nothing in the middle, fine near it. */
export function stickSpeed(tilt: number, fine: boolean): number {
  const DEAD = 0.14;
  const size = Math.abs(tilt);
  if (size < DEAD) return 0;
  const share = Math.min(1, (size - DEAD) / (1 - DEAD));
  return Math.sign(tilt) * share * share * (fine ? FINE_MPS * 2 : FASTEST_MPS);
}

/** Degrees per second that a wrist turns while its key is held. */
export const TURN_DEG_PER_S = 70;
export const FINE_TURN_DEG_PER_S = 18;
