import { PI } from '../../base/portableMath.ts';

/**
 * Radius (m) of a ball of that volume (m³, up to 4 litres): (3 V / 4π)^⅓, by Newton's method from above. Each step takes off up to a
 * third, and close to the root squares the error.
 */
export function ballRadiusM(volume: number): number {
  if (volume <= 0) return 0;
  const cube = (3 * volume) / (4 * PI);
  let r = 0.1;
  for (let k = 0; k < 40; k++) r -= (r - cube / (r * r)) / 3;
  return r;
}
