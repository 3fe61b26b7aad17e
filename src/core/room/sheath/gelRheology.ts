/**
 * Gel for ultrasound, a yield-stress fluid of Herschel and Bulkley, τ = τy + K √(shear rate): within the range reported for
 * carbomer gels (yield 20 to 100 Pa, exponent 0.3 to 0.5), from memory. The exponent ½ keeps the arithmetic to sums and products.
 */
export const GEL = {
  densityKgPerM3: 1020,
  yieldPa: 50,
  /** K, in Pa s^½. */
  consistency: 30,
} as const;

/** Pull of gravity on gel along a vertical wall, in pascals per metre. */
export const GEL_WEIGHT = GEL.densityKgPerM3 * 9.81;

/**
 * Thickest layer that clings to an upright wall against its own weight, in metres: τy / (ρ g). Textbook statics of yield-stress
 * fluids: the stress on the wall under a layer of height h is ρ g h.
 */
export const CLINGING_M = GEL.yieldPa / GEL_WEIGHT;

/** Rate at which gel is sheared under that stress, in 1/s: 0 up to the yield stress. */
export function shearRate(stressPa: number): number {
  const beyond = Math.max(0, stressPa - GEL.yieldPa) / GEL.consistency;
  return beyond * beyond;
}

/**
 * Speed (m/s) of the unsheared middle of gel between two films `2 halfGapM` apart that is driven by `drivePaPerM`:
 * v = (n / (n + 1)) (G / K)^(1/n) (h − y)^((n + 1)/n) with n = ½ and y = τy / G, the flow of a Herschel-Bulkley fluid in a slit (Bird,
 * Stewart and Lightfoot, Transport Phenomena, by integrating the shear rate across the gap).
 */
export function plugSpeed(halfGapM: number, drivePaPerM: number): number {
  if (drivePaPerM * halfGapM <= GEL.yieldPa) return 0;
  const sheared = halfGapM - GEL.yieldPa / drivePaPerM;
  const slope = drivePaPerM / GEL.consistency;
  return (slope * slope * sheared * sheared * sheared) / 3;
}
